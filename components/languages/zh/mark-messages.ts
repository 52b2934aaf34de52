import type { Catalogue } from '../../shared/catalogue.js';

export const markMessages: Catalogue = {
  'transit.frontLatitude': '前标纬度',
  'transit.frontLongitude': '前标经度',
  'transit.rearLatitude': '后标纬度',
  'transit.rearLongitude': '后标经度',
  'transit.none.same-place': '{line}不成线：两处位置相同。',
  'transit.none.pole': '{line}在极点各方向都相同：没有方位。',
  'transit.none.two-ways': '{line}两处位于地球的对跖点：请检查位置。',
  'caution.mark-beyond-sight': '{line}距离{distance}的物标看不见：请检查位置，N或S，E或W。',
};
