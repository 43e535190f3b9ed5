import { formatQuantity } from '../../methods/quantity/index.ts';
import { METRIC_STOCK, type StockSizes } from '../../knowledge/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { PartKind, PartToMake, Tolerance } from './part-to-make.ts';

/** What a part is cut from. `as-sold` is cut to length only: its section is the finished one. */
export type StockForm = 'flat bar' | 'plate' | 'block' | 'round bar' | 'timber' | 'strip' | 'belting' | 'block of rubber';

/** What has to be bought or found for a part, so that it can be cut from it. */
export interface Stock {
  readonly form: StockForm;
  /** One size for a round, two for anything else, the smaller first, m. */
  readonly across: readonly number[];
  /** Of each piece, m; of the longest where they differ. */
  readonly length: number;
  /** Of each piece by itself where pieces of one section differ so much that nobody buys them all alike, m. */
  readonly lengths?: readonly number[];
  readonly pieces: number;
  /** True where the section is not machined: it is bought as it is drawn. */
  readonly asSold: boolean;
  /** True for timber whose sides are actual ones: dressed it would be too thin. */
  readonly roughSawn?: true;
  /** True where the hole that it goes into was not read, and may ask for a larger bar. */
  readonly afterHole?: true;
}

interface Rule {
  readonly form: StockForm;
  /** Names of sizes: of each side the largest counts. */
  readonly across: readonly (readonly string[])[];
  /** The first of these that is on the drawing, each a sum of sizes. */
  readonly along: readonly (readonly string[])[];
  /** True where the section is not machined. */
  readonly asSold?: true;
}

const KEY: Rule = { form: 'flat bar', across: [['large-end', 'small-end'], ['height']], along: [['length']] };
const DIE: Rule = { form: 'block', across: [['base-width', 'far-width', 'neck-width', 'body-width'], ['height']], along: [['length']] };
const BUSH: Rule = { form: 'round bar', across: [['outside', 'outside-left', 'outside-right']], along: [['length']] };
const PIN: Rule = { form: 'round bar', across: [['diameter']], along: [['length']] };
const PULLEY: Rule = { form: 'round bar', across: [['diameter']], along: [['face']] };

const RULES: Readonly<Partial<Record<PartKind, Rule>>> = {
  'lower-key': KEY, 'upper-key': KEY, 'lower-die': DIE, 'upper-die': DIE, 'filler-plate': { form: 'plate', across: [['thickness'], ['width']], along: [['length']] },
  'crank-pin': { form: 'round bar', across: [['collar', 'journal', 'shank', 'thread']], along: [['over-all'], ['run', 'collar-thickness', 'shank-length', 'tail']] },
  'rod-bushing': BUSH, 'clutch-pulley-bushing': BUSH, 'crosshead-bushing': BUSH, 'toggle-bushing': BUSH, 'bow-eye-bushing': BUSH, 'bow-clip-bushing': BUSH, 'helve-bushing': BUSH, 'treadle-bushing': BUSH,
  'crosshead-pin': PIN, 'toggle-pin': PIN, 'bow-eye-pin': PIN, 'bow-clip-pin': PIN, 'helve-pin': PIN, 'treadle-pin': PIN, 'thrust-washer': { form: 'round bar', across: [['outside']], along: [['thickness']] },
  'motor-pulley': PULLEY, 'countershaft-driven': PULLEY, 'countershaft-driver': PULLEY,
  'ram-prop': { form: 'timber', across: [['side'], ['side']], along: [['length']], asSold: true }, 'sole-timbers': { form: 'timber', across: [['depth'], ['timber-width']], along: [['length']], asSold: true },
  'bow-leaf': { form: 'strip', across: [['thickness'], ['width']], along: [['flat-length']], asSold: true }, 'bow-strap': { form: 'belting', across: [['thickness'], ['width']], along: [['length']], asSold: true },
  'helve-cushion': { form: 'block of rubber', across: [['height'], ['width']], along: [['span']], asSold: true },
};

const INCH = 0.0254;
const NONE: Tolerance = { plus: 0, minus: 0 };
/** What the cutter takes off a section in all, and off the ends with the saw: shop practice, from memory. Metric bars come closer to their size. */
const CLEAN: Readonly<Record<PrintSystem, number>> = { inch: INCH / 16, metric: 0.001 };
const SAW = INCH / 4;
const hair = 1e-7;

