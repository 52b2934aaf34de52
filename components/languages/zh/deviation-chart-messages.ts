import type { Catalogue } from '../../shared/catalogue.js';

export const deviationChartMessages: Catalogue = {
  'chart.observed': '实测',
  'chart.suspect': '可疑读数',
  'chart.struck': '已剔除',
  'chart.band': '真曲线所在范围，二十次中有十九次',
  'chart.limit': '限值',
  'chart.summary': '{name}：从{leastOn}上的{least}到{mostOn}上的{most}；{crossings}。',
  'chart.crossings': '在{headings}上无自差',
  'chart.crossings.none': '各航向均有自差',
};
