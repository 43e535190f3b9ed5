import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { box, line, textAt, type Svg } from '../drawing/svg.ts';
import type { ViewAngle } from './lay-views.ts';
import { projectionSymbol } from './projection-symbol.ts';
import { EDGE, type Paper } from './sheet-paper.ts';
import { checkClass, finishWords, massWords } from './symbol-words.ts';
import { fittedLines, textWidth } from './text-width.ts';

/** Height of the block at the foot of the sheet, mm. */
export const BLOCK_HEIGHT = 53;

export interface BlockFacts {
  readonly scale: string;
  readonly angle: ViewAngle;
  readonly sheet: number;
  readonly sheets: number;
}

/** Title block after the habit of ISO 7200: whose hammer, which part, of what, how many, scale, date, and the log that it can be worked out from again. */
export function titleBlock(picture: Picture, part: PartToMake, paper: Paper, facts: BlockFacts): Svg {
  const left = EDGE.left;
  const right = paper.width - EDGE.right;
  const top = paper.height - EDGE.bottom - BLOCK_HEIGHT;
  const { identity } = picture.known;
  const width = right - left;
  const cell = (x: number, row: number, wide: number, label: string, words: string, className = 'note'): Svg => {
    const size = Math.min(3, (3 * (wide - 3)) / Math.max(1, textWidth(words, 3)));
    return textAt([left + x + 1.4, top + row + 3], label, { size: 2 }) + textAt([left + x + 1.4, top + row + 7.4], words, { size, className });
  };
  const rule = (x1: number, y1: number, x2: number, y2: number): Svg => line([left + x1, top + y1], [left + x2, top + y2], 'thin');
  const units = picture.system === 'inch' ? 'inches' : 'millimetres';
  const split = width - 70;
  const hardness = fittedLines(part.hardness, split - 4, 2, [2.5, 2.3, 2.1, 1.9]);
  const material = fittedLines(part.material, split - 4, 2, [2.5, 2.3, 2.1, 1.9]);
  return [
    box(left, top, width, BLOCK_HEIGHT, 'edge', 'none'), rule(0, 10, width, 10), rule(0, 20, width, 20), rule(0, 32, width, 32), rule(split, 0, split, BLOCK_HEIGHT), rule(split + 35, 10, split + 35, 32), rule(26, 32, 26, 42), rule(54, 32, 54, 42), rule(54 + (split - 54) / 2, 32, 54 + (split - 54) / 2, 42), rule(0, 42, width, 42),
    textAt([left + 1.4, top + 3], identity.invented === true ? 'hammer (invented)' : 'hammer', { size: 2 }), textAt([left + 1.4, top + 8], `${identity.tag}, ${identity.ramClass.asWritten}, ${identity.family.replaceAll('-', ' ')}`, { size: 4, className: 'strong' }),
    textAt([left + 1.4, top + 13], 'part', { size: 2 }), textAt([left + 1.4, top + 18], part.title, { size: 4, className: 'strong' }),
    textAt([left + 1.4, top + 23], 'material', { size: 2 }), ...material.lines.map((words, index) => textAt([left + 1.4, top + 26.4 + index * (material.lines.length > 2 ? 2.4 : 3.4)], words, { size: material.size })),
    textAt([left + split + 35, top + 6.8], 'CHECK BEFORE CUTTING', { size: 5, className: checkClass(part), anchor: 'middle' }),
    cell(split, 10, 35, 'number', `${part.quantity} off`, 'strong'), cell(split + 35, 10, 35, 'sizes in', units, 'strong'),
    cell(split, 20, 35, 'scale', facts.scale), textAt([left + split + 36.4, top + 23], facts.angle.replace('-', ' '), { size: 2 }), projectionSymbol(facts.angle, left + split + 43, top + 27.6),
    cell(0, 32, 26, 'date', picture.provenance.asOf.slice(0, 10)), cell(26, 32, 28, 'sheet', `${facts.sheet} of ${facts.sheets}, ${paper.name}`),
    cell(54, 32, (split - 54) / 2, 'weight of each, about', massWords(part, picture.system)), cell(54 + (split - 54) / 2, 32, (split - 54) / 2, 'faces without a sign', finishWords(part, picture.system)),
    textAt([left + split + 1.4, top + 35], 'compared with the machine by, on', { size: 2 }),
    textAt([left + 1.4, top + 44.8], 'hardness, heat treatment', { size: 2 }), ...hardness.lines.map((words, index) => textAt([left + 1.4, top + 48.4 + index * (hardness.lines.length > 2 ? 2 : 2.9)], words, { size: hardness.size })),
    cell(split, 42, 70, `log (SHA-256), ${picture.provenance.entries} entries, knowledge ${picture.provenance.knowledgeVersion}`, picture.provenance.logHash.slice(0, 32)),
  ].join('');
}
