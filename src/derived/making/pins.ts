import { shaftLimits } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, doubtWarnings, FigureReader, reckon, sized, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension, PartKind, Unknown } from './part-to-make.ts';
import { nearestFit, type RunningFit } from './running-fit.ts';
import { breakLine, centreLine, circle, cross, line, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const JOINTS = ['upper-left', 'upper-right', 'lower-left', 'lower-right'] as const;
const REAMER_INCH = shopNumber('plate-room');
const REAMER_METRIC = 0.5e-3;

/** Diameter that new pins are made to: as made where that is known, else the next reamer size over the worn hole. */
interface PinSize {
  readonly diameter: Figure;
  readonly why: string;
  readonly joints: number;
  readonly missing: readonly string[];
}

/**
 * Pins of the linkage, all to one diameter with a running fit of ISO 286 nearest to the clearance of practice, 0.002 to 0.005 in.
 * @returns the part; not known where no pin was measured; cannot be outside the sizes of the fit table
 */
export function makeTogglePins(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const title = 'Linkage pin';
  const size = pinSize(values, known, context);
  if (size === undefined) return noPin('toggle-pin', title, values);
  const fit = nearestFit(size.diameter.quantity.value, shopNumber('pin-clearance-least'), shopNumber('pin-clearance-most'));
  if (fit === undefined) return outsideTable('toggle-pin', title, size.diameter, context);
  const d = size.diameter.quantity.value;
  const dimensions = [sized('diameter', 'diameter', size.diameter, { plus: fit.fit.shaft.upper, minus: -fit.fit.shaft.lower }, size.why, fit.shaft)];
  return {
    state: 'to-make', kind: 'toggle-pin', id: 'toggle-pin', title, quantity: size.joints, material: 'Case-hardening or alloy steel, ground', hardness: 'Skin about 55 to 60 HRC, core tough; or alloy steel at 40 to 45 HRC',
    dimensions, shape: pinShape(d), unknowns: [PIN_LENGTH, ...sizeUnknowns(size)], disputes: [],
    notes: [
      `${size.joints === 1 ? 'Made' : 'All made'} to one diameter; holes reamed in line, ${fit.hole}.`, clearanceNote(fit, context),
      'Ends chamfered 1/16 in (1.6 mm). Cross hole for a split pin or a groove for a ring at each end: a pin must not walk out.',
      'Oil hole and groove as the old pin has them, away from the loaded side.',
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], sources: ['iso-286', 'common-practice', ...size.diameter.sources],
    warnings: [...size.missing.map((joint) => `The ${joint.replaceAll('-', ' ')} pin was not measured; it is taken to be of the same size.`), ...worn(dimensions)],
  };
}

/** Bushes for those pins: bore to the pin, outside to be pressed in. */
export function makeToggleBushings(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const title = 'Linkage bushing';
  const size = pinSize(values, known, context);
  if (size === undefined) return noPin('toggle-bushing', title, values);
  const missing = size.missing.map((joint) => `The ${joint.replaceAll('-', ' ')} pin was not measured; its bush is taken to be of the same size.`);
  const fit = nearestFit(size.diameter.quantity.value, shopNumber('pin-clearance-least'), shopNumber('pin-clearance-most'));
  if (fit === undefined) return outsideTable('toggle-bushing', title, size.diameter, context);
  const bore = sized('bore', 'bore, after pressing in', size.diameter, { plus: fit.fit.hole.upper, minus: -fit.fit.hole.lower }, size.why, fit.hole);
  return bushing('toggle-bushing', title, bore, size.diameter, size.joints, clearanceNote(fit, context), context, [{ what: 'length of each bush', how: 'Thickness of the eye that it is pressed into, joint by joint.' }, EYE], ['One for each eye; count the eyes.'], missing);
}

/** Bush for the big end of the rod, bored to the crank pin as it is with 0.003 to 0.006 in of room: no fit of a table, since the pin is not new. */
export function makeRodBushing(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Bushing of the rod’s big end';
  const reader = new FigureReader(values);
  const pin = reader.need('crank.pin-diameter');
  if (pin === undefined) return reader.notKnown('rod-bushing', title);
  const round = reader.find('crank.pin-out-of-round');
  const warnings = round !== undefined && round.quantity.value > shopNumber('pin-clearance-least') / 2 ? ['The crank pin is out of round: turn or grind it first, then bore the bush to what is left.'] : [];
  const least = shopFigure('rod-clearance-least');
  const room = { ...reckon('length', [pin, least], (diameter, gap) => diameter! + gap!), estimate: pin.estimate };
  const bore = sized('bore', 'bore, after pressing in', room, { plus: shopNumber('rod-clearance-most') - least.quantity.value, minus: 0 }, 'crank pin as measured, finished round, and 0.003 to 0.006 in of clearance');
  return bushing('rod-bushing', title, bore, room, 1, 'Clearance on the crank pin 0.003 to 0.006 in (0.08 to 0.15 mm).', context, [{ what: 'length of the bush', how: 'Width of the rod’s big end less the end play.' }, EYE], ['Bore to the pin as it is, not to a nominal size.'], warnings);
}

/** Bush of the clutch pulley, bored to the shaft that is there with the 0.010 to 0.015 in of play that lets it go. */
export function makeClutchPulleyBushing(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Bushing of the clutch pulley';
  const reader = new FigureReader(values);
  const shaft = reader.need('main-shaft.diameter@rear|main-shaft.diameter@front|main-shaft.diameter');
  if (shaft === undefined) return reader.notKnown('clutch-pulley-bushing', title);
  const least = shopFigure('clutch-play-least');
  const room = { ...reckon('length', [shaft, least], (diameter, gap) => diameter! + gap!), estimate: shaft.estimate };
  const bore = sized('bore', 'bore, after pressing in', room, { plus: shopNumber('clutch-play-most') - least.quantity.value, minus: 0 }, 'shaft at its bearing and 0.010 to 0.015 in of play, which lets the pulley free itself');
  const where: Unknown = { what: 'shaft where the pulley runs', how: 'Micrometer on the shaft under the pulley, both ways: it wears there and not as the bearings do.' };
  return bushing('clutch-pulley-bushing', title, bore, room, 1, 'Play on the shaft 0.010 to 0.015 in (0.25 to 0.38 mm), total.', context, [where, { what: 'length of the bush', how: 'Hub of the pulley less the end float.' }, EYE], ['Bore to the shaft as it is under the pulley.'], ['The shaft was read at a bearing, not under the pulley.']);
}

function bushing(kind: PartKind, title: string, bore: MakingDimension, pin: Figure, quantity: number, clearance: string, context: MakingContext, unknowns: readonly Unknown[], notes: readonly string[], warnings: readonly string[]): Making {
  const outside = { ...reckon('length', [pin, shopFigure('bush-wall')], (hole, wall) => hole! + 2 * wall!), estimate: true };
  const pressed = shaftLimits(outside.quantity.value, 'r6');
  if (pressed.state !== 'known') return outsideTable(kind, title, outside, context);
  const dimensions = [
    bore,
    sized('outside', 'outside diameter', outside, { plus: pressed.upper, minus: -pressed.lower }, 'bore and a wall of 1/8 in; eye bored H7 to it', 'r6'),
  ];
  return {
    state: 'to-make', kind, id: kind, title, quantity, material: 'Bearing bronze (tin bronze, leaded)', hardness: 'As cast or drawn', dimensions,
    shape: bushShape(bore.quantity.value, outside.quantity.value), unknowns, disputes: [],
    notes: [...notes, `Eye bored H7; bush r6, pressed in; the bore closes, so ream it afterwards, in line.`, clearance, 'Oil hole drilled through bush and eye; groove on the unloaded side. Chamfer 1/16 in (1.6 mm) to lead in.'],
    cautions: ['isolate', 'block-ram', 'spring-unload'], sources: ['iso-286', 'common-practice', 'from-memory', ...pin.sources],
    warnings: [...warnings, 'The outside is an estimate: bore the eye clean first, keep metal round it, and make the bush to the eye.', ...worn(dimensions.slice(0, 1))],
  };
}

function pinSize(values: Values, _known: Known, context: MakingContext): PinSize | undefined {
  const reader = new FigureReader(values);
  const made = JOINTS.flatMap((joint) => reader.find(`toggle-pins.diameter@${joint}#as-made`) ?? []).concat(reader.find('toggle-pins.diameter#as-made') ?? []);
  const read = JOINTS.flatMap((joint) => {
    const pin = reader.find(`toggle-pins.diameter@${joint}`);
    return pin === undefined ? [] : [{ joint, pin, play: reader.find(`toggle-pins.play@${joint}`) }];
  });
  const missing = JOINTS.filter((joint) => !read.some((one) => one.joint === joint) && reader.find(`toggle-pins.diameter@${joint}#as-made`) === undefined);
  const [largest] = [...made].sort((a, b) => b.quantity.value - a.quantity.value);
  if (largest !== undefined) return { diameter: largest, why: 'as made; worn holes are bushed back to it', joints: JOINTS.length, missing: made.length + read.length >= JOINTS.length ? [] : missing };
  const holes = read.map(({ pin, play }) => ({ size: pin.quantity.value + (play?.quantity.value ?? 0), from: [...pin.from, ...(play?.from ?? [])] })).sort((a, b) => b.size - a.size);
  const [widest] = holes;
  if (widest === undefined) return undefined;
  const step = context.system === 'inch' ? REAMER_INCH : REAMER_METRIC;
  return { diameter: chosen(Math.ceil(widest.size / step - 1e-9) * step, 'length', 'derived', widest.from), why: 'the next reamer size over the widest worn hole, pin and play together', joints: JOINTS.length, missing };
}

const PIN_LENGTH: Unknown = { what: 'length of each pin', how: 'Over everything that it goes through, with room for a washer and the split pin or ring at each end.' };
const EYE: Unknown = { what: 'metal round the eye', how: 'Outside of the eye, the thin way: after boring there must be as much metal round the bush as the bush is thick, and more is better.' };
const sizeUnknowns = (size: PinSize): readonly Unknown[] => size.missing.map((joint) => ({ key: `toggle-pins.diameter@${joint}`, what: `pin diameter, ${joint.replaceAll('-', ' ')}`, how: 'Pin out: measure it where it wears and where it does not.' }));

const noPin = (kind: PartKind, title: string, values: Values): Making => {
  const reader = new FigureReader(values);
  for (const joint of JOINTS) reader.need(`toggle-pins.diameter@${joint}`);
  return reader.notKnown(kind, title);
};

const outsideTable = (kind: PartKind, title: string, size: Figure, context: MakingContext): Making => ({
  state: 'cannot-be', kind, title, because: 'The table of fits does not hold this size; a fit would have to be chosen by hand.',
  problem: `The diameter lies outside the table of fits; over 6 and up to 180 mm is allowed: ${printQuantity({ ...size.quantity, uncertainty: 0 }, context.system)}`,
});

/** The doubt of a worn pin does not matter to a size that is chosen; that of a size as made does. */
const worn = (dimensions: readonly MakingDimension[]): readonly string[] => doubtWarnings(dimensions).map((warning) => `${warning} The fit is made between the parts themselves.`);

function clearanceNote(fit: RunningFit, context: MakingContext): string {
  const print = (length: number) => formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system === 'inch' ? { unit: 'in', resolution: 0.0254e-4 } : { unit: 'mm', resolution: 1e-6 });
  return `Clearance with ${fit.hole}/${fit.shaft}: ${print(fit.fit.leastClearance)} to ${print(fit.fit.mostClearance)}.`;
}

