/** A page that nobody sees is given no frames; it waits no longer than this, milliseconds. */
const PATIENCE = 100;

/** Resolves when the browser is about to draw. */
export function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    const done = (): void => {
      clearTimeout(timer);
      cancelAnimationFrame(frame);
      resolve();
    };
    const timer = setTimeout(done, PATIENCE);
    const frame = requestAnimationFrame(done);
  });
}
