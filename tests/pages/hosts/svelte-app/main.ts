import { mount } from 'svelte';
import 'lubberline/components/amplitude/define.js';
import 'lubberline/components/conversion/define.js';
import 'lubberline/components/deviation-curve/define.js';
import './app.css';
import WatchLog from './WatchLog.svelte';

mount(WatchLog, { target: document.getElementById('app') as HTMLElement });
