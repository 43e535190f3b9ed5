import { textAt, type Svg } from '../drawing/svg.ts';
import { wrapped } from './text-width.ts';

export interface Paragraph {
  readonly words: string;
  readonly className?: string;
  readonly size?: number;
}

/** Breadth of the bold face over the plain one. */
const BOLD = 1.1;

/** Paragraphs one under another in a column. */
export function textColumn(paragraphs: readonly Paragraph[], x: number, top: number, width: number): { readonly svg: Svg; readonly height: number } {
  let y = top;
  const parts = paragraphs.flatMap(({ words, className, size = 2.5 }) => {
    const lines = wrapped(words, size, width / (className === undefined || className === 'note' ? 1 : BOLD));
    const drawn = lines.map((text, index) => textAt([x, y + size + index * size * 1.3], text, { size, ...(className === undefined ? {} : { className }) }));
    y += lines.length * size * 1.3 + size * 0.5;
    return drawn;
  });
  return { svg: parts.join(''), height: y - top };
}
