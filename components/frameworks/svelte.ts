import type { HTMLAttributes } from 'svelte/elements';
import type { LubberListeners, LubberProps, LubberTags } from './props.js';

/** The widgets as the templates of Svelte 5 take them: events as `onlubber-result`. */
type Elements = {
  [Tag in keyof LubberTags]: LubberProps<LubberTags[Tag]> & LubberListeners & Omit<HTMLAttributes<LubberTags[Tag]>, keyof LubberProps<LubberTags[Tag]>>;
};

declare module 'svelte/elements' {
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type -- an interface is merged, a type is not.
  interface SvelteHTMLElements extends Elements {}
}
