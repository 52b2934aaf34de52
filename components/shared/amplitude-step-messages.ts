import type { Catalogue } from './catalogue.js';

/** The lines of the working of an amplitude, for the calculator and the exercises. */
export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': 'Declination of the body at this time',
  'step.amplitude.altitude': 'True altitude of the centre at the moment seen',
  'step.amplitude.celestial': 'Amplitude with the centre on the celestial horizon',
  'step.amplitude.visible': 'Amplitude at that altitude',
  'step.amplitude.bearing.rising': 'True bearing: the body rises, so counted from east',
  'step.amplitude.bearing.setting': 'True bearing: the body sets, so counted from west',
};
