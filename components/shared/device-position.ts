export type DevicePosition =
  | { readonly outcome: 'taken'; readonly latitude: number; readonly longitude: number; readonly accuracy: number }
  | { readonly outcome: 'denied' | 'failed' | 'insecure' };

/** A browser may never answer, so the wait ends by itself, milliseconds. */
const PATIENCE = 20_000;

const DENIED = 1;

/** Asks this device for its position; only ever on the user's own request. */
export function askPosition(): Promise<DevicePosition> {
  return new Promise((resolve) => {
    if (!globalThis.isSecureContext) return resolve({ outcome: 'insecure' });
    const timer = setTimeout(() => resolve({ outcome: 'failed' }), PATIENCE);
    const done = (answer: DevicePosition): void => {
      clearTimeout(timer);
      resolve(answer);
    };
    try {
      navigator.geolocation.getCurrentPosition(
        ({ coords }) => done({ outcome: 'taken', latitude: coords.latitude, longitude: coords.longitude, accuracy: coords.accuracy }),
        (error) => done({ outcome: error.code === DENIED ? 'denied' : 'failed' }),
        { timeout: PATIENCE, maximumAge: 60_000 },
      );
    } catch {
      done({ outcome: 'failed' });
    }
  });
}
