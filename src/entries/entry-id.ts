/** Base 32 after Crockford: no I, L, O or U, so that a person can read an id aloud and a machine can sort it. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const TIME_SIGNS = 10;
const GREATEST_TIME = 2 ** 48 - 1;
const CHANCE_BYTES = 10;

/**
 * Makes the id of an entry: 48 bits of time, 80 bits of chance, 26 signs that sort as the time does.
 * @param timeMs instant at which the entry is made, whole milliseconds since 1970 UTC, 0 to 2^48 - 1
 * @param random ten bytes of chance, from the device's own source or from a hash of the content
 * @returns 26 signs
 * @throws RangeError where an argument is outside its range: that is a programmer's mistake
 */
export function makeEntryId(timeMs: number, random: Uint8Array): string {
  if (!Number.isInteger(timeMs) || timeMs < 0 || timeMs > GREATEST_TIME) throw new RangeError(`time of an id is out of range; whole milliseconds from 0 to ${GREATEST_TIME}: ${timeMs}`);
  if (random.length !== CHANCE_BYTES) throw new RangeError(`chance of an id has the wrong length; ${CHANCE_BYTES} bytes: ${random.length}`);
  let time = '';
  for (let rest = timeMs, count = 0; count < TIME_SIGNS; count += 1) {
    time = sign(rest % 32) + time;
    rest = Math.floor(rest / 32);
  }
  return time + chanceSigns(random);
}

function chanceSigns(random: Uint8Array): string {
  let text = '';
  let bits = 0;
  let held = 0;
  for (const byte of random) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      text += sign((held >> bits) & 31);
      held &= (1 << bits) - 1;
    }
  }
  return text;
}

const sign = (index: number): string => SIGNS.charAt(index);

/** Whether a text has the shape of an entry id. */
export const isEntryId = (text: string): boolean => /^[0-7][0-9A-HJKMNP-TV-Z]{25}$/.test(text);

/**
 * Instant at which an id was made.
 * @param id a well-formed entry id
 * @returns milliseconds since 1970 UTC, or undefined where the text is no entry id
 */
export function entryIdTime(id: string): number | undefined {
  if (!isEntryId(id)) return undefined;
  let time = 0;
  for (const letter of id.slice(0, TIME_SIGNS)) time = time * 32 + SIGNS.indexOf(letter);
  return time;
}
