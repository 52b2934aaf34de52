import type { Catalogue } from '../../shared/catalogue.js';

export const sightMessages: Catalogue = {
  'sight.latitude': '纬度',
  'sight.longitude': '经度',
  'sight.date': '世界时日期',
  'sight.time': '世界时',
  'sight.heightOfEye': '眼高',
  'sight.compass': '罗经',
  'sight.compass.magnetic': '磁罗经',
  'sight.compass.gyro': '陀罗经',
  'sight.heading': '罗航向（船首向）',
  'sight.heading.gyro': '陀罗航向（船首向）',
  'sight.variation': '磁差',
  'sight.variation.model': '取自模型',
  'sight.cardDeviation': '自差表上的自差',
  'sight.cardDeviation.none': '无自差表',
};
