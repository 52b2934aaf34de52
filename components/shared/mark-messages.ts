import type { Catalogue } from './catalogue.js';

/** English of the two marks of a transit. */
export const markMessages: Catalogue = {
  'transit.frontLatitude': 'Front mark, latitude',
  'transit.frontLongitude': 'Front mark, longitude',
  'transit.rearLatitude': 'Rear mark, latitude',
  'transit.rearLongitude': 'Rear mark, longitude',
  'transit.none.same-place': '{line}There is no line: the two places are the same.',
  'transit.none.pole': '{line}At a pole every direction is the same: there is no bearing.',
  'transit.none.two-ways': '{line}These places lie opposite each other on the globe: check the positions.',
  'caution.mark-beyond-sight': '{line}A mark {distance} away cannot be seen: check the positions, N or S, E or W.',
};
