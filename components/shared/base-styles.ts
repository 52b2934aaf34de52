import { css } from 'lit';

/** One typeface, four sizes, hairlines instead of boxes: what every widget stands on. */
export const baseStyles = css`
  :host { display: block; }
  :host([hidden]) { display: none; }
  * { box-sizing: border-box; }
  .frame {
    /* What a unit of rem is to us: never less than the size browsers begin with, unless the page says so itself. */
    --rem: var(--lubber-size, max(1rem, 16px));
    --small: 0.82rem;
    --figure: 1.06rem;
    --answer: clamp(2rem, 9vw, 3rem);
    --gap: 0.75rem;
    --target: 1.75rem;
    background: var(--paper);
    color: var(--ink);
    font: 1rem/1.45 var(--lubber-font, 'Source Sans 3', 'Segoe UI', system-ui, sans-serif);
    font-variant-numeric: tabular-nums lining-nums;
    padding: var(--lubber-padding, 1.5rem);
    text-align: start;
    overflow-wrap: break-word;
    /* A page that styles everything styles the widget's own element, and these would come down from it. */
    text-transform: none; text-indent: 0; text-shadow: none; white-space: normal; word-break: normal; cursor: auto;
  }
  .frame.bridge { --target: 2.75rem; --figure: 1.25rem; --small: 0.95rem; }
  h2, h3 { font-size: 1.06rem; font-weight: 600; margin: 0 0 var(--gap); letter-spacing: 0.01em; text-wrap: balance; }
  h3 { font-size: 1rem; margin-block: 1.25rem 0.4rem; }
  p { margin: 0 0 0.5rem; }
  .soft { color: var(--soft); }
  .small { font-size: var(--small); }
  /* Headline and explanation stand beside the fields; where there is no room, around them, answer first. */
  .columns {
    display: grid; grid-template: 'fields headline' auto 'fields explanation' 1fr / minmax(15rem, 19rem) minmax(0, 1fr);
    column-gap: 2.25rem; align-items: start;
  }
  .columns > .fields { grid-area: fields; min-inline-size: 0; }
  .columns > .headline { grid-area: headline; min-inline-size: 0; }
  .columns > .explanation { grid-area: explanation; min-inline-size: 0; }
  .narrow .columns { grid-template: 'headline' auto 'fields' auto 'explanation' auto / minmax(0, 1fr); row-gap: 1.25rem; }
  .narrow.frame { padding: var(--lubber-padding, 1rem); }
  button {
    font: inherit; font-size: 0.92rem; color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: 3px;
    padding: 0.15rem 0.7rem; min-height: var(--target); cursor: pointer;
  }
  button:hover { border-color: var(--accent); }
  button:disabled { color: var(--soft); border-color: var(--line); cursor: default; }
  button.plain { border-color: transparent; padding-inline: 0.2rem; text-decoration: underline; text-underline-offset: 0.2em; }
  button.main { background: var(--accent); color: var(--on-accent); border-color: var(--accent); }
  :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
  .row { display: flex; flex-wrap: wrap; gap: 0.5rem 0.75rem; align-items: center; }
  .spoken { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  bdi { unicode-bidi: isolate; }
  table { border-collapse: collapse; font-size: 0.95rem; }
  th { font-weight: 400; color: var(--soft); font-size: var(--small); text-align: start; }
  th, td { padding: 0.2rem 1rem 0.2rem 0; border-block-end: 1px solid var(--line); }
  td.figure, th.figure { text-align: end; }
  td.figure { white-space: nowrap; }
  .scroll { overflow-x: auto; max-inline-size: 100%; }
  svg { display: block; inline-size: 100%; block-size: auto; overflow: visible; }
  svg text { font: 13px var(--lubber-font, 'Source Sans 3', 'Segoe UI', system-ui, sans-serif); fill: var(--ink); font-variant-numeric: tabular-nums lining-nums; }
  svg .soft { fill: var(--soft); font-size: 12px; }
  details > summary { color: var(--accent); cursor: pointer; padding-block: 0.3rem; min-height: var(--target); }
  details { border-block-start: 1px solid var(--line); }
  @media print {
    .frame { padding: 0; font-size: 10.5pt; }
    button, .no-print { display: none; }
    .scroll { overflow: visible; }
    h2, h3, tr, li, svg { break-inside: avoid; }
    thead { display: table-header-group; }
  }
`;
