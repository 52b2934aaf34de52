import fc from 'fast-check';

/** Numbers of real ships' sizes and beyond, for properties. */
const rod = fc.double({ min: -0.3, max: 0.3, noNaN: true });
const force = fc.double({ min: -9000, max: 9000, noNaN: true });

export const shipsIron = fc.record({
  a: rod, b: rod, c: rod, d: rod, e: rod, f: rod, g: rod, h: rod, k: rod, P: force, Q: force, R: force,
});

export const anyField = fc.record({
  h: fc.double({ min: 2000, max: 42000, noNaN: true }),
  z: fc.double({ min: -66000, max: 66000, noNaN: true }),
});

export const anyHeading = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });
export const anyHeel = fc.double({ min: -30, max: 30, noNaN: true });

export const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

/** Rods and forces of any finite size, absurd ones included. */
export const absurdIron = fc.record({
  a: finite, b: finite, c: finite, d: finite, e: finite, f: finite, g: finite, h: finite, k: finite, P: finite, Q: finite, R: finite,
});

export const absurdField = fc.record({
  h: fc.double({ min: 0, max: 1e100, noNaN: true }),
  z: fc.double({ min: -1e100, max: 1e100, noNaN: true }),
});
