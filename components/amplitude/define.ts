import { register } from '../shared/register.js';
import { LubberAmplitude } from './amplitude.js';

register('lubber-amplitude', LubberAmplitude);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-amplitude': LubberAmplitude;
  }
}
