/**
 * Reads a QR code of versions 1 to 10, byte mode or mixed modes, from its modules, without correcting errors (ISO/IEC 18004:2015,
 * clauses 7 and 12). Written apart from the encoder, to hold it.
 */
export function readQr(modules: readonly (readonly boolean[])[]): string {
  const side = modules.length;
  const version = (side - 17) / 4;
  const at = (row: number, column: number): boolean => modules[row]?.[column] === true;
  const format = [[8, 0], [8, 1], [8, 2], [8, 3], [8, 4], [8, 5], [8, 7], [8, 8], [7, 8], [5, 8], [4, 8], [3, 8], [2, 8], [1, 8], [0, 8]].reduce((bits, [row, column]) => (bits << 1) | Number(at(row ?? 0, column ?? 0)), 0) ^ 0b101010000010010;
  const level = format >> 13;
  if (level !== 0b00) throw new Error(`error correction level M expected: ${level}`);
  const mask = MASKS[(format >> 10) & 7];
  if (mask === undefined) throw new Error('no such mask');
  const bits: number[] = [];
  let up = true;
  for (let right = side - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < side; step += 1) {
      const row = up ? side - 1 - step : step;
      for (const column of [right, right - 1]) if (!isFixed(row, column, side, version)) bits.push(Number(at(row, column)) ^ Number(mask(row, column)));
    }
    up = !up;
  }
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, index) => bits.slice(index * 8, index * 8 + 8).reduce((sum, bit) => sum * 2 + bit, 0));
  return textOf(deinterleaved(words, version), version);
}

const MASKS: readonly ((i: number, j: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0, (i) => i % 2 === 0, (_, j) => j % 3 === 0, (i, j) => (i + j) % 3 === 0, (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0, (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0, (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
];

/** Centres of alignment patterns, table E.1. */
const CENTRES: readonly (readonly number[])[] = [[], [], [6, 18], [6, 22], [6, 26], [6, 30], [6, 34], [6, 22, 38], [6, 24, 42], [6, 26, 46], [6, 28, 50]];
/** Data words of each block at level M, table 9. */
const BLOCKS: readonly (readonly number[])[] = [[], [16], [28], [44], [32, 32], [43, 43], [27, 27, 27, 27], [31, 31, 31, 31], [38, 38, 39, 39], [36, 36, 36, 37, 37], [43, 43, 43, 43, 44]];

function isFixed(row: number, column: number, side: number, version: number): boolean {
  if (row === 6 || column === 6) return true;
  if ((row < 9 && column < 9) || (row < 9 && column >= side - 8) || (row >= side - 8 && column < 9)) return true;
  if (version >= 7 && ((row < 6 && column >= side - 11) || (column < 6 && row >= side - 11))) return true;
  const centres = CENTRES[version] ?? [];
  const last = centres.at(-1);
  return centres.some((y) => centres.some((x) => !((y === 6 && x === 6) || (y === 6 && x === last) || (y === last && x === 6)) && Math.abs(row - y) <= 2 && Math.abs(column - x) <= 2));
}

function deinterleaved(words: readonly number[], version: number): number[] {
  const lengths = BLOCKS[version];
  if (lengths === undefined || lengths.length === 0) throw new Error(`this reader knows versions 1 to 10: ${version}`);
  const blocks: number[][] = lengths.map(() => []);
  let next = 0;
  for (let index = 0; index < Math.max(...lengths); index += 1) lengths.forEach((length, block) => { if (index < length) blocks[block]?.push(words[next++] ?? 0); });
  return blocks.flat();
}

function textOf(words: readonly number[], version: number): string {
  let place = 0;
  const take = (count: number): number => {
    let value = 0;
    for (let index = 0; index < count; index += 1, place += 1) value = value * 2 + (((words[place >> 3] ?? 0) >> (7 - (place & 7))) & 1);
    return value;
  };
  const bytes: number[] = [];
  const put = (text: string): void => void bytes.push(...Buffer.from(text));
  const signs = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
  for (;;) {
    const mode = place + 4 > words.length * 8 ? 0 : take(4);
    if (mode === 0) return Buffer.from(bytes).toString();
    if (mode === 4) {
      for (let left = take(version < 10 ? 8 : 16); left > 0; left -= 1) bytes.push(take(8));
    } else if (mode === 1) {
      for (let left = take(version < 10 ? 10 : 12); left > 0; left -= 3) put(String(take(left >= 3 ? 10 : left === 2 ? 7 : 4)).padStart(Math.min(left, 3), '0'));
    } else if (mode === 2) {
      for (let left = take(version < 10 ? 9 : 11); left > 0; left -= 2) {
        const value = take(left >= 2 ? 11 : 6);
        put(left >= 2 ? `${signs[Math.floor(value / 45)]}${signs[value % 45]}` : `${signs[value]}`);
      }
    } else throw new Error(`a mode that this reader does not know: ${mode}`);
  }
}
