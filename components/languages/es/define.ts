import { addTranslation } from '../../shared/catalogue.js';
import { spanish } from './es.js';

addTranslation('es', spanish);
