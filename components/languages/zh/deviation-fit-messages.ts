import type { Catalogue } from '../../shared/catalogue.js';

export const deviationFitMessages: Catalogue = {
  'caution.no-readings': '没有读数。',
  'caution.too-few-readings': '{count}个航向太少：至少应测八个。',
  'caution.too-few-to-find-slips': '只有{count}个航向时，其中一个几度的粗差无法发现。',
  'caution.heading-twice': '航向{heading}测了不止一次：读数相差{apart}。',
  'caution.no-fit': '这些读数无法求出曲线。',
  'caution.not-determined': '所测航向不能确定{coefficients}。',
  'caution.suspect-readings': '与其余不符的读数：{count}个。请复查。',
  'caution.exact-fit-better': '五项式在{heading}上相差{difference}：请用准确系数。',
  'caution.beyond-approximate': '自差达{largest}，超过五项式适用的{limit}：请用准确系数。',
  'caution.constant-curve': '各读数只差一个常数：请检查首基线、方位圈、磁差和陀罗经。',
  'caution.scatter-exceeds-doubt': '读数的离散大于所称的不确定度。',
  'caution.reversed-naming': '这些读数恰为旧自差表东西互换的结果：符号是否弄反了？',
};
