import { css } from 'lit';

/** Fields: a label above, the text typed, and what was understood at its end. */
export const fieldStyles = css`
  .field { margin: 0 0 var(--gap); }
  .with-action { display: grid; grid-template-columns: 1fr auto; align-items: baseline; }
  .with-action > :not(label, button) { grid-column: 1 / -1; }
  /* Drawn beside the label, reached after the field. Its word stands at the end of a target that reaches up into the gap: so the label stays close to its field. */
  .with-action > button { grid-row: 1; grid-column: 2; font-size: var(--small); min-height: var(--target-beside); padding-block: calc(var(--target-beside) - 1.25rem) 0; margin-block: -0.6rem 0; }
  .field > label, .legend { display: block; font-size: var(--small); color: var(--soft); padding: 0; }
  fieldset { border: 0; margin: 0 0 var(--gap); padding: 0; min-inline-size: 0; }
  /* What was understood stands at the end, or below where both have no room. */
  .entry { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 var(--space-2); border-block-end: 1px solid var(--edge); }
  /* The outline is seen only where colours are forced, which takes shadows away. */
  .entry:focus-within { border-block-end-color: var(--accent); box-shadow: 0 2px 0 var(--accent); outline: 2px solid transparent; outline-offset: 2px; }
  .entry input, .entry select {
    flex: 1 1 5rem; min-inline-size: 4.5rem; inline-size: 100%; min-height: var(--target); padding: var(--space-half) 0;
    border: 0; background: none; color: var(--ink); font: inherit; font-size: var(--figure);
  }
  /* As long as what is usually typed. */
  #date, #longitude { flex-basis: 6em; }
  /* Chromium insets the words of a list by four pixels. */
  .entry select { background: var(--paper); font-size: var(--medium); text-overflow: ellipsis; }
  @supports not (-moz-appearance: none) { .entry select { margin-inline-start: -4px; } }
  /* What is typed runs as its letters do, and stands at the side of the label. */
  [dir='rtl'] input { text-align: right; }
  .entry :focus-visible { outline: 0; }
  ::placeholder { font-style: italic; font-size: var(--medium); }
  .echo { margin-inline-start: auto; font-size: var(--small); color: var(--soft); white-space: nowrap; }
  .problem, .hint { color: var(--bad); font-size: var(--small); margin: var(--space-1) 0 0; }
  .problem::before { content: '▲ '; content: '▲ '/''; }
  .hint { color: var(--soft); }
  /* Two beside each other; below each other where letters are large, or a label would run over two lines and push its field out of the row. */
  .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, max(5rem, 35%)), 1fr)); gap: 0 var(--space-4); }
  .pair.long { grid-template-columns: repeat(auto-fit, minmax(min(100%, 8.6rem), 1fr)); }
  /* Two or three in a row, fewer where a word of the language is longer than its share. */
  /* An outline is drawn over what is chosen, of which Firefox rounds the edges otherwise than those of a border. */
  .choices { display: flex; flex-wrap: wrap; outline: 1px solid var(--edge); outline-offset: -1px; border-radius: var(--radius); margin-block-start: var(--space-1); }
  .choices label {
    flex: 1 1 45%; display: flex; align-items: center; gap: var(--space-1); padding: var(--space-1);
    min-height: var(--target); font-size: var(--medium); color: var(--soft); cursor: pointer;
  }
  .three label { flex-basis: 30%; }
  .long label { flex-basis: 100%; }
  .choices .chosen { color: var(--ink); background: var(--raise); }
  details > .hint { margin-block-end: var(--gap); }
`;
