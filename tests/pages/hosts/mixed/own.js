import { LubberAmplitude } from 'lubberline/components/amplitude.js';
import 'lubberline/components/amplitude/define.js';

/** A class of the page's own, under a tag of its own, bundled beside the script that defines the rest. */
customElements.define('own-amplitude', class extends LubberAmplitude {});
