import { addTranslation } from '../../shared/catalogue.js';
import { french } from './fr.js';

addTranslation('fr', french);
