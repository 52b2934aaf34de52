import type { ReactElement } from 'react';
import type {} from 'lubberline/components/amplitude/define.js';
import type {} from 'lubberline/components/drill/define.js';
import type {} from 'lubberline/react';

export const right: readonly ReactElement[] = [
  <lubber-amplitude latitude="33-24.0N" longitude={-38.2} heightOfEye={18} theme="night" className="wide" onlubber-result={({ detail }) => detail.widget.length} />,
  <lubber-drill key="drill" seed="4711" count={5} onlubber-score={({ detail }) => detail.scaled} />,
];

export const wrong: readonly ReactElement[] = [
  // @ts-expect-error: there is no such moment
  <lubber-amplitude moment="noon" />,
  // @ts-expect-error: a result is not set
  <lubber-amplitude result={null} />,
  // @ts-expect-error: what is heard has no such detail
  <lubber-amplitude onlubber-result={({ detail }) => detail.nothing} />,
];
