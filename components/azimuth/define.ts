import { register } from '../shared/register.js';
import { LubberAzimuth } from './azimuth.js';

register('lubber-azimuth', LubberAzimuth);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-azimuth': LubberAzimuth;
  }
}
