/** Speed of light, astronomical units a day (299,792,458 m/s and IAU 2012's astronomical unit). */
export const LIGHT = 173.1446326846693;
