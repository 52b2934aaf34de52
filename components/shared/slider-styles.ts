import { css } from 'lit';

/** A value that is slid along a line. To stand before the shared styles. */
export const sliderStyles = css`
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
  @media print {
    input[type='range'] { display: none; }
  }
  @media (forced-colors: active) {
    input[type='range'] { appearance: auto; }
    input[type='range']::-webkit-slider-thumb { appearance: auto; }
  }
`;
