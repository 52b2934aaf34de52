import { register } from '../shared/register.js';
import { LubberRecord } from './record.js';

register('lubber-record', LubberRecord);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-record': LubberRecord;
  }
}
