import { property } from 'lit/decorators.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';
import type { LimitCode } from '../shared/limit-view.js';
import { LubberElement } from '../shared/lubber-element.js';
import type { GridRow } from './grid-row.js';
import { swingFields } from './swing-fields.js';
import { swingMessages } from './swing-messages.js';
import type { StageName } from './swing-sheet.js';
import { swingWords } from './swing-words.js';

/** What a page can set of a swing. */
export abstract class SwingProperties extends LubberElement {
  /** Rows as text: a line each, heading, reading and what the method asks besides, parted by tabs; names of columns over them are left out, which is said above the grid. Or as data: `heading`, `reading`, `second` (time of the Sun, or the shore's bearing), `steering`, `by` and `method` as texts, `struck` and `steeringStruck`; whatever else an object holds is not read. */
  @property() rows?: readonly Partial<GridRow>[] | string;

  /** Rows read before anything was moved, as `rows`; with them the swing is one of two rounds, and `rows` are as left. */
  @property({ attribute: 'found-rows' }) foundRows?: readonly Partial<GridRow>[] | string;

  /** `one` round of readings, or `two`: as found and as left. */
  @property() stages?: 'one' | 'two';

  /** Which of two rounds is shown: `found` or `left`. */
  @property() stage?: StageName;

  /** `one` compass, or `two`: the head by the steering compass is read beside the standard. */
  @property() compasses?: 'one' | 'two';

  /** The state of the correctors of the standard compass, as left; as attribute its JSON. */
  @property() correctors?: Partial<Correctors> | string;

  /** The same as found. */
  @property({ attribute: 'found-correctors' }) foundCorrectors?: Partial<Correctors> | string;

  /** The state of the correctors of the steering compass, as left; as attribute its JSON. */
  @property({ attribute: 'steering-correctors' }) steeringCorrectors?: Partial<Correctors> | string;

  /** The same as found. */
  @property({ attribute: 'found-steering-correctors' }) foundSteeringCorrectors?: Partial<Correctors> | string;

  /** `deviation`, `known-object`, `unknown-object`, `sun`, `transit`, `shore-compass` or `gyro`. */
  @property() method?: SwingMethod;

  /** By which north the headings are: `compass`, `magnetic` or `gyro`. */
  @property({ attribute: 'heading-by' }) headingBy?: HeadingReckoning;

  /** Headings planned: 8, 16, 24 or 36. */
  @property() headings?: 8 | 16 | 24 | 36 | '8' | '16' | '24' | '36';

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** Where she is swung: degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** Day of the swing, UTC. */
  @property() date?: string;

  /** Bearing of the distant object, degrees. */
  @property({ attribute: 'object-bearing' }) objectBearing?: string | number;

  /** By which north that bearing is: `magnetic` or `true`. */
  @property({ attribute: 'object-by' }) objectBy?: 'magnetic' | 'true';

  /** Radius of the swinging circle, metres. */
  @property({ attribute: 'circle-radius' }) circleRadius?: string | number;

  /** Distance of the object, nautical miles. */
  @property({ attribute: 'circle-distance' }) circleDistance?: string | number;

  /** Which way she turned: `starboard` or `port`; `unknown` as without it. */
  @property() turning?: 'starboard' | 'port' | 'unknown';

  /** Charted true bearing of the transit, degrees. */
  @property({ attribute: 'transit-bearing' }) transitBearing?: string | number;

  /** How the transit is given: by its `bearing` or by its two `marks`. */
  @property({ attribute: 'transit-by' }) transitBy?: 'bearing' | 'marks';

  /** Front mark of the transit: degrees, north positive, or text. */
  @property({ attribute: 'front-latitude' }) frontLatitude?: string | number;

  /** Front mark: degrees, east positive, or text. */
  @property({ attribute: 'front-longitude' }) frontLongitude?: string | number;

  /** Rear mark of the transit: degrees, north positive, or text. */
  @property({ attribute: 'rear-latitude' }) rearLatitude?: string | number;

  /** Rear mark: degrees, east positive, or text. */
  @property({ attribute: 'rear-longitude' }) rearLongitude?: string | number;

  /** Error of the gyro, degrees, east positive; left empty, not known. */
  @property({ attribute: 'gyro-error' }) gyroError?: string | number;

  /** Error of the shore compass, degrees, east positive; left empty, none. */
  @property({ attribute: 'shore-error' }) shoreError?: string | number;

  /** A known from elsewhere, degrees, for methods that lose it. */
  @property() constant?: string | number;

  /** `auto`, `approximate` or `exact`. */
  @property() model?: 'auto' | 'approximate' | 'exact';

  /** Code of the limit the card is held against. */
  @property() limit?: LimitCode;

  /** The card in use until now, as data; as attribute its JSON. */
  @property() card?: DeviationCard | string;

  /** Name under which the swing is kept on this device until cleared; without one nothing is kept. */
  @property() draft?: string;

  protected readonly messages = swingMessages;
  protected readonly fields = swingFields;
  protected override readonly words = swingWords;
}
