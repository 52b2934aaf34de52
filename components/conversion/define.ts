import { register } from '../shared/register.js';
import { LubberConversion } from './conversion.js';

register('lubber-conversion', LubberConversion);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-conversion': LubberConversion;
  }
}
