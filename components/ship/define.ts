import { register } from '../shared/register.js';
import { LubberShip } from './ship.js';

register('lubber-ship', LubberShip);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-ship': LubberShip;
  }
}
