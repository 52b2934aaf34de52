import { createApp } from 'vue';
import 'lubberline/components/amplitude/define.js';
import 'lubberline/components/conversion/define.js';
import 'lubberline/components/deviation-curve/define.js';
import './app.css';
import WatchLog from './WatchLog.vue';

createApp(WatchLog).mount('#app');
