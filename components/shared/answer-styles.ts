import { css } from 'lit';

/** The answer and what explains it: the largest thing on the page, then its split. */
export const answerStyles = css`
  .answer { font-size: var(--answer); line-height: 1.05; font-weight: 600; letter-spacing: -0.01em; margin: 0; }
  .answer small { font-size: 1.06rem; font-weight: 400; color: var(--soft); letter-spacing: 0; margin-inline-start: 0.3em; display: inline-block; }
  .answer bdi, .answer .name { white-space: nowrap; }
  .narrow .answer { --answer: 2.1rem; }
  /* What is short in one language is a line and a half in another. */
  .narrow .answer .name, .narrow .answer small { white-space: normal; }
  .waiting { font-size: 1.06rem; color: var(--soft); margin: 0 0 0.5rem; }
  .waiting.wrong { color: var(--bad); }
  ol.how { color: var(--soft); font-size: 0.95rem; padding-inline-start: 1.3rem; max-inline-size: 34rem; margin-block: 0.75rem 0; }
  ol.how li { margin-block-end: 0.4rem; }
  dl.split { display: flex; flex-wrap: wrap; gap: 0.4rem 1.6rem; margin: 1rem 0 0.4rem; }
  dl.split > div { display: flex; flex-direction: column; }
  dl.split dt { color: var(--soft); font-size: var(--small); }
  dl.split dd { margin: 0; }
  dl.split dd small { color: var(--soft); font-size: var(--small); }
  .cautions { list-style: none; margin: 0.75rem 0 0; padding: 0; }
  .cautions li { padding: 0.4rem 0.75rem; border-inline-start: 3px solid var(--line); margin-block-end: 0.4rem; font-size: 0.92rem; }
  .cautions li.warning { border-inline-start-color: var(--warn); background: var(--warn-paper); color: var(--ink); }
  .standing { margin: 1rem 0 0; border-block-start: 1px solid var(--line); padding-block-start: 0.6rem; }
  .working { padding-inline-start: 2rem; margin: 0.25rem 0 0.75rem; }
  .working li { margin-block-end: 0.6rem; color: var(--soft); }
  .working li > span { display: block; font-size: 0.92rem; }
  .working .line { display: flex; flex-wrap: wrap; gap: 0.1rem 0.4rem; align-items: center; color: var(--ink); padding-block: 0.15rem; }
  math { font-size: 1.05rem; }
  .ribbon { margin: 0.9rem 0 0.4rem; }
  .moment-rule { display: grid; grid-template-columns: 7rem 1fr; gap: 0.75rem; align-items: center; margin-block-end: var(--gap); }
  .after { margin-block-start: 1rem; }
  @media print {
    math { font-size: 0.9rem; }
    details:not([open]) { display: none; }
  }
`;
