import { addTranslation } from '../../shared/catalogue.js';
import { chinese } from './zh.js';

addTranslation('zh', chinese);
