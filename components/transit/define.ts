import { register } from '../shared/register.js';
import { LubberTransit } from './transit.js';

register('lubber-transit', LubberTransit);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-transit': LubberTransit;
  }
}
