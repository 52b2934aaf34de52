import type { Catalogue } from '../../shared/catalogue.js';

export const drillStepMessages: Catalogue = {
  'step.drill.reciprocal': '同一条线，从海上看过去',
  'step.drill.chart-variation': '罗经花的磁差加历年年差，向东为正',
  'step.drill.coefficient-A': 'A：八个自差的平均值',
  'step.drill.coefficient-B': 'B：东减西的一半',
  'step.drill.coefficient-C': 'C：北减南的一半',
  'step.drill.coefficient-D': 'D：四分之一，隅点自差按符号相加',
  'step.drill.coefficient-E': 'E：四分之一，基点自差按符号相加',
  'step.drill.deviation-from-coefficients': '自差：A + B sin + C cos + D sin 2 + E cos 2，以罗航向代入',
  'step.drill.permanent': '永久船磁的作用与H成反比',
  'step.drill.induced': '垂直软铁的作用与Z/H成正比',
  'step.drill.slope': '感应部分：H乘B随Z的变化率',
  'step.drill.third-place': '在第三地：第一地的H乘B，加上Z变化的影响',
};
