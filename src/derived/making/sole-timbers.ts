import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { circle, cross, rectangle, type Mark, type Point, type Shape } from './shape.ts';
import { possible } from './possible.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'sole-timbers';
const TITLE = 'Sole timbers under the base (sleepers)';
/** Between a 25 lb hammer on a plank pad and a 50 lb hammer on beams. */
const LIGHT_RAM = 15;
const HEAVY_RAM = 30;

/**
 * Timbers under a light hammer: as many beams side by side as the base is wide, long enough to stand out at both ends; checked against what
 * oak stands across its grain under a hard blow.
 * @returns the part; not known without the base; cannot be for rams above 30 kg, which nobody was seen to set on timber
 */
export function makeSoleTimbers(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const length = reader.need('frame.base-length');
  const width = reader.need('frame.base-width');
  const ram = reader.need('ram.mass|class.ram-mass');
  if (length === undefined || width === undefined || ram === undefined) return reader.notKnown(KIND, TITLE);
  if (ram.quantity.value > HEAVY_RAM) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: 'Timber has been seen under hammers up to 50 lb (23 kg); a heavier one wants a block.', problem: `The ram is above what timber is known to carry; up to ${printQuantity({ dimension: 'mass', value: HEAVY_RAM, uncertainty: 0 }, context.system)} is allowed: ${printQuantity({ ...ram.quantity, uncertainty: 0 }, context.system)}` };
  }
  const bolt = reader.find('hold-down-bolts.diameter');
  const [boltsAlong, boltsAcross] = [reader.find('hold-down-bolts.spacing@along'), reader.find('hold-down-bolts.spacing@across')];
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  for (const [holes, base, where] of [[boltsAlong, length, 'long'], [boltsAcross, width, 'wide']] as const) {
    if (holes !== undefined && holes.quantity.value >= base.quantity.value) return { state: 'cannot-be', kind: KIND, title: TITLE, because: `Bolt holes of the base lie within it: one of the readings is wrong (${[...holes.from, ...base.from].join(', ')}).`, problem: `The bolt holes stand further apart than the base is ${where}; below ${print(base.quantity.value)} is allowed: ${print(holes.quantity.value)}` };
  }
  const hole = bolt === undefined || boltsAlong === undefined || boltsAcross === undefined ? undefined : { ...reckon('length', [bolt, shopFigure('bush-wall-least')], (across, room) => across! + room!), estimate: bolt.estimate };
  const beyond = shopFigure('timber-beyond-base');
  const exact = { ...beyond, quantity: { ...beyond.quantity, uncertainty: 0 } };
  const long = { ...reckon('length', [length, exact], (base, out) => base! + 2 * out!), estimate: length.estimate };
  const beam = shopFigure('timber-width');
  const count = Math.max(2, Math.ceil((width.quantity.value + 2 * beyond.quantity.value) / beam.quantity.value - 0.25));
  const depth = shopFigure(ram.quantity.value <= LIGHT_RAM ? 'timber-depth-light' : 'timber-depth');
  const pad = chosen(count * beam.quantity.value, 'length', 'derived', width.from);
  const dimensions: MakingDimension[] = [
    sized('length', 'length of each timber', long, plusMinus(shopNumber('sawn')), 'base and 4 in (100 mm) beyond it at each end'),
    sized('timber-width', 'width of each timber', beam, plusMinus(shopNumber('sawn') / 2), 'as seen under a 50 lb (23 kg) hammer'),
    sized('depth', 'depth', depth, plusMinus(shopNumber('sawn') / 4), ram.quantity.value <= LIGHT_RAM ? 'as seen under a 25 lb (11 kg) hammer' : 'as seen under a 50 lb (23 kg) hammer'),
    sized('pad-width', 'width of all timbers together', pad, plusMinus(shopNumber('sawn')), 'whole timbers, beyond the base at both sides'),
    sized('base-length', 'base of the hammer, length', length, plusMinus(0), 'as measured'),
    sized('base-width', 'base of the hammer, width', width, plusMinus(0), 'as measured'),
    ...(hole === undefined || boltsAlong === undefined || boltsAcross === undefined ? [] : [
      sized('bolt-hole', 'bolt holes, 4 off', hole, { plus: shopNumber('bush-wall-least'), minus: 0 }, 'bolt and 1/16 in (1.6 mm)'),
      sized('bolts-along', 'bolt holes, along', boltsAlong, plusMinus(shopNumber('bush-wall-least')), 'as the base has them'), sized('bolts-across', 'bolt holes, across', boltsAcross, plusMinus(shopNumber('bush-wall-least')), 'as the base has them'),
    ]),
  ];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: count, material: 'White oak or another heavy rot-proof hardwood, heart down, sawn square', hardness: 'Does not apply', dimensions,
    mass: long.quantity.value * beam.quantity.value * depth.quantity.value * STOCK_DENSITIES.oak,
    shape: timberShape(long.quantity.value, beam.quantity.value, count, depth.quantity.value, length.quantity.value, width.quantity.value, hole === undefined ? undefined : { across: hole.quantity.value, x: boltsAlong!.quantity.value, y: boltsAcross!.quantity.value }), disputes: [{ about: 'What a hammer stands on', oneSide: '2 ft (0.6 m) of concrete under every hammer.', otherSide: 'Old sleepers or oak beams, well bolted, work as well at 50 lb (23 kg); both have stood for decades.', source: 'page-foundation', taken: 'otherSide', because: 'the ground is bare and the hammer light; a block is the dearer way and no drawing is needed for it' }],
    unknowns: [...(boltsAlong === undefined ? [unknownPlace('hold-down-bolts.spacing@along')] : []), ...(boltsAcross === undefined ? [unknownPlace('hold-down-bolts.spacing@across')] : []), ...(bolt === undefined ? [unknownPlace('hold-down-bolts.diameter')] : [])],
    notes: [
      'Timbers bolted to one another through all, two rods at least; tops planed level to the base within 1/16 in (1.5 mm).',
      `Through bolts with large washers${bolt === undefined ? '; 5/8 in (16 mm) is usual for light hammers' : ` of ${printQuantity({ ...bolt.quantity, uncertainty: 0 }, context.system)}`}. Nip up again after one hour and after ten.`,
      'Bolt holes marked through the base’s own holes before they are drilled: the base wins over the drawing.',
      'Ends sealed. On firm ground or on a slab, never on loose fill.', ...pressureNote(reader, length, width, context),
    ],
    cautions: ['top-heavy', 'isolate'], sources: ['page-foundation', 'common-practice', 'from-memory'],
    warnings: estimateWarnings(dimensions),
  }, context.system);
}

