import type { DetailedHTMLProps, HTMLAttributes } from 'react';
import type { LubberListeners, LubberProps, LubberTags } from './props.js';

/** The widgets as React 19 takes them: numbers and objects as they are, events as `onlubber-result`. */
type Elements = {
  [Tag in keyof LubberTags]: LubberProps<LubberTags[Tag]> & LubberListeners & Omit<DetailedHTMLProps<HTMLAttributes<LubberTags[Tag]>, LubberTags[Tag]>, keyof LubberProps<LubberTags[Tag]>>;
};

declare module 'react' {
  // eslint-disable-next-line @typescript-eslint/no-namespace -- React looks for its tags there.
  namespace JSX {
    // eslint-disable-next-line @typescript-eslint/no-empty-object-type -- an interface is merged, a type is not.
    interface IntrinsicElements extends Elements {}
  }
}
