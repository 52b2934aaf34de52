import type { Catalogue } from '../../shared/catalogue.js';

export const deviationTableMessages: Catalogue = {
  'table.given': '所示内容由页面或船舶提供；在此输入的内容优先。',
  'table.how': '每个航向一行：先罗航向，后自差。可从电子表格粘贴，也可直接输入，次序不限。',
  'table.count': '识别了{count}个航向。',
  'table.title': '作为标题未读入：{title}',
  'table.line': '第{line}行“{text}”：',
  'table.more': '另有{count}行。',
  'accepted.table': '可输入，每行一个：045 2.5W，或045、制表符、−2.5。只有在别处用了负号时，不带字母的数字才算偏东。',
  'refusal.two-columns': '需要一个航向和一个自差。',
  'refusal.given-twice': '上面已给过此航向的另一个自差。',
};
