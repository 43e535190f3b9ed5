/** Signs by their width in hundredths of the letter height, as the project's typeface has them. */
const WIDTHS: readonly (readonly [hundredths: number, signs: string])[] = [
  [22, "',.:;|l’"], [30, '!i"()[]fj '], [34, 't{}r°'], [38, '-/\\'], [42, '1I_*yv'], [47, 'xzsk'], [52, 'c7J?aLeuα'], [56, '2<>F^hno~TdgEb3p≈±×'], [60, '+69=PSq5$VY4−'], [64, '8ZBRXAK#0w'], [69, 'CDHNU&'], [75, 'GOQ@Ø'], [84, 'MWm%'],
];
const OTHER = 0.62;

const BY_SIGN: ReadonlyMap<string, number> = new Map(WIDTHS.flatMap(([hundredths, signs]) => [...signs].map((sign) => [sign, hundredths / 100] as const)));

/** Width of a text set in a letter height, in the unit of the height. */
export const textWidth = (text: string, height: number): number => widthAfter(0, text) * height;

/** Width in letter heights of a line that is so wide already once a text stands behind it. */
function widthAfter(before: number, text: string): number {
  let sum = before;
  for (const sign of text) sum += BY_SIGN.get(sign) ?? OTHER;
  return sum;
}

/** Breaks a text into lines no wider than a column; a word that is wider stands alone. */
export function wrapped(text: string, height: number, column: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  let width = 0;
  for (const word of text.split(' ')) {
    const whole = current === '' ? word : ` ${word}`;
    const wider = widthAfter(width, whole);
    if (current !== '' && wider * height > column) {
      lines.push(current);
      current = word;
      width = widthAfter(0, word);
    } else {
      current += whole;
      width = wider;
    }
  }
  return current === '' ? lines : [...lines, current];
}

/** A text in at most so many lines, set smaller where it must be: never cut short. Sizes in the unit of the column, largest first. */
export function fittedLines(text: string, column: number, lines: number, sizes: readonly number[]): { readonly size: number; readonly lines: readonly string[] } {
  const last = sizes[sizes.length - 1]!;
  const size = sizes.find((one) => wrapped(text, one, column).length <= lines) ?? last;
  return { size, lines: wrapped(text, size, column) };
}
