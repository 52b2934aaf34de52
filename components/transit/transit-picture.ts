import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';
import { wrap180 } from '../../core/angle/wrap.js';
import type { MarkError, TransitSight } from '../../core/sight/transit-result.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenBearing, spokenError } from '../shared/spoken.js';

/** Length of the lines, units that are pixels at full size; beside it their bearings need room. */
const REACH = { wide: 150, middle: 126, narrow: 78 } as const;
const ROOM = 66;
/** Above and below, half a line of type. */
const TYPE = 18;

interface Point {
  readonly x: number;
  readonly y: number;
}

interface North {
  /** True direction of this north, degrees. */
  readonly bearing: number;
  readonly label: string;
  readonly colour: string;
  readonly dash: string;
}

function at(centre: number, bearing: number, radius: number): Point {
  return { x: centre + radius * sinDegrees(bearing), y: centre - radius * cosDegrees(bearing) };
}

/** The bearing of a line at its far end, on the outer side. */
function lineLabel(centre: number, point: Point, text: string): TemplateResult {
  const anchor = Math.abs(point.x - centre) < 12 ? 'middle' : point.x > centre ? 'start' : 'end';
  return svg`<text x=${point.x} y=${point.y + (point.y < centre ? -6 : 14)} text-anchor=${anchor}>${text}</text>`;
}

function northsOf(host: LubberElement, result: TransitSight): North[] {
  const gyro = result.compass === 'gyro';
  const norths: North[] = [{ bearing: 0, label: host.t('transit.north.true'), colour: 'var(--ink)', dash: '' }];
  if (!gyro && result.variation.source !== 'none') {
    norths.push({ bearing: result.variation.value, label: host.t('transit.north.magnetic'), colour: 'var(--soft)', dash: '6 3' });
  }
  norths.push({ bearing: result.error, label: host.t(gyro ? 'transit.north.gyro' : 'transit.north.compass'), colour: 'var(--accent)', dash: '2 3' });
  return norths;
}

/** Shorter by this part of the lines is each further north, so that their names do not meet. */
const STAGGER = 0.22;

/** A line that leads so near north, degrees, has its bearing written where the name of true north would stand. */
const NEAR_NORTH = 25;

/** Nearer to north than this, degrees, a line runs through the names of the norths on its side. */
const NAMES = 75;