/**
 * The next size that is stocked and no smaller: sixteenths up to 1 in, eighths up to 3 in, quarters beyond; for a metric shop what its
 * merchant keeps in this form.
 * @param side which of two sides, where a form has two
 */
export function nextBar(least: number, system: PrintSystem, form: StockForm = 'block', side: keyof StockSizes = 'thin'): number {
  if (system === 'inch') return upTo(least, least <= INCH + hair ? INCH / 16 : least <= 3 * INCH + hair ? INCH / 8 : INCH / 4);
  const size = METRIC_STOCK[form][side].find((one) => one / 1000 >= least - hair);
  return size === undefined ? upTo(least, 0.05) : size / 1000;
}

/** What is bought for a section that is not machined: as drawn in inches; in millimetres the nearest that is sold and within its tolerance, else the next. */
function soldAs(size: number, tolerance: Tolerance, system: PrintSystem, form: StockForm, side: keyof StockSizes): number {
  if (system === 'inch') return size;
  const near = METRIC_STOCK[form][side].map((one) => one / 1000).filter((one) => one >= size - tolerance.minus - hair && one <= size + Math.max(0, tolerance.plus) + hair).sort((one, other) => Math.abs(one - size) - Math.abs(other - size))[0];
  return near ?? nextBar(size, system, form, side);
}

const upTo = (least: number, step: number): number => Math.ceil(least / step - hair) * step;

/**
 * What a part is cut from, worked out from its own drawing: the largest that each size may be, what is machined off it, and the next
 * size that is stocked.
 * @returns undefined where it is not cut from stock, or where a size that decides is not on the drawing
 */
export function stockOf(part: PartToMake, system: PrintSystem): Stock | undefined {
  const rule = RULES[part.kind];
  if (rule === undefined) return undefined;
  const asSold = rule.asSold === true;
  const sized = (name: string, over: boolean): number | undefined => {
    const found = part.dimensions.find((one) => one.name === name);
    return found === undefined ? undefined : found.quantity.value + (over ? Math.max(0, found.tolerance.plus) : 0);
  };
  const largest = (name: string): number | undefined => sized(name, true);
  const across = rule.across.map((names) => Math.max(...names.flatMap((name) => sized(name, !asSold) ?? []))).map((size, index) => ({ size, tolerance: part.dimensions.find((one) => rule.across[index]!.includes(one.name))?.tolerance ?? NONE })).sort((one, other) => one.size - other.size);
  const length = lengthOf(part, rule, largest);
  if (length === undefined || across.some(({ size }) => !Number.isFinite(size) || !(size > 0))) return undefined;
  const bought = across.map(({ size, tolerance }, index) => {
    const side = index === 0 ? 'thin' : 'wide';
    return asSold ? soldAs(size, tolerance, system, rule.form, side) : nextBar(size + CLEAN[system], system, rule.form, side);
  });
  const piece = (size: number): number => upTo(size + SAW, system === 'inch' ? INCH / 4 : 0.005);
  const each = part.dimensions.filter((one) => /^length(-\d+)?$/u.test(one.name)).map((one) => piece(largest(one.name) ?? 0));
  return {
    form: rule.form, across: bought, length: piece(length), ...(part.kind === 'ram-prop' && each.length > 1 ? { lengths: each } : {}), pieces: part.quantity, asSold, ...(part.kind === 'ram-prop' ? { roughSawn: true } : {}),
    ...(rule === BUSH && part.unknowns.some((one) => HOLE.test(one.key ?? '')) ? { afterHole: true } : {}),
  };
}

/** Measuring places of holes that bushes are pressed into. */
const HOLE = /-bore(@|$)/u;

/**
 * What else is bought for a part besides the piece that it is cut from: steel plates and rivets, nuts, washers, split pins, dowels.
 * @returns one line for each, empty where there is nothing, or where a size that decides is not on the drawing
 */
export const stockBesides = (part: PartToMake, system: PrintSystem): readonly string[] => [...platesFor(part, system), ...(part.besides ?? [])];

