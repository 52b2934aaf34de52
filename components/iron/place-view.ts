import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Field } from '../shared/field.js';
import { selectView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import { latitudeField, longitudeField } from '../shared/trade-fields.js';
import type { Bench } from './bench.js';
import { numberFields } from './bench-fields.js';
import { partsOf, sourceOf } from './place-field.js';
import { placeFieldName, placeNames, placeSources } from './place-names.js';
import type { PlaceName } from './place-names.js';
import { scenarioPlaces } from './places.js';

const choiceName = (place: PlaceName): string => `${place}Place`;

/** The place whose list a name belongs to; undefined for any other name. */
export function placeOfChoice(name: string): PlaceName | undefined {
  return placeNames.find((place) => choiceName(place) === name);
}

/** The port of the scenario that the fields name, or how the place is given. */
function chosenPlace(bench: Bench, place: PlaceName): string {
  const source = sourceOf(bench, place);
  if (source !== 'position') return source;
  const latitude = bench.value(placeFieldName(place, 'latitude'));
  const longitude = bench.value(placeFieldName(place, 'longitude'));
  const same = (field: Field<number>, text: string, value: number | undefined): boolean => {
    const reading = field.parse(text);
    return reading.ok && value !== undefined && Math.abs(reading.value - value) < 1e-9;
  };
  const port = scenarioPlaces.find((each) => same(latitudeField, each.latitude, latitude) && same(longitudeField, each.longitude, longitude));
  return port?.name ?? source;
}

/** A place in a heading or a sentence: its port, or how it is given. */
export function placeTitle(bench: Bench, place: PlaceName): string {
  const chosen = chosenPlace(bench, place);
  const source = placeSources.find((each) => each === chosen);
  if (!source) return chosen;
  return partsOf(source)
    .map((part) => {
      const name = placeFieldName(place, part);
      const value = bench.value(name);
      return value === undefined ? '–' : (numberFields[name] as Field<number>).show(value);
    })
    .join(' ');
}

/** What choosing from the list of places sets. */
export function placeChanges(place: PlaceName, choice: string): Record<string, string> {
  const port = scenarioPlaces.find(({ name }) => name === choice);
  if (!port) return { [placeFieldName(place, 'source')]: choice };
  return {
    [placeFieldName(place, 'source')]: 'position',
    [placeFieldName(place, 'latitude')]: port.latitude,
    [placeFieldName(place, 'longitude')]: port.longitude,
  };
}

/** A place: from the list of ports, by its position, or by its forces. */
export function placeView(bench: Bench, place: PlaceName, label: string): TemplateResult {
  const source = sourceOf(bench, place);
  const units: Readonly<Record<string, string>> = { horizontal: 'µT', vertical: 'µT', dip: '°' };
  return html`<div class="place">
    ${selectView(bench, choiceName(place), label, chosenPlace(bench, place), [
      { label: bench.t('iron.place.ports'), options: scenarioPlaces.map(({ name }) => ({ value: name, label: name })) },
      { label: bench.t('iron.place.typed'), options: placeSources.map((value) => ({ value, label: bench.t(`iron.place.${value}`) })) },
    ])}
    <div class="pair">
      ${partsOf(source).map((part) => {
        const name = placeFieldName(place, part);
        const unit = units[part];
        return fieldView(bench, name, numberFields[name] as Field<number>, bench.number(name), {
          label: bench.t(`iron.${part}`),
          ...(unit === undefined ? { echo: '' } : { echo: unit }),
        });
      })}
    </div>
  </div>`;
}

/** The day for the magnetic models; not asked for where every place is given by its forces. */
export function dateView(bench: Bench, places: readonly PlaceName[]): TemplateResult | typeof nothing {
  if (!places.some((place) => sourceOf(bench, place) === 'position')) return nothing;
  return fieldView(bench, 'date', bench.dateField, bench.day(), { label: bench.t('iron.date'), echo: '' });
}
