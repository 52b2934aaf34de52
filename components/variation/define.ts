import { register } from '../shared/register.js';
import { LubberVariation } from './variation.js';

register('lubber-variation', LubberVariation);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-variation': LubberVariation;
  }
}
