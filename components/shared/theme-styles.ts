import { css, unsafeCSS } from 'lit';
import type { CSSResult } from 'lit';

/**
 * The brightest a pixel may be by night, as relative luminance. The guidance wants as little
 * light as possible and a contrast of 7:1 (MSC/Circ.982, 5.6.3): on black, the darkest a
 * ground can be, 7 × (0 + 0.05) − 0.05. What is brighter gives more light than is asked for.
 */
export const NIGHT_LIMIT = 0.3;

const DAY = 0;
const DUSK = 1;
const NIGHT = 2;
type Theme = typeof DAY | typeof DUSK | typeof NIGHT;

/**
 * Colours by day, dusk and night. Night is one dim hue on near-black, all of it below the
 * limit: red is kept for alarms (IMO MSC.191(79), 5.5), and contrast stays between 3:1 and
 * 15:1 (MSC/Circ.982).
 */
const colours: Readonly<Record<string, readonly [day: string, dusk: string, night: string]>> = {
  paper: ['#fbfaf6', '#171c22', '#080705'],
  raise: ['#fff', '#1f262d', '#0e0c08'],
  ink: ['#1b2430', '#d3d9de', '#b68847'],
  soft: ['#566171', '#9ba7b3', '#a37d45'],
  line: ['#d3cec0', '#37404a', '#2d2213'],
  edge: ['#858c92', '#77828d', '#7d5f33'],
  accent: ['#0a5a69', '#7dbdcb', '#ba8c49'],
  'on-accent': ['#fff', '#10161b', '#080705'],
  body: ['#9a6310', '#d3a253', '#ba8c49'],
  warn: ['#7a4b00', '#e0b56b', '#ba8c49'],
  'warn-paper': ['#fbf1dc', '#2a2519', '#151008'],
  bad: ['#8f1f1f', '#f0a08c', '#ba8c49'],
  red: ['#b3261e', '#e07a6c', '#b68847'],
  blue: ['#1d4f91', '#7fa8dd', '#8d7a5c'],
};

const each = (value: (name: string, by: readonly string[]) => string): CSSResult =>
  unsafeCSS(Object.entries(colours).map(([name, by]) => `--${name}:${value(name, by)};`).join(''));

/** The private names the style sheets read; a page sets its own by the public ones, `--lubber-ink` and the like. */
const tokens = (theme: Theme): CSSResult => each((name, by) => `var(--lubber-${name}, ${by[theme]})`);

/** Where colours are forced only what the system itself has. */
const forced = each((name) => (name === 'accent' ? 'LinkText' : /paper|raise|on-/.test(name) ? 'Canvas' : 'CanvasText'));

export const themeStyles = css`
  .frame { color-scheme: light; ${tokens(DAY)} }
  .frame.dusk { color-scheme: dark; ${tokens(DUSK)} }
  .frame.night { color-scheme: dark; ${tokens(NIGHT)} }
  @media (prefers-color-scheme: dark) { .frame.auto { color-scheme: dark; ${tokens(DUSK)} } }
  /* The ink of the labels for all where eyes ask for less, and nothing pale where they ask for more. */
  @media (prefers-contrast: less) {
    .frame.frame { --ink: var(--soft); }
  }
  @media (prefers-contrast: more) {
    .frame.frame { --soft: var(--ink); --line: var(--edge); --edge: var(--ink); }
  }
  /* Print is black on white whatever the screen shows; the page's own colours do not count. */
  @media print {
    .frame.frame { color-scheme: light; ${each((_, by) => by[DAY] as string)} --paper: #fff; --warn-paper: #fff; --ink: #000; --soft: #333; }
  }
  @media (forced-colors: active) {
    .frame.frame.frame { ${forced} }
  }
`;
