import type { Catalogue } from '../../shared/catalogue.js';

export const amplitudeStepMessages: Catalogue = {
  'step.amplitude.declination': 'Deklinasi benda angkasa pada waktu ini',
  // unsure: "tinggi sejati titik pusat"; older books say "tinggi pusat sejati"
  'step.amplitude.altitude': 'Tinggi sejati titik pusat pada saat terlihat',
  'step.amplitude.celestial': 'Amplitudo dengan titik pusat di cakrawala sejati',
  'step.amplitude.visible': 'Amplitudo pada tinggi itu',
  'step.amplitude.bearing.rising': 'Baringan sejati: benda angkasa terbit, jadi dihitung dari timur',
  'step.amplitude.bearing.setting': 'Baringan sejati: benda angkasa terbenam, jadi dihitung dari barat',
};
