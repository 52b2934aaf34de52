/** Tells the other pages of a browser that a book has grown, and hears it from them. */
export interface BookChannel {
  tell(): void;
  close(): void;
}

export function openChannel(name: string, onGrown: () => void): BookChannel {
  try {
    const channel = new BroadcastChannel(name);
    channel.onmessage = onGrown;
    return {
      tell: () => channel.postMessage('grown'),
      close: () => channel.close(),
    };
  } catch {
    // A frame without an origin has no channel; its book is its own anyway.
    return { tell() {}, close() {} };
  }
}
