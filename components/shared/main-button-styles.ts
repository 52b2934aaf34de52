import { css } from 'lit';

/** The one button of a widget that matters most. */
export const mainButtonStyles = css`
  button.main { background: var(--accent); color: var(--on-accent); border-color: var(--accent); }
  @media (forced-colors: active) {
    /* The plate a browser lays behind words would hide them here. */
    button.main { forced-color-adjust: none; }
  }
`;
