import { sights } from '../../components/build/scripts.js';

/** What something may weigh, packed by gzip at its best, in kilobytes of a thousand bytes. */
export interface Budget {
  readonly what: string;
  /** Modules of dist/components bundled and minified with all they need; or a script as it is. */
  readonly modules?: readonly string[];
  readonly script?: string;
  /** What it may weigh: the test fails above. */
  readonly allowed: number;
  /** What was wanted, where that is not reached yet. */
  readonly wanted?: number;
  /** What is loaded late, to be weighed alone. */
  readonly late?: 'uplot';
}

const defined = (names: readonly string[]): string[] => names.map((name) => `${name}/define.js`);

export const budgets: readonly Budget[] = [
  { what: 'lit alone, to compare with', allowed: 7 },
  // Nothing of it comes late: the search for the next rising (1.4 kB) is wanted at once wherever a ship shares her time,
  // and what stands behind closed summaries (1.2 kB) as soon as the browser is idle. That would hide the weight, not take it away.
  { what: 'amplitude', modules: defined(['amplitude']), allowed: 48 },
  { what: 'conversion', modules: defined(['conversion']), wanted: 18, allowed: 37.9 },
  { what: 'variation', modules: defined(['variation']), allowed: 34.4 },
  { what: 'azimuth', modules: defined(['azimuth']), allowed: 57.1 },
  { what: 'transit', modules: defined(['transit']), allowed: 41.5 },
  { what: 'drill', modules: defined(['drill']), wanted: 60, allowed: 74.5 },
  { what: 'map of the field', modules: defined(['field-map']), allowed: 39.6 },
  { what: 'the chart library, late', modules: defined(['deviation-curve']), late: 'uplot', allowed: 30 },
  { what: 'the sights and the ship, without charts', modules: defined(sights), wanted: 85, allowed: 109.5 },
  { what: 'script of the sights', script: 'lubberline-sights.js', wanted: 85, allowed: 102.8 },
  { what: 'script of the drill', script: 'lubberline-drill.js', wanted: 60, allowed: 72.5 },
  { what: 'script without the map, chart library and all', script: 'lubberline-without-map.js', wanted: 130, allowed: 240.9 },
  { what: 'script of everything', script: 'lubberline.js', allowed: 254.2 },
  { what: 'script of a course', script: 'lubberline-course.js', allowed: 9 },
];
