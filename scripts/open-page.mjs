import { spawn } from 'node:child_process';

/** Waits for the server to print its address and to answer there, then opens it in the browser of the desktop, if there is one. */
export function openWhenReady() {
  if (!desktop()) return;
  const write = process.stdout.write.bind(process.stdout);
  process.stdout.write = /** @type {typeof write} */ (
    (/** @type {any} */ chunk, /** @type {any[]} */ ...rest) => {
      const address = /https?:\/\/[^\s"'<>]+/.exec(String(chunk))?.[0];
      if (address) {
        process.stdout.write = write;
        void open(address);
      }
      return write(chunk, ...rest);
    }
  );
}

/** Whether there is a screen to open a page on, and nobody said not to. */
function desktop() {
  if (process.env['CI'] || process.env['TUPWISE_NO_BROWSER']) return false;
  return process.platform === 'darwin' || Boolean(process.env['DISPLAY'] || process.env['WAYLAND_DISPLAY']);
}

/** @param {string} address */
async function open(address) {
  for (let attempt = 0; attempt < 100; attempt++) {
    const answered = await fetch(address, { method: 'HEAD' }).then(() => true, () => false);
    if (answered) break;
    await new Promise((resume) => setTimeout(resume, 100));
  }
  const opener = spawn(process.platform === 'darwin' ? 'open' : 'xdg-open', [address], { detached: true, stdio: 'ignore' });
  // No opener on this desktop: the address is on the screen, that must do.
  opener.on('error', () => undefined);
  opener.unref();
}
