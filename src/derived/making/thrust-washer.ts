import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { FigureReader, plusMinus, reckon, sized, unknownPlace, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { circle, cross, hatched, line, path, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'thrust-washer';
const TITLE = 'Thrust washer of the main shaft';
const THOU = shopNumber('pin-clearance-least') / 2;
const SIXTY_FOURTH = shopNumber('plate-room');

/**
 * The bronze washer that sets the end float of the shaft: as thick as the one that is there and what the float has too much.
 * @returns the part; not known without shaft, float, the washer that is there and its shoulder; not needed where the float is not too much;
 * cannot be where the shoulder is no wider than the shaft
 */
export function makeThrustWasher(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const shaft = ['front', 'rear'].flatMap((end) => reader.find(`main-shaft.diameter@${end}`) ?? []).sort((a, b) => b.quantity.value - a.quantity.value)[0] ?? reader.need('main-shaft.diameter@front');
  const float = reader.need('main-shaft.end-float');
  const old = reader.need('main-shaft.thrust-thickness');
  const shoulder = reader.need('main-shaft.thrust-outside');
  const wanted = shopFigure('end-float');
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  if (float !== undefined && float.quantity.value <= wanted.quantity.value) return { state: 'not-needed', kind: KIND, title: TITLE, because: `The end float of ${print(float.quantity.value)} is not more than the ${print(wanted.quantity.value)} that a washer is made for: it is faced thinner by hand, not made new.` };
  if (shaft === undefined || float === undefined || old === undefined || shoulder === undefined) return reader.notKnown(KIND, TITLE);
  const bore = { ...reckon('length', [shaft], (across) => Math.ceil((across! + 2 * SIXTY_FOURTH) / SIXTY_FOURTH - 1e-6) * SIXTY_FOURTH), estimate: shaft.estimate };
  const size = { ...bore, quantity: { ...bore.quantity, uncertainty: 0 } };
  if (shoulder.quantity.value <= size.quantity.value + 2 * shopNumber('bush-wall')) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: `The washer needs a face to run on: one of the readings is wrong (${[...shoulder.from, ...shaft.from].join(', ')}).`, problem: `The shoulder is too small for a washer; above ${print(size.quantity.value + 2 * shopNumber('bush-wall'))} is allowed: ${print(shoulder.quantity.value)}` };
  }
  const thick = { ...reckon('length', [old, float, wanted], (there, loose, room) => there! + loose! - room!), estimate: old.estimate || float.estimate };
  const dimensions: MakingDimension[] = [
    sized('bore', 'bore', size, { plus: SIXTY_FOURTH, minus: 0 }, 'shaft and 1/32 in (0.8 mm) or a little more, to the next sixty-fourth: it turns with neither side'),
    sized('outside', 'outside diameter', shoulder, { plus: 0, minus: 2 * SIXTY_FOURTH }, 'as the shoulder that runs on it'),
    sized('thickness', 'thickness', thick, plusMinus(2 * THOU), `the washer that is there and the float less ${print(wanted.quantity.value)}`),
  ];
  const [b, o, t] = [size.quantity.value, shoulder.quantity.value, thick.quantity.value];
  const thin = t < shopNumber('washer-thin') ? [`A washer of ${print(t)} is thin: it curls. Face the shoulder back and make it thicker, or use shim stock behind a thicker one.`] : [];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Leaded tin bronze: C93200 (SAE 660) or CuSn7Zn4Pb7', hardness: 'As cast, about 65 HB; no heat treatment', dimensions, mass: (Math.PI / 4) * (o ** 2 - b ** 2) * t * STOCK_DENSITIES.bronze, roughness: 3.2e-6,
    shape: washerShape(b, o, t), unknowns: shaft.from.includes('main-shaft.diameter@front') || shaft.from.includes('main-shaft.diameter@rear') ? [] : [unknownPlace('main-shaft.diameter@front')], disputes: [],
    notes: ['One side takes up all of the float; where washers sit at both ends, share it between them.', 'Both faces flat and parallel. Edges broken 1/64 in (0.4 mm). Where the shaft cannot be drawn: sawn through across, halves kept together.', 'Three oil grooves straight across one face, 1/8 in (3 mm) wide and a quarter of the thickness deep.', 'Measure the float again when bearings and caps are finished, before the washer is made.'],
    cautions: ['isolate', 'block-ram'], sources: ['page-bearings', 'common-practice', 'from-memory', 'iso-1101', 'iso-21920'], warnings: thin,
  }, context.system);
}

function washerShape(bore: number, outside: number, thick: number): Shape {
  const [r, R] = [bore / 2, outside / 2];
  const wall = (side: 1 | -1): readonly Point[] => [[0, side * r], [thick, side * r], [thick, side * R], [0, side * R]];
  const marks: Mark[] = [...([1, -1] as const).flatMap((side) => [...path(wall(side)), ...hatched(wall(side), Math.max(thick / 2.5, outside / 50))]), line([0, -r], [0, r]), line([thick, -r], [thick, r]), line([-outside * 0.04, 0], [thick + outside * 0.04, 0], 'centre')];
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'thickness', from: [0, -R], to: [thick, -R], side: 'below', row: 1 },
    { kind: 'datum', letter: 'A', at: [0, R * 0.85], side: 'left' },
    { kind: 'control', geometric: 'parallel', within: THOU, to: 'A', at: [thick, (r + R) / 2], toward: [2, 8] },
    { kind: 'finish', roughness: 1.6e-6, at: [thick, -R * 0.9], toward: [2, -3] },
  ];
  const ends: DimensionMark[] = [
    { kind: 'straight', of: 'outside', from: [-R, 0], to: [R, 0], side: 'below', row: 1, sign: 'Ø' },
    { kind: 'leader', of: 'bore', at: [r * Math.SQRT1_2, r * Math.SQRT1_2], toward: [2.5, 4], sign: 'Ø', clear: true },
  ];
  return { views: [{ name: 'front', title: 'cut along the axis', marks, dimensions }, { name: 'right', title: 'end', marks: [circle([0, 0], R), circle([0, 0], r), ...cross([0, 0], R)], dimensions: ends }] };
}
