/** Registers every widget. */
import './amplitude/define.js';
