import type { LubberRecordRequestEvent, LubberResultEvent } from '../shared/events.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { LubberScoreEvent } from '../shared/score-event.js';

/** The widgets by their tags, as far as they are defined: the import of a `define.js` names its own. */
export type LubberTags = {
  [Tag in keyof HTMLElementTagNameMap as Tag extends `lubber-${string}` ? Tag : never]: HTMLElementTagNameMap[Tag];
};

type Method = (...input: never[]) => unknown;

/** What every widget takes besides its own. */
type SharedProps = Pick<LubberElement, 'theme' | 'locked' | 'working' | 'answer' | 'name' | 'required' | 'disabled'>;

/** What of a widget a page may set. */
export type LubberProps<Widget> = {
  [Name in keyof Omit<Widget, keyof LubberElement | 'result'> as Widget[Name] extends Method ? never : Name]?: Widget[Name] | undefined;
} & { [Name in keyof SharedProps]?: SharedProps[Name] | undefined };

/** What a page may hear from any widget, by the name of the event after `on`. */
export interface LubberListeners {
  'onlubber-result'?: ((event: LubberResultEvent) => void) | undefined;
  'onlubber-record-request'?: ((event: LubberRecordRequestEvent) => void) | undefined;
  'onlubber-score'?: ((event: LubberScoreEvent) => void) | undefined;
}
