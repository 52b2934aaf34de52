import type { Catalogue } from '../../shared/catalogue.js';

export const lmsMessages: Catalogue = {
  'lms.none': '此处没有学习平台：一切功能可用，不上报成绩。',
  'lms.opening': '正在连接学习平台……',
  'lms.open': '每次作答后，成绩都会报送学习平台。',
  'lms.review': '以查看方式打开：不向学习平台报送任何内容。',
  'lms.refused': '学习平台未能建立会话：一切功能可用，不上报成绩。',
  'lms.trouble': '学习平台未接收上次报送。下次将重新报送全部内容。',
  'lms.finished': '与学习平台的会话已结束。要继续上报，请从平台重新打开本课。',
};
