import type { Catalogue } from '../../shared/catalogue.js';

export const errorStepMessages: Catalogue = {
  'symbol.card': '自差表',
  'symbol.chart': '海图',
  'step.error.compass': '罗经差：真方位减罗方位',
  'step.error.gyro': '陀罗差：真方位减陀罗方位',
  'step.variation.model': '世界地磁模型给出的磁差',
  'step.variation.given': '给定的磁差',
  'step.error.deviation': '自差：罗经差减磁差',
  'step.error.difference': '与自差表之差',
};
