import type { Catalogue } from '../../shared/catalogue.js';

export const earthFieldMessages: Catalogue = {
  'earth.elements': 'Das Erdmagnetfeld hier',
  'earth.element': 'Element',
  'earth.value': 'Wert',
  'earth.sigma': '1 Sigma',
  'earth.change': 'je Jahr',
  'earth.variation': 'Missweisung',
  'earth.inclination': 'Inklination I, + unten',
  'earth.h': 'Horizontal H',
  'earth.z': 'Vertikal Z, + unten',
  'earth.f': 'Total F',
  'earth.none': 'keine',
  'earth.sigma.note': 'Eine Standardabweichung dessen, was man auf See antrifft: Unsicherheit des Modells, Gestein am Grund und ruhige Tage; ohne magnetische Stürme und Wracks.',
  'earth.outside': 'Die Magnetfeldmodelle gelten vom {from} bis {until} einschließlich: Für dieses Datum gibt keines das Feld.',
  'earth.outside.model': '{model} gilt vom {from} bis {until} einschließlich: Für dieses Datum gibt es das Feld nicht.',
  'earth.outside.take': 'Statt dessen 1. Januar {year}',
  'caution.dip-pole': 'Das Feld steht hier senkrecht: Keine Richtung ist magnetisch Nord, es gibt keine Missweisung.',
  'caution.geographic-pole': 'Am Pol zählt die Missweisung vom Meridian {longitude}: Jeder andere gibt eine andere.',
};
