/** What README shows: a widget of a demo page, in a light, as far down as it is worth looking at. */
export interface Picture {
  readonly name: string;
  readonly page: string;
  readonly tag: string;
  readonly theme: 'day' | 'night';
  /** Of the window, in pixels. */
  readonly width: number;
  /** At most, in pixels. */
  readonly height: number;
}

export const pictures: readonly Picture[] = [
  { name: 'amplitude-day.webp', page: 'chart-room/', tag: 'lubber-amplitude', theme: 'day', width: 1040, height: 690 },
  { name: 'amplitude-night.webp', page: 'chart-room/', tag: 'lubber-amplitude', theme: 'night', width: 1040, height: 690 },
  { name: 'curve-day.webp', page: 'adjuster/', tag: 'lubber-deviation-curve', theme: 'day', width: 1040, height: 700 },
  { name: 'iron-day.webp', page: 'teaching/', tag: 'lubber-iron', theme: 'day', width: 1040, height: 620 },
  { name: 'record-night.webp', page: 'record/', tag: 'lubber-record', theme: 'night', width: 1040, height: 868 },
];
