import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
import { breakLine, circle, cross, line, rectangle, type DimensionMark, type Point, type Shape } from './shape.ts';
import { stackWords } from './shim-stack.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'guide-shims';
const TITLE = 'Shim packs of the ram guide';
const THOU = shopNumber('pin-clearance-least') / 2;
const SIDES = ['left', 'right'] as const;

/**
 * Shim packs that leave the ram 0.005 to 0.010 in of play. Packs under a cap come down by the whole of the surplus play at both sides;
 * packs beside a gib share it. The tighter end of the guide decides, so that nothing binds.
 * @returns the part; not known without packs, play and the kind of guide; cannot be where the packs do not hold enough to take out
 */
export function makeGuideShims(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const kind = known.looks['ram-guide.kind']?.answer;
  const capped = kind === 'capped';
  const play = capped ? 'ram-guide.play-fore-aft' : 'ram-guide.play-side';
  const ends = ['top', 'bottom'].flatMap((at) => reader.need(`${play}@${at}`) ?? []);
  const packs = SIDES.flatMap((side) => reader.need(`guide-shims.thickness@${side}`) ?? []);
  const missing: Unknown[] = [...(kind === undefined ? [{ key: 'ram-guide.kind', what: 'kind of guide', how: 'Look how the shims sit: under a cap, or beside a gib. It decides which play they take up.' }] : []), ...reader.missing];
  const [first, second] = ends;
  const [left, right] = packs;
  if (first === undefined || second === undefined || left === undefined || right === undefined || kind === undefined) return { state: 'not-known', kind: KIND, title: TITLE, missing };
  const tight = first.quantity.value <= second.quantity.value ? first : second;
  const wanted = { ...shopFigure('guide-play'), estimate: false };
  const share = capped ? 1 : 0.5;
  const takeOut = reckon('length', [tight, { ...wanted, quantity: { ...wanted.quantity, uncertainty: 0 } }], (now, leave) => share * (now! - leave!));
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  if (takeOut.quantity.value <= 0) return { state: 'not-needed', kind: KIND, title: TITLE, because: `The tighter end of the guide has ${print(tight.quantity.value)} of play: no shim is to come out.` };
  const pack = (now: Figure) => reckon('length', [now, takeOut], (is, out) => is! - out!);
  const news = [pack(left), pack(right)];
  const thinner = left.quantity.value < right.quantity.value ? left : right;
  if (news.some((one) => one.quantity.value < 0)) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: 'The packs are too thin to take up the play: the ram or the guide must be built up, or the cap planed.', problem: `More shim would have to come out than there is; up to ${print(thinner.quantity.value)} at each side is allowed: ${print(takeOut.quantity.value)}` };
  }
  const height = reader.find('ram-guide.height');
  const width = reader.find('guide-shims.width');
  const count = reader.find('guide-shims.holes');
  const holes = count === undefined ? undefined : Math.round(count.quantity.value);
  const hole = reader.find('guide-shims.hole-diameter');
  const pitch = reader.find('guide-shims.hole-pitch');
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  const bored = holes !== undefined && holes > 0 ? hole : undefined;
  if (bored !== undefined && width !== undefined && bored.quantity.value >= width.quantity.value) return cannot('A bolt hole as wide as its shim cuts it in two: one of the readings is wrong (guide-shims.hole-diameter, guide-shims.width).', `The bolt hole is as wide as the shim; below ${print(width.quantity.value)} is allowed: ${print(bored.quantity.value)}`);
  if (bored !== undefined && pitch !== undefined && height !== undefined && holes !== undefined && (holes - 1) * pitch.quantity.value + bored.quantity.value >= height.quantity.value) return cannot('The row of bolt holes is longer than the shim: count, distance or height is wrong (guide-shims.holes, guide-shims.hole-pitch, ram-guide.height).', `The bolt holes do not fit in the shim; below ${print(height.quantity.value)} over all is allowed: ${print((holes - 1) * pitch.quantity.value + bored.quantity.value)}`);
  const taper = Math.abs(first.quantity.value - second.quantity.value);
  const dimensions: MakingDimension[] = [
    ...SIDES.map((side, index) => sized(`pack-${side}`, `thickness of the ${side} pack`, news[index]!, plusMinus(THOU), `pack as found less ${print(takeOut.quantity.value)}, which leaves 0.005 to 0.010 in (0.13 to 0.25 mm) of play at the tighter end`)),
    ...(height === undefined ? [] : [sized('height', 'length of the shim', height, { plus: 0, minus: 2 * shopNumber('plate-room') }, 'as high as the guide')]),
    ...(width === undefined ? [] : [sized('width', 'width of the shim', width, { plus: 0, minus: shopNumber('plate-room') }, 'as the old shim')]),
    ...(bored === undefined ? [] : [sized('hole', `bolt holes, ${holes} off, on the middle line`, bored, { plus: shopNumber('plate-room'), minus: 0 }, 'as the old shim')]),
    ...(bored === undefined || pitch === undefined || holes === undefined || holes < 2 ? [] : [sized('hole-pitch', 'from hole to hole', pitch, plusMinus(shopNumber('plate-room')), 'as the old shim; the row is centred in the height')]),
    ...(bored === undefined || height === undefined || holes === undefined || (holes > 1 && pitch === undefined) ? [] : [sized('first-hole', 'end to the first hole', { ...reckon('length', [height, ...(pitch === undefined ? [] : [pitch])], (tall, apart = 0) => (tall! - (holes - 1) * apart) / 2), estimate: false }, plusMinus(0), 'follows: the row is centred in the height')]),
  ];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 2, mayVanish: ['pack-left', 'pack-right'], material: 'Brass (C26000, CuZn30) or steel shim stock, few and thick leaves', hardness: 'As rolled; no heat treatment',
    dimensions, shape: shimShape({ height: height?.quantity.value, width: width?.quantity.value, hole: bored?.quantity.value, holes: pitch === undefined && (holes ?? 0) > 1 ? 0 : holes ?? 0, pitch: pitch?.quantity.value ?? 0 }), disputes: [],
    unknowns: [
      ...(width === undefined ? [unknownPlace('guide-shims.width')] : []), ...(height === undefined ? [unknownPlace('ram-guide.height')] : []), ...(holes === undefined ? [unknownPlace('guide-shims.holes')] : []),
      ...(holes !== undefined && holes > 0 && hole === undefined ? [unknownPlace('guide-shims.hole-diameter')] : []), ...(holes !== undefined && holes > 1 && pitch === undefined ? [unknownPlace('guide-shims.hole-pitch')] : []),
    ],
    notes: [`Made up of leaves that are sold: ${SIDES.map((side, index) => `${side} ${stackWords(news[index]!.quantity.value, context.system)}`).join('; ')}.`, 'Ram and ways cleaned first. Take out evenly on both sides, 0.001 in (0.025 mm) at a time; where the thinnest leaf of a pack is thicker than that, a thinner one goes in its place. Try the ram after each: it falls of its own weight and does not rock.', 'Bolt holes on the middle line of the shim, the row in the middle of its length: mark them through the old shim where there is one. Deburred flat. A retainer over both ends, so that the pack cannot climb with the ram.', 'Keep the old packs, marked left and right.'],
    cautions: ['isolate', 'block-ram'], sources: ['common-practice', 'page-guide'],
    warnings: [...(taper > 5 * THOU ? [`Top and bottom of the guide differ by ${print(taper)}: shims cannot cure a taper, the ways or the ram must be trued.`] : []), ...estimateWarnings(dimensions)],
  }, context.system);
}

