import { register } from '../shared/register.js';
import { LubberDrill } from './drill.js';

register('lubber-drill', LubberDrill);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-drill': LubberDrill;
  }
}
