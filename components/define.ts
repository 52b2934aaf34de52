/** Registers every widget. */
import './amplitude/define.js';
import './azimuth/define.js';
import './conversion/define.js';
import './deviation-card/define.js';
import './deviation-curve/define.js';
import './drill/define.js';
import './field-map/define.js';
import './iron/define.js';
import './record/define.js';
import './ship/define.js';
import './swing/define.js';
import './transit/define.js';
import './variation/define.js';
