import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': '船位',
  'doubt.time': '时间',
  'accepted.doubt.s': '可输入：0至600 s，一倍标准差。',
  'accepted.doubt.M': '可输入：0至60 M，一倍标准差。',
  'caution.other-side': '误差{error}会使天体落到罗盘的另一侧：请检查方位、天体和时间。',
  'caution.lost-in-daylight': '此时太阳高度为{sun}：在这种光线下看不到{body}。请检查日期、时间和天体。',
  'caution.lost-beside-sun': '此时月亮离太阳太近，看不到。请检查日期、时间和天体。',
  'caution.gyro-error-large': '陀罗差{error}偏大：请检查天体、时间和陀罗经及其航速、纬度设定。',
  'caution.far-from-card': '自差与自差表相差{difference}，远超不确定度±{doubt}：请检查天体、时间和罗经，再检查自差表。',
  'caution.beyond-doubt-of-card': '自差与自差表相差{difference}，超过不确定度±{doubt}的两倍。请再观测一次。',
  'caution.within-doubt-of-card': '与自差表之差{difference}在一次观测的不确定度（±{doubt}）之内。',
  'caution.deviation-large': '对于校正过的罗经，自差{deviation}偏大：请检查天体、时间和罗经。',
};
