import { addTranslation } from '../../shared/catalogue.js';
import { german } from './de.js';

addTranslation('de', german);
