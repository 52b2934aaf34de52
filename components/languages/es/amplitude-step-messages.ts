import type { Catalogue } from '../../shared/catalogue.js';

export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': 'Declinación del astro a esta hora',
  'step.amplitude.altitude': 'Altura verdadera del centro en el momento de la observación',
  'step.amplitude.celestial': 'Amplitud con el centro en el horizonte verdadero',
  'step.amplitude.visible': 'Amplitud a esa altura',
  'step.amplitude.bearing.rising': 'Demora verdadera: el astro sale, se cuenta pues desde el este',
  'step.amplitude.bearing.setting': 'Demora verdadera: el astro se pone, se cuenta pues desde el oeste',
};
