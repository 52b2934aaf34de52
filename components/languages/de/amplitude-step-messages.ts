import type { Catalogue } from '../../shared/catalogue.js';

export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': 'Abweichung des Gestirns zu dieser Zeit',
  'step.amplitude.altitude': 'Wahre Höhe des Mittelpunkts im beobachteten Augenblick',
  'step.amplitude.celestial': 'Amplitude, Mittelpunkt im wahren Horizont',
  'step.amplitude.visible': 'Amplitude in dieser Höhe',
  'step.amplitude.bearing.rising': 'Rechtweisende Peilung: Aufgang, also von Ost gezählt',
  'step.amplitude.bearing.setting': 'Rechtweisende Peilung: Untergang, also von West gezählt',
};
