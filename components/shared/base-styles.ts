import { css } from 'lit';

/** One typeface, hairlines instead of boxes: what every widget stands on. */
export const baseStyles = css`
  :host { display: block; }
  :host([hidden]) { display: none; }
  * { box-sizing: border-box; }
  .frame {
    background: var(--paper);
    color: var(--ink);
    font: 1rem/1.45 var(--lubber-font, 'Source Sans 3', 'Segoe UI', system-ui, sans-serif);
    font-variant-numeric: tabular-nums lining-nums;
    text-align: start;
    overflow-wrap: break-word;
    scrollbar-color: var(--edge) var(--paper);
    /* A page that styles everything styles the widget's own element, and these would come down from it. */
    text-transform: none; text-indent: 0; text-shadow: none; white-space: normal; word-break: normal; cursor: auto;
  }
  h2, h3 { font-size: var(--figure); font-weight: 600; margin: 0 0 var(--gap); text-wrap: balance; }
  h3 { font-size: 1rem; margin-block: var(--space-6) var(--space-2); }
  p { margin: 0 0 var(--space-2); }
  .soft { color: var(--soft); }
  .small { font-size: var(--small); }
  /* Headline and explanation stand beside the fields; where there is no room, around them, answer first. */
  .columns {
    display: grid; grid-template: auto 1fr / clamp(16.5rem, 33%, 19rem) minmax(0, 1fr);
    column-gap: var(--space-9); align-items: start;
  }
  .columns > * { min-inline-size: 0; }
  .columns > .fields { grid-row: span 2; }
  .narrow .columns { display: flex; flex-direction: column; align-items: stretch; }
  /* As if its parts were the columns' own: so the answer stays in sight over the fields below it. */
  .narrow .columns > .headline { display: contents; }
  .narrow .headline > * { order: -1; }
  .narrow .columns > :not(.headline) { margin-block-start: var(--space-6); }
  .row { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center; }
  /* The cause of a doubt stands at the head of its row: the field needs no label for the eye. */
  .spoken, .supposed label { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  bdi, tspan { unicode-bidi: isolate; }
  table { border-collapse: collapse; font-size: var(--medium); }
  th { font-weight: 400; color: var(--soft); font-size: var(--small); text-align: start; }
  th, td { padding-block: var(--space-1); padding-inline: 0 var(--cell, var(--space-4)); border-block-end: 1px solid var(--line); }
  /* Figures run from left to right in every language: their ends stand under each other. */
  td.figure, th.figure { text-align: right; unicode-bidi: plaintext; }
  td.figure { white-space: nowrap; }
  tr > :last-child { padding-inline-end: 0; }
  tbody th { color: var(--ink); font-size: inherit; }
  /* Upwards nothing scrolls: Firefox would, by the part of a pixel. */
  .scroll { overflow: auto hidden; margin-block-end: var(--space-2); }
  /* A shade at an edge beyond which there is more; at the ends the paper that scrolls along hides it. */
  .scroll[tabindex] {
    background:
      linear-gradient(90deg, var(--paper) 0.5rem, #0000 0 calc(100% - 0.5rem), var(--paper) 0) local,
      linear-gradient(90deg, var(--edge), var(--paper) 0.5rem calc(100% - 0.5rem), var(--edge));
  }
  /* East stays right of north. An attribute of direction means nothing to a picture. */
  svg { direction: ltr; display: block; inline-size: 100%; block-size: auto; overflow: visible; }
  svg text { font-size: 13px; fill: var(--ink); }
  svg .soft { fill: var(--soft); font-size: 12px; }
  details > summary { color: var(--accent); cursor: pointer; padding-block: var(--space-1); min-height: var(--target); }
  details { border-block-start: 1px solid var(--line); }
  :not(details, summary)+details { margin-block-start: var(--space-3); }
`;
