import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import 'lubberline/components/amplitude/define.js';
import 'lubberline/components/conversion/define.js';
import 'lubberline/components/deviation-curve/define.js';
import './app.css';
import { WatchLog } from './watch-log.js';

createRoot(document.getElementById('app') as HTMLElement).render(
  <StrictMode>
    <WatchLog />
  </StrictMode>,
);
