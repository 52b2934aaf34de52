import type { Catalogue } from '../../shared/catalogue.js';

export const transitStepMessages: Catalogue = {
  'step.transit.longitude': '经差，分，向东为正',
  'step.transit.parts': 'WGS 84椭球上的纬度渐长率差，向北为正',
  'step.transit.rhumb': '墨卡托海图上的方位，化到所在象限',
  'step.transit.true.two-marks': '沿视线的真方位（WGS 84大地线）；船位已知时取其经过船的一段',
  'step.transit.true.charted': '海图上的真方位',
};
