import { addTranslation } from '../../shared/catalogue.js';
import { indonesian } from './id.js';

addTranslation('id', indonesian);
