import { css } from 'lit';

/** A box that is ticked, drawn as the choices are. To stand before the shared styles. */
export const tickStyles = css`
  input[type='checkbox'] {
    appearance: none; margin: 0; inline-size: 1.06rem; block-size: 1.06rem; flex: none; display: grid; place-content: center;
    border: 1px solid var(--edge); border-radius: 2px; background: var(--paper); cursor: pointer;
  }
  input[type='checkbox']:checked { background: var(--accent); border-color: var(--accent); }
  input[type='checkbox']:checked::before {
    content: ''; inline-size: 0.7rem; block-size: 0.7rem; background: var(--on-accent); clip-path: polygon(14% 44%, 0 62%, 42% 100%, 100% 18%, 82% 4%, 39% 68%);
  }
  input[type='checkbox']:disabled { border-color: var(--soft); cursor: default; }
  input[type='checkbox']:disabled:checked { background: var(--soft); }
  /* Grounds are not printed: a tick of ours would be an empty box. */
  @media print, (forced-colors: active) {
    input[type='checkbox'] { appearance: auto; }
    input[type='checkbox']:checked::before { content: none; }
  }
`;
