import { css } from 'lit';

/** The answer and what explains it: the largest thing on the page, then its split. */
export const answerStyles = css`
  .answer { font-size: var(--answer); line-height: 1.05; font-weight: 600; margin: 0; }
  /* Name, figure and what stands behind it: in one line where there is room, else each whole on a line of its own. */
  .answer, .answer > [aria-hidden] { display: flex; flex-wrap: wrap; align-items: baseline; gap: var(--space-1) 0.3em; }
  .answer [dir] { white-space: nowrap; }
  .answer small { font-size: var(--figure); line-height: 1.3; font-weight: 400; color: var(--soft); }
  /* Fields and answer stand more than a screen apart in one column. Not on a screen so low that little would be left of it. */
  @media screen and (min-height: 480px) {
    .narrow .answer { position: sticky; inset-block-start: 0; z-index: 1; background: var(--paper); padding-block: var(--space-2); box-shadow: 0 1px var(--line); }
    .narrow * { scroll-margin-block-start: 8rem; }
  }
  .waiting { color: var(--soft); font-size: var(--figure); }
  .waiting.wrong { color: var(--bad); }
  .how { color: var(--soft); font-size: var(--medium); padding-inline-start: var(--space-6); max-inline-size: 34rem; }
  .how li { margin-block-end: var(--space-2); }
  .split { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); margin: var(--space-4) 0 var(--space-2); }
  .split small, .split dt { display: block; color: var(--soft); font-size: var(--small); }
  .split dd { margin: 0; }
  .cautions { list-style: none; margin: var(--space-3) 0 0; padding: 0; }
  .cautions li { padding: var(--space-2) var(--space-3); border-inline-start: 3px solid var(--line); margin-block-end: var(--space-2); font-size: var(--medium); }
  .warning::before { content: '▲ '; content: '▲ '/''; color: var(--warn); }
  .cautions .warning { border-inline-start-color: var(--warn); background: var(--warn-paper); }
  .standing { margin: var(--space-4) 0 0; border-block-start: 1px solid var(--line); padding-block-start: var(--space-2); }
  .working { padding-inline-start: var(--space-9); margin: var(--space-1) 0; }
  .working li { margin-block-end: var(--space-2); color: var(--soft); }
  /* Words end before the shade of an edge beyond which there is more. */
  .working li > span { display: block; font-size: var(--medium); padding-inline-end: var(--space-2); }
  .working .line { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-2); align-items: center; color: var(--ink); padding: var(--space-half) 0; }
  /* Formulas run from the left in every language, and stand where the words begin; one too long is read from its beginning. */
  [dir='rtl'] .working { direction: rtl; }
  [dir='rtl'] .line { direction: ltr; justify-content: safe flex-end; }
  /* A formula is taller than its line box says: without this the next line would touch it. */
  .working math { padding-block: 0.18em; }
  math { font-size: 1rem; font-family: math, 'DejaVu Math TeX Gyre'; }
  .after { margin-block-start: var(--space-4); }
`;
