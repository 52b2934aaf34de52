import { register } from '../shared/register.js';
import { LubberIron } from './iron.js';

register('lubber-iron', LubberIron);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-iron': LubberIron;
  }
}
