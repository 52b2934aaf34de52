/** How long a slow or busy machine may take, milliseconds. */
const PATIENCE = 60_000;

/** Waits until something holds; what `otherwise` tells is said where it never does. */
export async function until(holds: () => boolean, otherwise: () => unknown = () => holds): Promise<void> {
  const end = performance.now() + PATIENCE;
  while (!holds()) {
    if (performance.now() > end) throw new Error(`never came: ${String(otherwise())}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
