import { css } from 'lit';

/**
 * The one scale of type and the one scale of space. A page sets `--lubber-size` for all of it,
 * `--lubber-spacing` for the air between, and the rest one by one; nothing else in a style
 * sheet says how large letters are or how far things stand apart.
 */
export const measureStyles = css`
  .frame {
    /* What a unit of rem is to us: never less than the size browsers begin with, unless the page says so itself. */
    --rem: var(--lubber-size, max(1REM, 16px));
    --small: var(--lubber-text-small, 0.82rem);
    --medium: var(--lubber-text-medium, 0.92rem);
    --figure: var(--lubber-text-figure, 1.06rem);
    --large: var(--lubber-text-large, 1.25rem);
    --answer: var(--lubber-text-answer, clamp(2rem, 9vw, 3rem));
    /* By the quarter of a line; the number is how many. */
    --space-1: calc(var(--lubber-spacing, 1) * 0.25rem);
    --space-half: calc(0.5 * var(--space-1));
    --space-2: calc(2 * var(--space-1));
    --space-3: calc(3 * var(--space-1));
    --space-4: calc(4 * var(--space-1));
    --space-6: calc(6 * var(--space-1));
    --space-9: calc(9 * var(--space-1));
    --gap: var(--lubber-gap, var(--space-3));
    --radius: var(--lubber-radius, 3px);
    /* Height of what is pressed: 24 pixels at least (WCAG 2.2, 2.5.8), 44 where hands are cold and the ship moves. */
    --target: var(--lubber-target, 1.75rem);
    --target-beside: 1.5rem;
    padding: var(--lubber-padding, var(--space-6));
  }
  .frame.narrow { --cell: var(--space-2); --answer: var(--lubber-text-answer, min(12vw, 2.1rem)); padding: var(--lubber-padding, var(--space-4)); }
  .frame.bridge {
    --target: var(--lubber-target, 2.75rem); --target-beside: 2.75rem; --figure: var(--lubber-text-figure, 1.25rem);
    --medium: var(--lubber-text-medium, 1.06rem); --small: var(--lubber-text-small, 0.95rem);
  }
`;
