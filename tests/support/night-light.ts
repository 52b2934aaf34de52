/** How bright a picture is, and whether it has red in it: measured pixel by pixel in the browser. */
import type { Page } from 'puppeteer-core';

export interface Brightness {
  /** Largest relative luminance of a pixel (WCAG 2.2), and its colour. */
  readonly brightest: number;
  readonly colour: string;
  /** Pixels of a saturated red: hue within 15° of it, saturation above a half, not near black. */
  readonly red: number;
}

export function brightnessOf(page: Page, picture: Uint8Array): Promise<Brightness> {
  return page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
    const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    const { data: bytes } = context.getImageData(0, 0, canvas.width, canvas.height);
    const linear = Array.from({ length: 256 }, (_, value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    let [brightest, colour, red] = [-1, '', 0];
    let last = -1;
    for (let at = 0; at < bytes.length; at += 4) {
      const [r, g, b] = [bytes[at] as number, bytes[at + 1] as number, bytes[at + 2] as number];
      const same = (r << 16) | (g << 8) | b;
      const most = Math.max(r, g, b);
      const least = Math.min(r, g, b);
      if (most > 60 && most === r && (most - least) / most > 0.5 && Math.abs(g - b) / (most - least) < 0.25) red += 1;
      if (same === last) continue;
      last = same;
      const luminance = 0.2126 * (linear[r] as number) + 0.7152 * (linear[g] as number) + 0.0722 * (linear[b] as number);
      if (luminance > brightest) [brightest, colour] = [luminance, `rgb(${r}, ${g}, ${b})`];
    }
    return { brightest, colour, red };
  }, Buffer.from(picture).toString('base64'));
}
