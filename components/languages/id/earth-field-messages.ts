import type { Catalogue } from '../../shared/catalogue.js';

export const earthFieldMessages: Catalogue = {
  'earth.elements': 'Medan magnet bumi di sini',
  'earth.element': 'unsur',
  'earth.value': 'nilai',
  'earth.sigma': '1 sigma',
  'earth.change': 'per tahun',
  'earth.variation': 'Variasi',
  // unsure: "inklinasi" for the dip; "inklinasi magnet" or "sudut dip" are also met
  'earth.inclination': 'Inklinasi, bawah\u00a0+',
  'earth.h': 'Horizontal H',
  'earth.z': 'Vertikal Z, bawah\u00a0+',
  'earth.f': 'Total F',
  'earth.none': 'tidak ada',
  'earth.sigma.note': 'Satu simpangan baku dari yang mungkin dijumpai di laut: ketidakpastian model sendiri, batuan di bawah dan hari tenang; badai magnetik dan bangkai kapal tidak dihitung.',
  'earth.outside': 'Model magnetik berlaku dari {from} sampai {until}, keduanya termasuk: tidak satu pun menyatakan medan pada tanggal ini.',
  'earth.outside.model': '{model} berlaku dari {from} sampai {until}, keduanya termasuk: tidak menyatakan medan pada tanggal ini.',
  'earth.outside.take': 'Pakai 1 Januari {year} sebagai gantinya',
  'caution.dip-pole': 'Medan magnet di sini tegak lurus: tidak ada arah utara magnetis, dan tidak ada variasi.',
  'caution.geographic-pole': 'Di kutub variasi dihitung dari meridian {longitude}: setiap meridian lain memberi nilai lain.',
};
