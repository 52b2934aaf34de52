/** Registers every widget; the ship first, so that those inside one find her at once. */
import './ship/define.js';
import './record/define.js';
import './swing/define.js';
import './deviation-card/define.js';
import './deviation-curve/define.js';
import './iron/define.js';
import './conversion/define.js';
import './transit/define.js';
import './amplitude/define.js';
import './azimuth/define.js';
import './variation/define.js';
import './drill/define.js';
import './field-map/define.js';
