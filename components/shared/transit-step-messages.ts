import type { Catalogue } from './catalogue.js';

/** The lines of the working of marks ashore, for the calculator and the exercises. */
export const transitStepMessages: Catalogue = {
  'step.transit.longitude': 'Difference of longitude, minutes, east positive',
  'step.transit.parts': 'Difference of meridional parts on WGS 84, north positive',
  'step.transit.rhumb': 'Bearing on the Mercator chart, put into its quadrant',
  'step.transit.true.two-marks': 'True bearing along the line of sight (geodesic on WGS 84), where it passes the ship if her place is known',
  'step.transit.true.charted': 'True bearing as charted',
};
