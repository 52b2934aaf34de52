import { register } from '../shared/register.js';
import { LubberDeviationCurve } from './deviation-curve.js';

register('lubber-deviation-curve', LubberDeviationCurve);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-deviation-curve': LubberDeviationCurve;
  }
}
