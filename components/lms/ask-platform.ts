/** The one place that makes a request: to the platform that launched the lesson, by the addresses it gave. */
export function askPlatform(address: string, request: RequestInit): Promise<Response> {
  // eslint-disable-next-line no-restricted-globals -- widgets make no request; a connector is nothing else
  return fetch(address, request);
}
