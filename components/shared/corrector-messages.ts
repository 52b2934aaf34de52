import type { Catalogue } from './catalogue.js';

/** English of the correctors of a binnacle, and of the lines an adjuster signs on. */
export const correctorMessages: Catalogue = {
  'card.correctors': 'Correctors',
  'card.corrector.foreAndAft': 'Fore-and-aft magnets',
  'card.corrector.athwartships': 'Athwartship magnets',
  'card.corrector.heeling': 'Heeling magnet',
  'card.corrector.spheres': 'Spheres',
  'card.corrector.flinders': 'Flinders bar',
  'card.corrector.what': 'number, size',
  'card.corrector.end': 'red ends, side',
  'card.corrector.distance': 'distance, place',
  'card.end.red-forward': 'red forward',
  'card.end.red-aft': 'red aft',
  'card.end.red-starboard': 'red to starboard',
  'card.end.red-port': 'red to port',
  'card.end.red-up': 'red up',
  'card.end.red-down': 'red down',
  'card.end.athwartships': 'athwartships',
  'card.end.fore-and-aft': 'fore and aft',
  'card.end.slewed': 'slewed',
  'card.end.forward': 'forward',
  'card.end.aft': 'aft',
  'card.place': 'Swung at',
  'card.sign.adjuster': 'Compass adjuster, name and signature',
  'card.sign.master': 'Master',
  'card.sign.dated': 'Date',
};
