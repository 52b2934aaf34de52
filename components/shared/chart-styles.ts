import { css } from 'lit';

/** What a canvas of the drawing library needs of a style sheet, and which of the two drawings shows. */
export const chartStyles = css`
  .live { direction: ltr; min-inline-size: 0; overflow: hidden; position: relative; }
  .live .u-wrap { position: relative; user-select: none; }
  .live .u-over, .live .u-under { position: absolute; }
  .live .u-under { overflow: hidden; }
  .live canvas { display: block; position: relative; inline-size: 100%; block-size: 100%; }
  .live .u-axis, .live .u-select { display: none; }
  .live .u-cursor-x { position: absolute; inset-block-start: 0; left: 0; block-size: 100%; border-inline-end: 1px dashed var(--accent); pointer-events: none; }
  .live .u-cursor-y, .live .u-off { display: none; }
  .live .u-cursor-pt { position: absolute; top: 0; left: 0; border-radius: 50%; pointer-events: none; }
  .drawn .static { display: none; }
  @media print {
    .live { display: none; }
    .drawn .static { display: block; }
  }
`;
