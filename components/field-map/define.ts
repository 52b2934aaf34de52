import { register } from '../shared/register.js';
import { LubberFieldMap } from './field-map.js';

register('lubber-field-map', LubberFieldMap);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-field-map': LubberFieldMap;
  }
}
