import type { Catalogue } from './catalogue.js';
import { zoneMessages } from './zone-messages.js';

/** English that the widgets of the Earth's field share: its elements, places where a compass is of no use, years. */
export const earthFieldMessages: Catalogue = {
  ...zoneMessages,
  'sight.latitude': 'Latitude',
  'sight.longitude': 'Longitude',
  'sight.date': 'UTC date',
  'sight.time': 'UTC time',
  'earth.elements': 'The Earth’s field here',
  'earth.element': 'element',
  'earth.value': 'value',
  'earth.sigma': '1 sigma',
  'earth.change': 'in a year',
  'earth.variation': 'Variation',
  'earth.inclination': 'Dip, down\u00a0+',
  'earth.h': 'Horizontal H',
  'earth.z': 'Vertical Z, down\u00a0+',
  'earth.f': 'Total F',
  'earth.none': 'none',
  'earth.sigma.note': 'One standard deviation of what may be met at sea: the model’s own doubt, the rocks below and quiet days; storms and wrecks not counted.',
  'earth.outside': 'The magnetic models hold from {from} to {until}, both included: none says what the field is on this date.',
  'earth.outside.model': '{model} holds from {from} to {until}, both included: it does not say what the field is on this date.',
  'earth.outside.take': 'Take 1 January {year} instead',
  'caution.dip-pole': 'The field stands upright here: no direction is magnetic north, and there is no variation.',
  'caution.geographic-pole': 'At the pole the variation is counted from the meridian of {longitude}: every other meridian gives another.',
};