function shimShape({ height, width, hole, holes, pitch }: { readonly height: number | undefined; readonly width: number | undefined; readonly hole: number | undefined; readonly holes: number; readonly pitch: number }): Shape {
  const tall = height ?? (width === undefined ? 0.2 : width * 4);
  const wide = width ?? tall * 0.24;
  const row = hole === undefined || height === undefined ? [] : Array.from({ length: holes }, (_, index): Point => [wide / 2, tall / 2 + (index - (holes - 1) / 2) * pitch]);
  const outline = width === undefined && height !== undefined ? rectangleOpen(wide, tall) : rectangle(0, 0, wide, tall);
  const [first, second] = row;
  const last = row[row.length - 1];
  const dimensions: DimensionMark[] = [
    ...(height === undefined ? [] : [{ kind: 'straight', of: 'height', from: [0, 0], to: [0, tall], side: 'left', row: 1 } as const]),
    ...(width === undefined ? [] : [{ kind: 'straight', of: 'width', from: [0, 0], to: [wide, 0], side: 'below', row: 1 } as const]),
    ...(last === undefined || hole === undefined ? [] : [{ kind: 'leader', of: 'hole', at: [last[0] + (hole / 2) * Math.SQRT1_2, last[1] + (hole / 2) * Math.SQRT1_2], toward: [2, 3], sign: 'Ø', clear: true } as const]),
    ...(first === undefined || height === undefined ? [] : [{ kind: 'straight', of: 'first-hole', from: [wide, 0], to: first, side: 'right', row: 1 } as const]),
    ...(first === undefined || second === undefined ? [] : [{ kind: 'straight', of: 'hole-pitch', from: first, to: second, side: 'right', row: 1 } as const]),
  ];
  const broken = width === undefined ? (height === undefined ? 'Not to scale: length and width as the old shim.' : 'Width not to scale: cut to the old shim.') : height === undefined ? 'Length not to scale: as high as the guide.' : undefined;
  return { ...(broken === undefined ? {} : { broken }), views: [{ name: 'front', title: 'front', marks: [...outline, ...row.flatMap((centre) => [circle(centre, (hole ?? 0) / 2), ...cross(centre, (hole ?? 0) / 2)])], dimensions }] };
}

/** A strip whose right edge is cut away. */
const rectangleOpen = (wide: number, tall: number) => [line([0, 0], [0, tall]), line([0, 0], [wide, 0]), line([0, tall], [wide, tall]), ...breakLine(wide, 0, tall)];