/** Steel plates and rivets, by the sizes on the drawing. */
function platesFor(part: PartToMake, system: PrintSystem): readonly string[] {
  const of = (name: string): number | undefined => part.dimensions.find((one) => one.name === name)?.quantity.value;
  const print = (value: number): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 }, { system, doubt: false, resolution: system === 'inch' ? INCH / 16 : 0.001 });
  const bare = (value: number): string => print(value).replace(/ (?:in|mm)$/u, '');
  const plates = (each: number, wide: number, long: number): string => {
    const room = { plus: INCH / 32, minus: INCH / 32 };
    return `steel plate ${bare(soldAs(of('plate') ?? 0, room, system, 'flat bar', 'thin'))} by ${print(soldAs(wide, room, system, 'flat bar', 'wide'))}, ${each * part.quantity} pieces of ${print(long)}`;
  };
  const [plate, width, thickness] = [of('plate'), of('width'), of('thickness')];
  if (plate === undefined || width === undefined) return [];
  const [span, along, rivet] = [of('span'), of('plate-length'), of('rivet')];
  if (part.kind === 'helve-cushion') return span === undefined ? [] : [plates(2, width, span)];
  if (part.kind !== 'bow-strap' || along === undefined || rivet === undefined || thickness === undefined) return [];
  // Four rivets through each of two pairs of plates.
  return [plates(4, width, along), `rivets or bolts of ${print(rivet)}, ${8 * part.quantity} pieces for a grip of ${print(thickness + 2 * plate)}`];
}

/** The longest of the lengths on the drawing: pins of one set differ. */
function lengthOf(part: PartToMake, rule: Rule, largest: (name: string) => number | undefined): number | undefined {
  for (const names of rule.along) {
    const sizes = names.map(largest);
    if (sizes.some((size) => size === undefined)) continue;
    const sum = sizes.reduce<number>((total, size) => total + (size ?? 0), 0);
    const others = names.length > 1 ? [] : part.dimensions.flatMap((one) => (one.name.startsWith(`${names[0]!}-`) && !one.name.endsWith('-fitted') ? [largest(one.name) ?? 0] : []));
    return Math.max(sum, ...others);
  }
  return undefined;
}

/** `flat bar 1/2 by 5/8 in, 2 pieces of 6 3/4 in`. */
export function stockWords(stock: Stock, system: PrintSystem): string {
  const print = (value: number, drawn = false): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 }, { system, doubt: false, ...(drawn && system === 'inch' ? {} : { resolution: system === 'inch' ? INCH / 16 : 0.001 }) });
  const sides = stock.across.map((side) => print(side, stock.asSold));
  const section = stock.form === 'round bar' ? `bar ${sides[0] ?? ''} round` : `${stock.form} ${sides.map((side, index) => (index < sides.length - 1 ? side.replace(/ (?:in|mm)$/u, '') : side)).join(' by ')}`;
  return `${stock.afterHole === true ? 'bought after the hole is read; as drawn now, ' : ''}${section}${stock.roughSawn === true ? ' full size, rough-sawn' : ''}, ${piecesWords(stock, print)}`;
}

/** `4 pieces of 4 1/4, 6 1/4, 7 1/4 and 10 in`. */
function piecesWords({ pieces, length, lengths }: Stock, print: (value: number) => string): string {
  const sizes = lengths === undefined ? [print(length)] : lengths.map((one, index) => (index < lengths.length - 1 ? print(one).replace(/ (?:in|mm)$/u, '') : print(one)));
  return `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} of ${sizes.length < 2 ? sizes.join('') : `${sizes.slice(0, -1).join(', ')} and ${sizes.at(-1)!}`}`;
}

/** Pieces of one section and length together, so that they come from one bar. */
export function together(stocks: readonly Stock[]): readonly Stock[] {
  const held: Stock[] = [];
  for (const stock of stocks) {
    const same = held.findIndex((one) => one.form === stock.form && one.afterHole === stock.afterHole && Math.abs(one.length - stock.length) < hair && one.across.length === stock.across.length && one.across.every((side, index) => Math.abs(side - (stock.across[index] ?? 0)) < hair));
    const one = held[same];
    if (one === undefined) held.push(stock);
    else held[same] = { ...one, pieces: one.pieces + stock.pieces };
  }
  return held;
}