function pinShape(diameter: number): Shape {
  const r = diameter / 2;
  const half = diameter * 1.7;
  const chamfer = diameter * 0.08;
  const ends = [-1, 1].flatMap((side) => {
    const x = side * half;
    return [
      line([x, -r + chamfer], [x, r - chamfer]), line([x, r - chamfer], [x - side * chamfer, r]), line([x, -r + chamfer], [x - side * chamfer, -r]), line([x - side * chamfer, -r], [x - side * chamfer, r]),
      line([x - side * chamfer, r], [side * diameter * 0.12, r]), line([x - side * chamfer, -r], [side * diameter * 0.12, -r]), ...breakLine(side * diameter * 0.12, -r, r),
    ];
  });
  return {
    broken: 'Cut short: length to suit, not measured.',
    views: [
      { name: 'front', title: 'front', marks: [...ends, centreLine([-half, 0], [half, 0])], dimensions: [{ kind: 'straight', of: 'diameter', from: [half - chamfer, -r], to: [half - chamfer, r], side: 'right', row: 1, sign: 'Ø' }] },
    ],
  };
}

function bushShape(bore: number, outside: number): Shape {
  const half = outside * 0.75;
  const gap = outside * 0.06;
  const lines = [-1, 1].flatMap((side) => [
    line([side * half, -outside / 2], [side * half, outside / 2]),
    ...[[outside / 2, 'visible'], [-outside / 2, 'visible'], [bore / 2, 'hidden'], [-bore / 2, 'hidden']].map(([y, kind]) => line([side * half, y as number], [side * gap, y as number], kind as 'visible' | 'hidden')),
    ...breakLine(side * gap, -outside / 2, outside / 2),
  ]);
  return {
    broken: 'Cut short: length as the eye, not measured.',
    views: [
      { name: 'front', title: 'front', marks: [...lines, centreLine([-half, 0], [half, 0])], dimensions: [] },
      {
        name: 'right', title: 'end', marks: [circle([0, 0], outside / 2), circle([0, 0], bore / 2), ...cross([0, 0], outside / 2)],
        dimensions: [
          { kind: 'straight', of: 'outside', from: [-outside / 2, 0], to: [outside / 2, 0], side: 'below', row: 1, sign: 'Ø' },
          { kind: 'straight', of: 'bore', from: [-bore / 2, 0], to: [bore / 2, 0], side: 'above', row: 1, sign: 'Ø' },
        ],
      },
    ],
  };
}
