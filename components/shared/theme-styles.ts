import { css, unsafeCSS } from 'lit';

/**
 * Colour tokens by theme. A page sets `--lubber-paper` and the like to make its own; the
 * widgets read the short private names below. Night is one dim hue on near-black: red is
 * kept for alarms (IMO MSC.191(79) 5.5), and contrast stays between 3:1 and 15:1, 7:1
 * wanted (MSC/Circ.982 5.6.3).
 */
const themes = {
  day: {
    paper: '#fbfaf6', raise: '#ffffff', ink: '#1b2430', soft: '#566171', line: '#d3cec0', edge: '#858c92',
    accent: '#0a5a69', onAccent: '#ffffff', body: '#9a6310', warn: '#7a4b00', warnPaper: '#fbf1dc', bad: '#8f1f1f',
    red: '#b3261e', blue: '#1d4f91', scheme: 'light',
  },
  dusk: {
    paper: '#171c22', raise: '#1f262d', ink: '#d3d9de', soft: '#9ba7b3', line: '#37404a', edge: '#77828d',
    accent: '#7dbdcb', onAccent: '#10161b', body: '#d3a253', warn: '#e0b56b', warnPaper: '#2a2519', bad: '#f0a08c',
    red: '#e07a6c', blue: '#7fa8dd', scheme: 'dark',
  },
  night: {
    paper: '#080705', raise: '#0e0c08', ink: '#b98a48', soft: '#a37d45', line: '#2d2213', edge: '#7a5c31',
    accent: '#c2924d', onAccent: '#080705', body: '#c2924d', warn: '#c2924d', warnPaper: '#151008', bad: '#c2924d',
    red: '#b98a48', blue: '#8d7a5c', scheme: 'dark',
  },
} as const;

export type ThemeName = keyof typeof themes;

const names: Record<string, string> = { onAccent: 'on-accent', warnPaper: 'warn-paper' };

function tokens(theme: ThemeName): string {
  const { scheme, ...colours } = themes[theme];
  const lines = Object.entries(colours).map(([key, value]) => {
    const name = names[key] ?? key;
    return `--${name}: var(--lubber-${name}, ${value});`;
  });
  return `color-scheme: ${scheme}; ${lines.join(' ')}`;
}

/** Print is black on white whatever the screen shows; the page's own colours do not count. */
function printTokens(): string {
  return Object.entries({ ...themes.day, paper: '#ffffff', warnPaper: '#ffffff', ink: '#000000', soft: '#333333' })
    .filter(([key]) => key !== 'scheme')
    .map(([key, value]) => `--${names[key] ?? key}: ${value};`)
    .join(' ');
}

export const themeStyles = css`
  .frame { ${unsafeCSS(tokens('day'))} }
  .frame.dusk { ${unsafeCSS(tokens('dusk'))} }
  .frame.night { ${unsafeCSS(tokens('night'))} }
  @media (prefers-color-scheme: dark) {
    .frame.auto { ${unsafeCSS(tokens('dusk'))} }
  }
  @media (prefers-contrast: more) {
    .frame.day, .frame.auto { --soft: var(--ink); --line: var(--edge); }
  }
  @media print {
    .frame.frame { color-scheme: light; ${unsafeCSS(printTokens())} }
  }
  @media (forced-colors: active) {
    .frame.frame.frame {
      --paper: Canvas; --raise: Canvas; --ink: CanvasText; --soft: CanvasText; --line: CanvasText; --edge: CanvasText;
      --accent: LinkText; --on-accent: Canvas; --body: CanvasText; --warn: CanvasText; --warn-paper: Canvas; --bad: CanvasText;
      --red: CanvasText; --blue: CanvasText;
    }
  }
`;
