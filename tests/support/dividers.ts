import { must } from './in-widget.js';

/** A label of an axis: what it says, and where in the drawing it stands. */
export type Label = readonly [value: number, at: number];

/** The value at a place of a drawing by two labels of its axis: what a reader does with a pair of dividers. */
export function readOff([first, last]: readonly [Label, Label], at: number): number {
  return first[0] + ((at - first[1]) / (last[1] - first[1])) * (last[0] - first[0]);
}

/** An attribute that is a number. */
export const size = (node: Element, name: string): number => Number(node.getAttribute(name));

/** `2.5° W` as −2.5, `0°` as 0; NaN where a text is no error. */
export function errorIn(text: string): number {
  const [, figure, letter] = /(\d+(?:\.\d+)?)°[\s\u00a0]?([EW]?)/.exec(text) ?? [];
  return figure === undefined ? NaN : (letter === 'W' ? -1 : 1) * Number(figure);
}

/** The direction of a line drawn from one point to another, degrees clockwise from straight up. */
export function directionFrom([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): number {
  return (Math.atan2(x2 - x1, y1 - y2) * 180) / Math.PI;
}

/** The direction in which a `line` is drawn. */
export const directionOf = (line: Element): number => directionFrom([size(line, 'x1'), size(line, 'y1')], [size(line, 'x2'), size(line, 'y2')]);

/** The points a path moves or draws to by absolute pairs. */
export function cornersOf(path: Element): readonly (readonly [number, number])[] {
  return [...(path.getAttribute('d') ?? '').matchAll(/[ML]\s*(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
}

/** First and last of the labels that read as errors up an axis, each at the height of the line beside it. */
export function errorsUp(picture: Element): readonly [Label, Label] {
  const lines = [...picture.querySelectorAll('line')].filter((line) => size(line, 'y1') === size(line, 'y2')).map((line) => size(line, 'y1'));
  const labels = [...picture.querySelectorAll('text.soft[text-anchor=end]')].flatMap((label): Label[] => {
    const value = /^[\d.]+°(\s[EW])?$/.test(label.textContent.replace(/\u00a0/g, ' ').trim()) ? errorIn(label.textContent) : NaN;
    // The foot of a figure is four units below the line it stands beside.
    const beside = lines.find((line) => Math.abs(line + 4 - size(label, 'y')) < 0.1);
    return Number.isNaN(value) || beside === undefined ? [] : [[value, beside]];
  });
  return [must(labels[0]), must(labels.at(-1))];
}

/** What of a picture lies outside its frame, in words; what is cut to a frame of its own is passed over. */
export function outsideOf(picture: Element): readonly string[] {
  const frame = picture.getBoundingClientRect();
  return [...picture.querySelectorAll('text, line, circle, path, polyline, polygon')].flatMap((each) => {
    if (each.closest('[clip-path], clipPath, marker')) return [];
    const { left, right, top, bottom } = each.getBoundingClientRect();
    const out = Math.max(frame.left - left, right - frame.right, frame.top - top, bottom - frame.bottom);
    // Pictures let a figure's first letter hang over; a line has no more than half its width to spare.
    return out > (each.tagName === 'text' ? 12 : 1.5) ? [`${each.tagName} ${each.getAttribute('class') ?? ''} ${each.textContent} by ${out.toFixed(1)}`] : [];
  });
}
