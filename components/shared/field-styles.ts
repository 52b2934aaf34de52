import { css } from 'lit';

/** Fields: a label above, the text typed, and what was understood at its end. */
export const fieldStyles = css`
  .field { margin: 0 0 var(--gap); }
  .field.with-action { display: grid; grid-template-columns: 1fr auto; }
  .field.with-action > :not(label, button) { grid-column: 1 / -1; }
  /* Drawn beside the label, reached after the field. */
  .field.with-action > button { grid-row: 1; grid-column: 2; font-size: var(--small); min-height: 1.5rem; padding-block: 0; }
  .field > label, .legend { display: block; font-size: var(--small); color: var(--soft); padding: 0; }
  fieldset { border: 0; margin: 0 0 var(--gap); padding: 0; min-inline-size: 0; }
  .entry { display: flex; align-items: baseline; gap: 0.5rem; border-block-end: 1px solid var(--edge); }
  .entry:focus-within { border-block-end-color: var(--accent); box-shadow: 0 1px 0 var(--accent); }
  .entry input, .entry select {
    flex: 1 1 5rem; min-inline-size: 4.5rem; inline-size: 100%; min-height: var(--target); padding: 0.1rem 0; margin: 0;
    border: 0; background: transparent; color: var(--ink); font: inherit; font-size: var(--figure);
    font-variant-numeric: inherit; border-radius: 0;
  }
  .entry select { appearance: auto; background: var(--paper); }
  .entry input:focus-visible, .entry select:focus-visible { outline: none; }
  .entry input::placeholder { color: var(--soft); opacity: 1; font-style: italic; font-size: 0.95rem; }
  .entry input:read-only { color: var(--soft); }
  .echo { margin-inline-start: auto; font-size: 0.85rem; color: var(--soft); white-space: nowrap; }
  .problem { color: var(--bad); font-size: var(--small); margin: 0.2rem 0 0; }
  .problem::before { content: '▲ '; }
  .hint { color: var(--soft); font-size: var(--small); margin: 0.2rem 0 0; }
  .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1rem; }
  /* Two or three in a row, fewer where a word of the language is longer than its share. */
  .choices { display: flex; flex-wrap: wrap; border: 1px solid var(--edge); border-radius: 3px; margin-block-start: 0.25rem; }
  .choices label {
    flex: 1 1 45%; box-sizing: border-box; display: flex; align-items: center; gap: 0.4rem; padding: 0.3rem 0.5rem;
    min-height: var(--target); font-size: 0.88rem; color: var(--soft); cursor: pointer; margin: 0;
  }
  .choices.three label { flex-basis: 30%; }
  .choices label.chosen { color: var(--ink); background: var(--raise); }
  .choices input {
    appearance: none; margin: 0; inline-size: 1rem; block-size: 1rem; flex: none; border: 1px solid var(--edge); border-radius: 50%; background: var(--paper);
  }
  .choices input:checked { border: 5px solid var(--accent); }
  @media print {
    .entry { border-block-end-color: #999999; }
    .entry input::placeholder { color: transparent; }
    .hint { display: none; }
  }
`;
