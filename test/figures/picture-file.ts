import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const KEPT = join(import.meta.dirname, 'kept');
/** Writes the committed pictures anew instead of comparing with them: `TUPWISE_REDRAW=1 npx vitest run test/figures`. */
const REDRAW = process.env['TUPWISE_REDRAW'] === '1';

/** Numbers of the drawing to one decimal, so that the last bits of another machine's sines do not matter; figures that are read stay as written. */
export const roundedNumbers = (text: string): string => text.replace(/<[^>]*>/g, (tag) => tag.replace(/-?\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(1)) + 0)));

/**
 * Compares a picture with the committed one. Where they differ the new one is written beside it, with `.now` in its name,
 * to be looked at by eye.
 * @returns the committed text and the new text, alike or not
 */
export function comparedWithKept(name: string, picture: string): { readonly kept: string; readonly now: string } {
  const path = join(KEPT, name);
  const beside = path.replace(/\.([a-z]+)$/, '.now.$1');
  const now = `${roundedNumbers(picture)}\n`;
  mkdirSync(dirname(path), { recursive: true });
  if (REDRAW) writeFileSync(path, now);
  const kept = existsSync(path) ? readFileSync(path, 'utf8') : '';
  if (kept === now) rmSync(beside, { force: true });
  else writeFileSync(beside, now);
  return { kept, now };
}
