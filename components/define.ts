/** Registers every widget. */
import './amplitude/define.js';
import './field-map/define.js';
import './variation/define.js';
import './drill/define.js';
import './iron/define.js';
import './conversion/define.js';
import './azimuth/define.js';
import './ship/define.js';
import './transit/define.js';
import './deviation-card/define.js';
import './deviation-curve/define.js';
import './record/define.js';
import './swing/define.js';