/** Force of a hard hot blow over the base, against oak across its grain. */
function pressureNote(reader: FigureReader, length: Figure, width: Figure, context: MakingContext): readonly string[] {
  const force = reader.find('seat-pressure.peak-force-hot');
  if (force === undefined) return [];
  const pressure = reckon('pressure', [force, length, width], (peak, along, across) => peak! / (along! * across!));
  const print = (value: number) => printQuantity({ dimension: 'pressure', value, uncertainty: 0 }, context.system);
  return [`If the whole force of a hot blow came down on the base it would be ${print(pressure.quantity.value)} over it, an estimate; dry oak stands about ${print(shopNumber('oak-across'))} across the grain, from memory.`];
}

function timberShape(length: number, beam: number, count: number, depth: number, baseLength: number, baseWidth: number, bolts: { readonly across: number; readonly x: number; readonly y: number } | undefined): Shape {
  const pad = beam * count;
  const beams: Mark[] = Array.from({ length: count }, (_, index) => rectangle(0, -pad / 2 + index * beam, length, beam)).flat();
  const left = (length - baseLength) / 2;
  const base = rectangle(left, -baseWidth / 2, baseLength, baseWidth, 'hidden');
  const holes = bolts === undefined ? [] : [-1, 1].flatMap((x) => [-1, 1].map((y): Point => [length / 2 + (x * bolts.x) / 2, (y * bolts.y) / 2]));
  return {
    views: [
      { name: 'front', title: 'front', marks: rectangle(0, 0, length, depth), dimensions: [{ kind: 'straight', of: 'depth', from: [length, 0], to: [length, depth], side: 'right', row: 1 }, { kind: 'straight', of: 'length', from: [0, 0], to: [length, 0], side: 'below', row: 1 }] },
      {
        name: 'top', title: 'top, base of the hammer dashed', marks: [...beams, ...base, ...holes.flatMap((centre) => [circle(centre, bolts!.across / 2), ...cross(centre, bolts!.across / 2)])],
        dimensions: [
          { kind: 'straight', of: 'pad-width', from: [length, -pad / 2], to: [length, pad / 2], side: 'right', row: 2 },
          { kind: 'straight', of: 'timber-width', from: [length, -pad / 2], to: [length, -pad / 2 + beam], side: 'right', row: 1 },
          ...(bolts === undefined ? [] : [
            { kind: 'straight', of: 'bolts-along', from: [length / 2 - bolts.x / 2, bolts.y / 2], to: [length / 2 + bolts.x / 2, bolts.y / 2], side: 'above', row: 1 } as const,
            { kind: 'straight', of: 'bolts-across', from: [length / 2 - bolts.x / 2, -bolts.y / 2], to: [length / 2 - bolts.x / 2, bolts.y / 2], side: 'left', row: 1 } as const,
            { kind: 'leader', of: 'bolt-hole', at: [length / 2 + bolts.x / 2 - (bolts.across / 2) * Math.SQRT1_2, -bolts.y / 2 + (bolts.across / 2) * Math.SQRT1_2], toward: [-3, 3], sign: 'Ø' } as const,
          ]),
          { kind: 'straight', of: 'base-length', from: [left, baseWidth / 2], to: [left + baseLength, baseWidth / 2], side: 'above', row: bolts === undefined ? 1 : 2 },
          { kind: 'straight', of: 'base-width', from: [left, -baseWidth / 2], to: [left, baseWidth / 2], side: 'left', row: bolts === undefined ? 1 : 2 },
        ],
      },
    ],
  };
}
