import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { lastFigure } from '../../../core/angle/last-figure.js';
import { roundedDoubt } from '../../../core/sight/rounded-places.js';

describe('places as rough as they were typed', () => {
  // By definition: 60 minutes in a degree, 60 seconds in a minute.
  it('tells what the last figure typed is worth, in minutes of arc', () => {
    const worth: readonly (readonly [string, number])[] = [
      ['50N', 60],
      ['50.25', 0.6],
      ['−50,2500', 0.006],
      ['50-06N', 1],
      ['005-02.8W', 0.1],
      ["50°06'.5N", 0.1],
      ['50°06,50′N', 0.01],
      ['S 40 00 30', 1 / 60],
      ['144-25-29.5244E', 1 / 600_000],
    ];
    for (const [text, minutes] of worth) assert.ok(Math.abs(lastFigure(text) / minutes - 1) < 1e-12, text);
  });

  // A rounded figure lies anywhere within its last place: half its width by √3 is one standard deviation (JCGM 100:2008, 4.3.7).
  it('supposes no less than the rounding, and the usual where that is more', () => {
    const half = (metres: number): number => metres / 2 / Math.sqrt(3);
    const near = (found: number, expected: number): void => assert.ok(Math.abs(found - expected) < 1e-9, `${found}, not ${expected}`);
    near(roundedDoubt(10, [['50-06.1N', '005-02.8W'], ['50-07.53N', '005-01.02W']]), half(185.2));
    near(roundedDoubt(20, [['50-06N', '005-03W']]), half(1852));
    near(roundedDoubt(10, [['50-06.13N', '005-02.82W']]), 10);
    // A whole minute of latitude beside a longitude to the hundredth was read as finely.
    near(roundedDoubt(10, [['50-06N', '005-02.82W']]), 10);
    near(roundedDoubt(20, []), 20);
  });
});
