import type { Catalogue } from '../../shared/catalogue.js';

export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': '给定的自差',
  'step.chain.deviation-by-compass': '罗航向上的自差',
  'step.chain.deviation-by-magnetic': '磁航向上的自差，由自差表反查',
  'step.chain.magnetic-from-compass': '磁：罗经加自差',
  'step.chain.true-from-magnetic': '真：磁加磁差',
  'step.chain.gyro-from-true': '陀罗：真减陀罗差',
  'step.chain.true-from-gyro': '真：陀罗加陀罗差',
  'step.chain.magnetic-from-true': '磁：真减磁差',
  'step.chain.compass-from-magnetic': '罗经：磁减自差',
};
