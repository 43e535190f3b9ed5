const PATIENCE = 4000; // ms

/** Length of a recording by the browser's player, s, without unpacking it; undefined where it does not say. */
export async function lengthOf(blob: Blob): Promise<number | undefined> {
  const address = URL.createObjectURL(blob);
  const player = document.createElement('audio');
  player.preload = 'metadata';
  try {
    return await new Promise<number | undefined>((resolve) => {
      const timer = setTimeout(() => resolve(undefined), PATIENCE);
      const done = (seconds: number | undefined): void => {
        clearTimeout(timer);
        resolve(seconds);
      };
      player.onloadedmetadata = () => done(Number.isFinite(player.duration) ? player.duration : undefined);
      player.onerror = () => done(undefined);
      player.src = address;
    });
  } finally {
    player.removeAttribute('src');
    URL.revokeObjectURL(address);
  }
}
