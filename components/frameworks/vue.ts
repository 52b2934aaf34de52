import type { DefineComponent, HTMLAttributes } from 'vue';
import type { LubberListeners, LubberProps, LubberTags } from './props.js';

/** Vue writes `@lubber-result` as `onLubberResult`. */
interface Listeners {
  onLubberResult?: LubberListeners['onlubber-result'];
  onLubberRecordRequest?: LubberListeners['onlubber-record-request'];
  onLubberScore?: LubberListeners['onlubber-score'];
}

/** The widgets as the templates of Vue 3 take them. */
type Components = {
  [Tag in keyof LubberTags]: DefineComponent<LubberProps<LubberTags[Tag]> & Listeners & Omit<HTMLAttributes, keyof LubberProps<LubberTags[Tag]>>>;
};

declare module 'vue' {
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type -- an interface is merged, a type is not.
  interface GlobalComponents extends Components {}
}
