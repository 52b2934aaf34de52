import type { Catalogue } from '../../shared/catalogue.js';

export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': 'Déclinaison de l’astre à cette heure',
  'step.amplitude.altitude': 'Hauteur vraie du centre au moment observé',
  'step.amplitude.celestial': 'Amplitude, centre sur l’horizon vrai',
  'step.amplitude.visible': 'Amplitude à cette hauteur',
  'step.amplitude.bearing.rising': 'Relèvement vrai : l’astre se lève, on compte donc de l’est',
  'step.amplitude.bearing.setting': 'Relèvement vrai : l’astre se couche, on compte donc de l’ouest',
};
