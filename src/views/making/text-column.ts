import { textAt, type Svg } from '../drawing/svg.ts';
import { wrapped } from './text-width.ts';

export interface Paragraph {
  readonly words: string;
  readonly className?: string;
  readonly size?: number;
}

/** Breadth of the bold face over the plain one. */
const BOLD = 1.1;

/** Letter height of a paragraph that states none, mm. */
const SIZE = 2.5;

const linesIn = ({ words, className, size = SIZE }: Paragraph, width: number): readonly string[] => wrapped(words, size, width / (className === undefined || className === 'note' ? 1 : BOLD));
const heightOf = (lines: number, size: number): number => lines * size * 1.3 + size * 0.5;

/** How far down a column a paragraph takes, the room below it included; without drawing it. */
export const paragraphHeight = (paragraph: Paragraph, width: number): number => heightOf(linesIn(paragraph, width).length, paragraph.size ?? SIZE);

/** Paragraphs one under another in a column. */
export function textColumn(paragraphs: readonly Paragraph[], x: number, top: number, width: number): { readonly svg: Svg; readonly height: number } {
  let y = top;
  const parts = paragraphs.flatMap((paragraph) => {
    const { className, size = SIZE } = paragraph;
    const lines = linesIn(paragraph, width);
    const drawn = lines.map((text, index) => textAt([x, y + size + index * size * 1.3], text, { size, ...(className === undefined ? {} : { className }) }));
    y += heightOf(lines.length, size);
    return drawn;
  });
  return { svg: parts.join(''), height: y - top };
}
