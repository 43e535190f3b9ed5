import type { Picture } from '../../derived/index.ts';
import { isLoose, type PartToMake } from '../../derived/making/index.ts';
import { line, textAt, type Svg } from '../drawing/svg.ts';
import { isReference, doubtWords, tableSize } from './size-words.ts';
import { wrapped } from './text-width.ts';

const SIZE = 2.5;
const ROW = 4;

/** Every figure of the part: size with tolerance, what the readings leave open, and how it is known. */
export function dimensionTable(part: PartToMake, picture: Picture, x: number, top: number, width: number): { readonly svg: Svg; readonly height: number } {
  const columns = [0, width * 0.34, width * 0.71, width * 0.875] as const;
  const head = ['figure', 'size', 'doubt, 95 %', 'known by'].map((words, index) => textAt([x + columns[index]!, top + 3], words, { size: 2 }));
  const rows: Svg[] = [];
  let y = top + 4.2;
  for (const dimension of part.dimensions) {
    const title = wrapped(dimension.title, SIZE, columns[1] - 2);
    const standing = dimension.estimate ? 'estimate' : isReference(dimension) ? 'follows' : dimension.quantity.uncertainty === 0 ? 'chosen' : standingOf(picture, dimension.from);
    const cells = [tableSize(dimension, picture.system), doubtWords(dimension, picture.system), standing];
    rows.push(...title.map((words, index) => textAt([x, y + 3 + index * 3.2], words, { size: SIZE })), ...cells.map((words, index) => textAt([x + columns[index + 1]!, y + 3], words, { size: SIZE, className: (dimension.estimate && index === 2) || (isLoose(dimension) && index === 1) ? 'limit-note' : index === 0 ? 'strong' : 'note' })));
    y += ROW + (title.length - 1) * 3.2;
    rows.push(line([x, y], [x + width, y], 'thin'));
  }
  return { svg: [...head, line([x, top + 4.2], [x + width, top + 4.2], 'thin'), ...rows].join(''), height: y - top };
}

/** Weakest standing behind a figure, in a word. */
function standingOf(picture: Picture, from: readonly string[]): string {
  const order = ['told', 'as-made', 'worked-out', 'seen', 'measured'];
  const found = from.flatMap((key) => picture.values[key]?.rests ?? []);
  const [weakest] = [...found].sort((a, b) => order.indexOf(a) - order.indexOf(b));
  return weakest === undefined ? 'chosen' : weakest.replaceAll('-', ' ');
}
