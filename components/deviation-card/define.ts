import { register } from '../shared/register.js';
import { LubberDeviationCard } from './deviation-card.js';

register('lubber-deviation-card', LubberDeviationCard);

declare global {
  interface HTMLElementTagNameMap {
    'lubber-deviation-card': LubberDeviationCard;
  }
}
