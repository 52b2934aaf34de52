import type { Catalogue } from '../../shared/catalogue.js';

export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': '此时天体的赤纬',
  'step.amplitude.altitude': '观测时刻的中心真高度',
  'step.amplitude.celestial': '中心在真地平圈上时的出没方位角',
  'step.amplitude.visible': '该高度上的出没方位角',
  'step.amplitude.bearing.rising': '真方位：天体升起，故从东起算',
  'step.amplitude.bearing.setting': '真方位：天体降没，故从西起算',
};