/** Where the name of a north is written. */
interface NamePlace extends Point {
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A north as an arrow with its name. */
function northView(centre: number, north: North, radius: number, name: NamePlace): TemplateResult {
  const tip = at(centre, north.bearing, radius);
  const [left, right] = [at(centre, north.bearing - 3, radius - 11), at(centre, north.bearing + 3, radius - 11)];
  return svg`<line x1=${centre} y1=${centre} x2=${tip.x} y2=${tip.y} stroke=${north.colour} stroke-width="1.4" stroke-dasharray=${north.dash || nothing}></line>
    <path d="M${left.x} ${left.y} L${tip.x} ${tip.y} L${right.x} ${right.y}" fill="none" stroke=${north.colour} stroke-width="1.4"></path>
    <text class="soft" x=${name.x} y=${name.y} text-anchor=${name.anchor}>${north.label}</text>`;
}

/**
 * The name of a north stands on the side to which it lies, or beyond all norths where a line takes the room there
 * and none on the other side; true north's above its tip, or aside where a line leads past it.
 */
function namePlace(centre: number, tip: Point, { bearing }: North, first: boolean, marks: readonly MarkError[]): NamePlace {
  const bearings = marks.map(({ trueBearing }) => wrap180(trueBearing));
  const northward = bearings.find((each) => Math.abs(each) < NEAR_NORTH);
  if (first && northward === undefined) return { x: tip.x, y: tip.y - 6, anchor: 'middle' };
  const east = first ? Number(northward) < 0 : bearing >= 0;
  const taken = (by: number): boolean => bearings.some((each) => each * by > 0 && each * by < NAMES);
  const side = east ? 1 : -1;
  const beyond = !first && taken(side) && !taken(-side);
  const away = beyond ? -side : side;
  return { x: (beyond ? centre : tip.x) + 10 * away, y: tip.y + 4, anchor: away > 0 ? 'start' : 'end' };
}

/** How far along the ray the front mark stands: to scale where the distances are known. */
function frontPart({ markDistance, shipDistance, ship }: MarkError): number {
  if (markDistance === null) return 1;
  const toScale = shipDistance !== null && ship?.side === 'before';
  return Math.min(0.85, Math.max(0.3, toScale ? shipDistance / (shipDistance + markDistance) : 0.6));
}

function lineView(centre: number, reach: number, mark: MarkError, number: number | null): TemplateResult {
  const far = at(centre, mark.trueBearing, reach);
  const behind = at(centre, mark.trueBearing, -reach * 0.25);
  const front = at(centre, mark.trueBearing, reach * 0.92 * frontPart(mark));
  const rear = at(centre, mark.trueBearing, reach * 0.92);
  const post = ({ x, y }: Point, size: number): TemplateResult =>
    svg`<path d="M${x} ${y - size} L${x + size * 0.8} ${y + size * 0.7} H${x - size * 0.8} Z" fill="var(--paper)" stroke="var(--body)" stroke-width="1.8"></path>`;
  const marks = mark.kind === 'charted' ? nothing : mark.kind === 'one-mark' ? post(rear, 8) : svg`${post(front, 7)}${post(rear, 9)}`;
  const text = number === null ? formatBearing(mark.trueBearing) : `${number}: ${formatBearing(mark.trueBearing)}`;
  return svg`<line x1=${behind.x} y1=${behind.y} x2=${far.x} y2=${far.y} stroke="var(--body)" stroke-width="1.6"></line>${marks}
    ${lineLabel(centre, at(centre, mark.trueBearing, reach + 4), text)}`;
}

/** Top and height of what is drawn: half of the circle is often empty. */
function extent(centre: number, reach: number, { marks }: TransitSight): { top: number; height: number } {
  const ends = marks.flatMap(({ trueBearing }) => [at(centre, trueBearing, reach).y, at(centre, trueBearing, -reach / 4).y]);
  const top = Math.min(centre - reach, ...ends) - TYPE;
  return { top, height: Math.max(centre, ...ends) + TYPE - top };
}

/**
 * The ship in the middle, the lines she saw and the norths, all directions to scale: the error
 * is the angle between true north and the compass's.
 */
export function transitPicture(host: LubberElement, result: TransitSight, numbers: readonly number[]): TemplateResult {
  const reach = REACH[host.width.picture];
  const centre = reach + ROOM;
  const { top, height } = extent(centre, reach, result);
  const several = result.marks.length > 1;
  const [first] = result.marks;
  const error = spokenError(result.error, host.t);
  const summary =
    first && !several
      ? host.t('transit.picture.one', { true: spokenBearing(first.trueBearing, host.t), compass: spokenBearing(first.compassBearing, host.t), error })
      : host.t('transit.picture.several', { count: result.marks.length, error });
  const magnetic = result.variation.source === 'none' || result.compass === 'gyro' ? '' : ` ${host.t('transit.picture.magnetic', { variation: spokenError(result.variation.value, host.t) })}`;
  const norths = northsOf(host, result);
  return html`<svg part="picture" viewBox="0 ${top} ${2 * centre} ${height}" role="img" aria-label="${summary}${magnetic}" class="plan">
    ${result.marks.map((mark, index) => lineView(centre, reach, mark, several ? (numbers[index] ?? index + 1) : null))}
    ${norths.map((north, index) => {
      const length = reach * (1 - index * STAGGER) - 6;
      return northView(centre, north, length, namePlace(centre, at(centre, north.bearing, length), north, index === 0, result.marks));
    })}
    <circle cx=${centre} cy=${centre} r="6" fill="var(--paper)" stroke="var(--ink)" stroke-width="1.6"></circle>
  </svg>`;
}
