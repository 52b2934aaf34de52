import { provideZonelessChangeDetection } from '@angular/core';
import { bootstrapApplication } from '@angular/platform-browser';
import 'lubberline/components/amplitude/define.js';
import 'lubberline/components/conversion/define.js';
import 'lubberline/components/deviation-curve/define.js';
import { WatchLog } from './watch-log.js';

void bootstrapApplication(WatchLog, { providers: [provideZonelessChangeDetection()] });
