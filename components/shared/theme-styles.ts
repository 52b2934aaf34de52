import { css, unsafeCSS } from 'lit';

/**
 * The brightest a pixel may be by night, as relative luminance. The guidance wants as little
 * light as possible and a contrast of 7:1 (MSC/Circ.982, 5.6.3): on black, the darkest a
 * ground can be, 7 × (0 + 0.05) − 0.05. What is brighter gives more light than is asked for.
 */
export const NIGHT_LIMIT = 0.3;

/**
 * Colours by theme. Night is one dim hue on near-black, all of it below the limit: red is kept
 * for alarms (IMO MSC.191(79), 5.5), and contrast stays between 3:1 and 15:1 (MSC/Circ.982).
 */
const themes = {
  day: {
    paper: '#fbfaf6', raise: '#ffffff', ink: '#1b2430', soft: '#566171', line: '#d3cec0', edge: '#858c92',
    accent: '#0a5a69', onAccent: '#ffffff', body: '#9a6310', warn: '#7a4b00', warnPaper: '#fbf1dc', bad: '#8f1f1f',
    red: '#b3261e', blue: '#1d4f91',
  },
  dusk: {
    paper: '#171c22', raise: '#1f262d', ink: '#d3d9de', soft: '#9ba7b3', line: '#37404a', edge: '#77828d',
    accent: '#7dbdcb', onAccent: '#10161b', body: '#d3a253', warn: '#e0b56b', warnPaper: '#2a2519', bad: '#f0a08c',
    red: '#e07a6c', blue: '#7fa8dd',
  },
  night: {
    paper: '#080705', raise: '#0e0c08', ink: '#b68847', soft: '#a37d45', line: '#2d2213', edge: '#7d5f33',
    accent: '#ba8c49', onAccent: '#080705', body: '#ba8c49', warn: '#ba8c49', warnPaper: '#151008', bad: '#ba8c49',
    red: '#b68847', blue: '#8d7a5c',
  },
} as const;

export type ThemeName = keyof typeof themes;
type Colour = keyof (typeof themes)['day'];
type Colours = Partial<Record<Colour, string>>;

/** Text that does not stand out so hard, for eyes that ask for less; at night there is none to take away. */
const gentle: Record<ThemeName, Colours> = {
  day: { paper: '#f4f2ec', raise: '#f8f7f2', ink: '#3c4652', soft: '#56606f' },
  dusk: { ink: '#b3bcc5' },
  night: {},
};

/** More where eyes ask for more: no pale text and no pale line. */
const strong: Record<ThemeName, Colours> = {
  day: { paper: '#ffffff', ink: '#000000', soft: '#1b2430', line: '#858c92', edge: '#1b2430', accent: '#063f4a', body: '#6b4200', warn: '#5c3800', bad: '#6e1212' },
  dusk: { paper: '#0b0e12', ink: '#f2f5f7', soft: '#d3d9de', line: '#77828d', edge: '#d3d9de', accent: '#a9dbe6' },
  night: { ink: '#ba8c49', soft: '#ba8c49', line: '#7d5f33', edge: '#ba8c49' },
};

const nameOf = (colour: string): string => colour.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The private names the style sheets read; a page sets its own by the public ones, `--lubber-ink` and the like. */
function tokens(colours: Colours): string {
  return Object.entries(colours)
    .map(([key, value]) => `--${nameOf(key)}: var(--lubber-${nameOf(key)}, ${value});`)
    .join(' ');
}

const theme = (name: ThemeName): string => `color-scheme: ${name === 'day' ? 'light' : 'dark'}; ${tokens(themes[name])}`;

/** Rules for each theme, where a page leaves it to the device too. */
function byTheme(of: (name: ThemeName) => string): string {
  return `.frame { ${of('day')} } .frame.dusk { ${of('dusk')} } .frame.night { ${of('night')} }`;
}

/** Print is black on white whatever the screen shows; the page's own colours do not count. */
function printTokens(): string {
  return Object.entries({ ...themes.day, paper: '#ffffff', warnPaper: '#ffffff', ink: '#000000', soft: '#333333' })
    .map(([key, value]) => `--${nameOf(key)}: ${value};`)
    .join(' ');
}

export const themeStyles = css`
  ${unsafeCSS(byTheme(theme))}
  @media (prefers-color-scheme: dark) { .frame.auto { ${unsafeCSS(theme('dusk'))} } }
  @media (prefers-contrast: less) { ${unsafeCSS(byTheme((name) => tokens(gentle[name])))} }
  @media (prefers-contrast: less) and (prefers-color-scheme: dark) { .frame.auto { ${unsafeCSS(tokens({ paper: themes.dusk.paper, raise: themes.dusk.raise, soft: themes.dusk.soft, ...gentle.dusk }))} } }
  @media (prefers-contrast: more) { ${unsafeCSS(byTheme((name) => tokens(strong[name])))} }
  @media (prefers-contrast: more) and (prefers-color-scheme: dark) { .frame.auto { ${unsafeCSS(tokens({ ...themes.dusk, ...strong.dusk }))} } }
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
