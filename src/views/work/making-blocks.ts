import { toBuy, type BuyLine, type Picture } from '../../derived/index.ts';
import { partsToMake, stockBesides, stockOf, stockWords, type Making, type PartToMake } from '../../derived/making/index.ts';
import { notMadeWords } from '../making/index.ts';
import { sizeWords } from '../making/size-words.ts';
import type { Block } from '../report/block.ts';
import { countWords, lineCostWords, sumsSentence, waitWords } from '../sentences/buy-rows.ts';
import { inSystem } from '../sentences/in-system.ts';
import { stockBehind } from './stock-lines.ts';

/** Parts that have a drawing. */
export const drawnParts = (makings: readonly Making[]): readonly PartToMake[] => makings.flatMap((one) => (one.state === 'to-make' ? [one] : []));

/** What has a drawing, in one table, and what has none and why. */
export function makingBlocks(picture: Picture): readonly Block[] {
  const makings = partsToMake(picture);
  const drawn = drawnParts(makings);
  const others = makings.flatMap((one) => (one.state === 'to-make' ? [] : [one]));
  return [
    ...(makings.length === 0 ? [{ kind: 'paragraph', text: 'No open job asks for a part that is made from a drawing.' } as const] : []),
    ...(drawn.length === 0 ? [] : [
      { kind: 'table', caption: 'Parts with a drawing', columns: ['Part', 'How many', 'Material', 'Hardness', 'Still to be measured'], rows: drawn.map((part) => ({ cells: [part.title, String(part.quantity), part.material, part.hardness, part.unknowns.map((one) => one.what).join('; ')] })) } as const,
      { kind: 'table', caption: 'What to mind before it is cut', columns: ['Part', 'Mind'], rows: drawn.filter((part) => part.warnings.length > 0).map((part) => ({ cells: [part.title, part.warnings.join(' ')] })) } as const,
      { kind: 'paragraph', tone: 'next', text: 'Check every size against the machine before cutting.' } as const,
    ]),
    ...(others.length === 0 ? [] : [{ kind: 'heading', level: 2, text: 'Without a drawing, and why' } as const, ...others.map((one) => ({ kind: 'list', ordered: false, items: notMadeWords(one) }) as const)]),
  ];
}

/** Everything that the open jobs use up or ask others for, with prices and waiting. */
export function buyBlocks(picture: Picture, makings: readonly Making[] = partsToMake(picture)): readonly Block[] {
  const { worksheet, system } = picture;
  const currency = worksheet.currency ?? 'unit';
  const lines = toBuy(worksheet);
  if (lines.length === 0) return [{ kind: 'paragraph', text: 'No open job uses up a part or a material, or asks others for work.' }];
  const behind = stockBehind(picture, makings);
  const rows = (some: readonly BuyLine[]): Extract<Block, { kind: 'table' }>['rows'] => some.map((line) => ({ cells: [`${inSystem(line.words, system)}${behind(line)}`, countWords(line, system), `${line.number}. ${line.title}`, waitWords(line), lineCostWords(line, currency)] }));
  const bought = lines.filter((line) => line.kind !== 'work of others');
  const others = lines.filter((line) => line.kind === 'work of others');
  return [
    { kind: 'heading', level: 2, text: 'To buy and to ask for' },
    ...(bought.length === 0 ? [] : [{ kind: 'table', caption: 'Parts and materials of the open jobs, in the order of the worksheet; one price for a whole job stands as one line', columns: ['What', 'How many', 'For job', 'Wait', 'Cost'], rows: rows(bought) } as const]),
    ...(others.length === 0 ? [] : [{ kind: 'table', caption: 'Work of others', columns: ['What', 'How many', 'For job', 'Wait', 'Cost'], rows: rows(others) } as const]),
    { kind: 'paragraph', text: sumsSentence(worksheet) },
  ];
}

/** What to order: everything that the jobs use up, then springs, belts and stock with their figures. */
export function orderBlocks(picture: Picture): readonly Block[] {
  const { system } = picture;
  const makings = partsToMake(picture);
  const drawn = drawnParts(makings);
  return [
    ...buyBlocks(picture, makings),
    ...drawn.flatMap((part): readonly Block[] => [
      { kind: 'heading', level: 2, text: part.kind === 'coil-spring' ? 'Spring to order' : part.kind === 'belt' ? 'Belt to order' : `Stock for: ${part.title}` },
      { kind: 'facts', rows: [['How many', String(part.quantity)], ...stockRow(part, system), ['Material', part.material], ['Hardness', part.hardness]] },
      { kind: 'table', caption: `In ${system === 'inch' ? 'inches' : 'millimetres'} where no unit stands`, columns: ['Size', 'Figure', 'Why so'], rows: part.dimensions.map((dimension) => ({ cells: [dimension.title, sizeWords(dimension, system), dimension.why] })) },
      ...(part.kind === 'coil-spring' || part.kind === 'belt' ? [{ kind: 'list', ordered: false, items: part.notes } as const] : []),
      ...part.disputes.map((one) => ({ kind: 'paragraph', tone: 'small', text: `Not agreed in the trade, ${one.about}. Taken: ${one[one.taken]} The other side: ${one[one.taken === 'oneSide' ? 'otherSide' : 'oneSide']}` }) as const),
      ...part.warnings.map((text) => ({ kind: 'paragraph', tone: 'next', text }) as const),
    ]),
    ...(drawn.length === 0 ? [] : [{ kind: 'paragraph', tone: 'small', text: 'Finished sizes: add what the machinist wants for cleaning up. A figure marked est. is an estimate and is measured before anything is ordered.' } as const]),
  ];
}

/** What is bought for a part, so that it can be cut from it. */
function stockRow(part: PartToMake, system: Picture['system']): readonly (readonly [string, string])[] {
  const stock = stockOf(part, system);
  return stock === undefined ? [] : [['To buy', stockWords(stock, system)], ...stockBesides(part, system).map((words) => ['And', words] as const)];
}
