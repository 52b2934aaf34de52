import type { Catalogue } from '../../shared/catalogue.js';

export const earthFieldMessages: Catalogue = {
  'earth.elements': '此地的地磁场',
  'earth.element': '要素',
  'earth.value': '数值',
  'earth.sigma': '1倍标准差',
  'earth.change': '年变化',
  'earth.variation': '磁差',
  'earth.inclination': '磁倾角，向下为+',
  'earth.h': '水平分力H',
  'earth.z': '垂直分力Z，向下为+',
  'earth.f': '总磁力F',
  'earth.none': '无',
  'earth.sigma.note': '海上可能遇到的差异的一倍标准差：包括模型本身的误差、海底岩石和平静日的变化；不计磁暴和沉船。',
  'earth.outside': '地磁模型适用于{from}至{until}（含首尾）：此日期的磁场无模型可用。',
  'earth.outside.model': '{model}适用于{from}至{until}（含首尾）：不能给出此日期的磁场。',
  'earth.outside.take': '改用{year}年1月1日',
  'caution.dip-pole': '此处磁力线垂直：没有磁北方向，也就没有磁差。',
  'caution.geographic-pole': '在极点，磁差从{longitude}子午线起算：换一条子午线数值就不同。',
};
