import { css } from 'lit';

/**
 * What is pressed, ticked, slid or typed into. Ticks and sliders are drawn here: the browser's
 * own are brighter at night than the limit. Where colours are forced its own are the better.
 */
export const controlStyles = css`
  button {
    font: inherit; font-size: var(--medium); color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: var(--radius);
    padding: var(--space-half) var(--space-3); min-height: var(--target); min-inline-size: var(--target); cursor: pointer;
  }
  button:hover { border-color: var(--accent); }
  button:disabled { color: var(--soft); border-color: var(--line); cursor: default; }
  /* A word that can be pressed stands in line with the words around it. */
  button.plain { border-color: transparent; padding-inline: var(--space-1); margin-inline: calc(-1 * var(--space-1)); text-decoration: underline; text-underline-offset: 0.2em; }
  button.main { background: var(--accent); color: var(--on-accent); border-color: var(--accent); }
  :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
  ::selection { background: var(--accent); color: var(--on-accent); }
  input, select, textarea { accent-color: var(--accent); }
  option, optgroup { background: var(--paper); color: var(--ink); }
  textarea {
    display: block; inline-size: 100%; resize: vertical; padding: var(--space-2); border: 1px solid var(--edge); border-radius: var(--radius);
    background: var(--raise); color: var(--ink); font: inherit; font-variant-numeric: inherit; line-height: 1.35;
  }
  textarea + .row, .hint + button { margin-block-start: var(--space-2); }
  textarea:read-only { color: var(--soft); }
  ::placeholder { color: var(--soft); opacity: 1; }
  input[type='radio'], input[type='checkbox'] {
    appearance: none; margin: 0; inline-size: 1.06rem; block-size: 1.06rem; flex: none; display: grid; place-content: center;
    border: 1px solid var(--edge); border-radius: 50%; background: var(--paper); cursor: pointer;
  }
  input[type='radio']:checked { border: 0.32rem solid var(--accent); }
  input[type='checkbox'] { border-radius: 2px; }
  input[type='checkbox']:checked { background: var(--accent); border-color: var(--accent); }
  input[type='checkbox']:checked::before {
    content: ''; inline-size: 0.7rem; block-size: 0.7rem; background: var(--on-accent); clip-path: polygon(14% 44%, 0 62%, 42% 100%, 100% 18%, 82% 4%, 39% 68%);
  }
  input[type='radio']:disabled, input[type='checkbox']:disabled { border-color: var(--soft); cursor: default; }
  input[type='checkbox']:disabled:checked { background: var(--soft); }
  input[type='range'] { appearance: none; inline-size: 100%; min-height: var(--target-beside); margin: 0; background: transparent; cursor: pointer; }
  input[type='range']::-webkit-slider-runnable-track { block-size: 0.25rem; border-radius: 0.125rem; background: var(--edge); }
  input[type='range']::-moz-range-track { block-size: 0.25rem; border-radius: 0.125rem; background: var(--edge); }
  input[type='range']::-webkit-slider-thumb {
    appearance: none; inline-size: 1.06rem; block-size: 1.06rem; margin-block-start: -0.405rem; border: 0; border-radius: 50%; background: var(--accent);
  }
  input[type='range']::-moz-range-thumb { inline-size: 1.06rem; block-size: 1.06rem; border: 0; border-radius: 50%; background: var(--accent); }
  input[type='range']:disabled { cursor: default; }
  input[type='range']:disabled::-webkit-slider-thumb { background: var(--soft); }
  input[type='range']:disabled::-moz-range-thumb { background: var(--soft); }
  input[type='file'] { font: inherit; font-size: var(--medium); color: var(--ink); min-inline-size: 0; max-inline-size: 100%; min-height: var(--target); overflow: hidden; }
  input::file-selector-button {
    font: inherit; color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: var(--radius); padding: var(--space-half) var(--space-3);
    min-height: var(--target); margin-inline-end: var(--space-3); cursor: pointer;
  }
  @media (forced-colors: active) {
    input[type='radio'], input[type='checkbox'], input[type='range'] { appearance: auto; }
    input[type='checkbox']:checked::before { content: none; }
    input[type='range']::-webkit-slider-thumb { appearance: auto; }
  }
`;
