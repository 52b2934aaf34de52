import { register } from '../shared/register.js';
import { LubberSwing } from './swing.js';

register('lubber-swing', LubberSwing);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-swing': LubberSwing;
  }
}
