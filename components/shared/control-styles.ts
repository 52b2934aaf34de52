import { css } from 'lit';

/**
 * What is pressed, chosen or typed into; the main button, ticks, sliders, files and long texts have styles of
 * their own, for the widgets that have them. Choices are drawn here: the browser's own are brighter at night
 * than the limit. Where colours are forced its own are the better.
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
  :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
  ::selection { background: var(--accent); color: var(--on-accent); }
  option, optgroup { background: var(--paper); color: var(--ink); }
  ::placeholder, .entry input:read-only, .entry select:disabled { color: var(--soft); opacity: 1; }
  [type='radio'] {
    appearance: none; margin: 0; inline-size: 1.06rem; block-size: 1.06rem; flex: none;
    border: 1px solid var(--edge); border-radius: 50%; background: var(--paper); cursor: pointer;
  }
  [type='radio']:checked { border: 0.32rem solid var(--accent); }
  [type='radio']:disabled { border-color: var(--soft); cursor: default; }
  @media (forced-colors: active) {
    [type='radio'] { appearance: auto; }
    /* Shades are taken away: what scrolls sideways is cut along a dashed line. */
    .scroll[tabindex] { border-inline-end: 1px dashed; }
  }
`;
