import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': '船位',
  'doubt.time': '时间',
  'accepted.doubt.s': '可输入：0至600\u00a0s，一倍标准差。',
  'accepted.doubt.M': '可输入：0至60\u00a0M，一倍标准差。',
  'caution.time-by-hours': '若时间改动{hours}小时，天体就在所见之处：输入的是区时而不是UTC（时区号{hours}），还是小时有误？',
  'caution.longitude-turned': '若经度为{longitude}，天体就在所见之处：是否把东经当成了西经？',
  'caution.latitude-turned': '若纬度为{latitude}，天体就在所见之处：是否把北纬当成了南纬？',
  'caution.lost-in-daylight': '此时太阳高度为{sun}：在这种光线下看不到{body}。请检查日期、时间和天体。',
  'caution.lost-beside-sun': '此时{body}离太阳太近，无法看见。请检查日期、时间和天体。',
};
