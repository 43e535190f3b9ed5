import { SPLIT_PINS, STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { bushing, outsideTable } from './bushing.ts';
import { chosen, FigureReader, plusMinus, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { clearanceNote } from './fit-words.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension, PartKind, Unknown } from './part-to-make.ts';
import { splitPinWords, washerWords } from './pin-hardware.ts';
import { pinShape } from './pin-shape.ts';
import { possible } from './possible.ts';
import { reamerOver } from './reamer.ts';
import { nearestFit } from './running-fit.ts';
import { shopNumber } from './shop-figures.ts';

const JOINTS = ['upper-left', 'upper-right', 'lower-left', 'lower-right'] as const;
type Joint = (typeof JOINTS)[number];
const SIXTY_FOURTH = shopNumber('plate-room');

/** Diameter that new pins are made to: as made where that is known, else the next reamer size over the worn hole. */
interface PinSize {
  readonly diameter: Figure;
  readonly why: string;
  readonly missing: readonly Joint[];
}

const words = (joint: string): string => joint.replaceAll('-', ' ');

/**
 * Pins of the linkage, all to one diameter with a running fit of ISO 286 nearest to the clearance of practice, 0.002 to 0.005 in; each as
 * long as its joint asks for.
 * @returns the part; not known where no pin was measured; cannot be outside the sizes of the fit table, or where a pin is too short for two split pins
 */
export function makeTogglePins(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Linkage pin';
  const size = pinSize(values, context);
  if (size === undefined) return noPin('toggle-pin', title, values);
  const fit = nearestFit(size.diameter.quantity.value, shopNumber('pin-clearance-least'), shopNumber('pin-clearance-most'));
  const d = size.diameter.quantity.value;
  const split = SPLIT_PINS.rows.find((row) => d <= row.upTo + 1e-9);
  if (fit === undefined || split === undefined) return outsideTable('toggle-pin', title, size.diameter, context);
  const lengths = jointFigures(values, 'toggle-pins.length');
  const longest = greatest(lengths);
  const alike = sameAll(lengths);
  const shortest = [...lengths.values()].sort((a, b) => a.quantity.value - b.quantity.value)[0];
  const least = 2 * (split.fromEnd + split.hole) + 2 * shopNumber('washer');
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  if (shortest !== undefined && shortest.quantity.value <= least) {
    return { state: 'cannot-be', kind: 'toggle-pin', title, because: `A pin needs a washer and a split pin at each end and something between them: its length is wrong, or its diameter (${[...shortest.from, ...size.diameter.from].join(', ')}).`, problem: `The pin is shorter than what keeps it in; above ${print(least)} is allowed: ${print(shortest.quantity.value)}` };
  }
  const dimensions: MakingDimension[] = [
    sized('diameter', 'diameter', size.diameter, { plus: fit.fit.shaft.upper, minus: -fit.fit.shaft.lower }, size.why, fit.shaft),
    ...(longest === undefined ? [] : alike ? [sized('length', 'length over all', longest, { plus: 0, minus: SIXTY_FOURTH }, 'as the old pins')] : JOINTS.flatMap((joint) => {
      const length = lengths.get(joint);
      return length === undefined ? [] : [sized(length === longest ? 'length' : `length-${joint}`, `length over all, ${words(joint)}`, length, { plus: 0, minus: SIXTY_FOURTH }, 'as the old pin')];
    })),
    sized('cross-hole', 'hole for the split pin, both ends', chosen(split.hole, 'length', SPLIT_PINS.source, size.diameter.from), { plus: SIXTY_FOURTH, minus: 0 }, 'by the diameter of the pin, ISO 2340'),
    sized('from-end', 'hole from the end', chosen(split.fromEnd, 'length', SPLIT_PINS.source, size.diameter.from), plusMinus(SIXTY_FOURTH), 'by the diameter of the pin, ISO 2340'),
    sized('washer', 'washers, both ends, thick', chosen(shopNumber('washer'), 'length', 'from-memory'), plusMinus(0), 'bought, not made'),
    sized('chamfer', 'chamfer, both ends', chosen(shopNumber('chamfer'), 'length', 'common-practice'), { plus: SIXTY_FOURTH, minus: 0 }, 'leads the pin through its bush'),
  ];
  return possible({
    state: 'to-make', kind: 'toggle-pin', id: 'toggle-pin', title, quantity: JOINTS.length, material: 'Case-hardening steel 8620 (20NiCrMo2), ground; or alloy steel 4140 (42CrMo4)', hardness: '8620: case 0.03 to 0.04 in (0.8 to 1 mm) deep, 55 to 60 HRC, core tough. 4140: 40 to 45 HRC all through',
    ...(longest === undefined ? {} : { mass: (Math.PI / 4) * d ** 2 * longest.quantity.value * STOCK_DENSITIES.steel }), roughness: 3.2e-6,
    dimensions, shape: pinShape({ diameter: d, length: longest?.quantity.value, chamfer: shopNumber('chamfer'), hole: split.hole, fromEnd: split.fromEnd, several: !alike }),
    unknowns: [...(longest === undefined ? JOINTS.map((joint) => unknownPlace(`toggle-pins.length@${joint}`)) : JOINTS.filter((joint) => !lengths.has(joint)).map((joint) => unknownPlace(`toggle-pins.length@${joint}`))), ...sizeUnknowns(size)], disputes: [],
    notes: [
      `All made to one diameter${alike || longest === undefined ? '' : ', each to its own length as in the table'}; holes reamed in line, ${fit.hole}.`, clearanceNote(fit, context),
      'Both cross holes in one plane, drilled before hardening; ends kept soft for them. Washer and split pin at each end: a pin must not walk out.',
      'Ground after heat treatment. Left solid: an oil hole from the end would run through the hole of the split pin. Oil comes through the hole in eye and bush.',
    ],
    besides: [washerWords(d, shopNumber('washer'), 2 * JOINTS.length, context.system), splitPinWords(split.hole, d, 2 * JOINTS.length, context.system)],
    cautions: ['isolate', 'block-ram', 'spring-unload'], sources: ['iso-286', 'iso-2340', 'iso-21920', 'common-practice', ...size.diameter.sources],
    warnings: [...size.missing.map((joint) => `The ${words(joint)} pin was not measured; it is taken to be of the same size.`)],
  }, context.system);
}

/** Bushes for those pins: bore to the pin, outside to be pressed in, each as long as its eye is wide. */
export function makeToggleBushings(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Linkage bushing';
  const size = pinSize(values, context);
  if (size === undefined) return noPin('toggle-bushing', title, values);
  const fit = nearestFit(size.diameter.quantity.value, shopNumber('pin-clearance-least'), shopNumber('pin-clearance-most'));
  if (fit === undefined) return outsideTable('toggle-bushing', title, size.diameter, context);
  const widths = jointFigures(values, 'toggle-pins.eye-width');
  const longest = greatest(widths);
  const thinnest = [...jointFigures(values, 'toggle-pins.eye-outside').values()].sort((a, b) => a.quantity.value - b.quantity.value)[0];
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const others = sameAll(widths) ? [] : [`Made to the widest eye and each faced to its own: ${[...widths].map(([joint, width]) => `${words(joint)} ${print(width.quantity.value)}`).join(', ')}.`];
  const hole = greatest(jointFigures(values, 'toggle-pins.eye-bore'));
  return bushing({
    kind: 'toggle-bushing', title, quantity: JOINTS.length, boreFigure: size.diameter, bore: sized('bore', 'bore, after pressing in', size.diameter, { plus: fit.fit.hole.upper, minus: -fit.fit.hole.lower }, size.why, fit.hole),
    hole, holesUnread: hole === undefined ? ['toggle-pins.eye-bore@lower-left'] : [], eye: thinnest, eyeKey: 'toggle-pins.eye-outside@lower-left', length: longest, lengthKey: 'toggle-pins.eye-width@lower-left', lengthWhy: 'width of the widest eye; faced flush with it', clearance: clearanceNote(fit, context),
    notes: ['One for each eye; count the eyes.', ...others], warnings: size.missing.map((joint) => `The ${words(joint)} pin was not measured; its bush is taken to be of the same size.`),
    unknowns: longest === undefined ? [] : JOINTS.filter((joint) => !widths.has(joint)).map((joint) => unknownPlace(`toggle-pins.eye-width@${joint}`)),
  }, context);
}

function pinSize(values: Values, context: MakingContext): PinSize | undefined {
  const reader = new FigureReader(values);
  const made = JOINTS.flatMap((joint) => reader.find(`toggle-pins.diameter@${joint}#as-made`) ?? []).concat(reader.find('toggle-pins.diameter#as-made') ?? []);
  const read = JOINTS.flatMap((joint) => {
    const pin = reader.find(`toggle-pins.diameter@${joint}`);
    return pin === undefined ? [] : [{ joint, pin, play: reader.find(`toggle-pins.play@${joint}`) }];
  });
  const missing = JOINTS.filter((joint) => !read.some((one) => one.joint === joint) && reader.find(`toggle-pins.diameter@${joint}#as-made`) === undefined);
  const [largest] = [...made].sort((a, b) => b.quantity.value - a.quantity.value);
  if (largest !== undefined) return { diameter: largest, why: 'as made; worn holes are bushed back to it', missing: made.length + read.length >= JOINTS.length ? [] : missing };
  const holes = read.map(({ pin, play }) => ({ size: pin.quantity.value + (play?.quantity.value ?? 0), from: [...pin.from, ...(play?.from ?? [])] })).sort((a, b) => b.size - a.size);
  const [widest] = holes;
  if (widest === undefined) return undefined;
  return { diameter: chosen(reamerOver(widest.size, context), 'length', 'derived', widest.from), why: 'the next reamer over the widest worn hole, pin and play together, and 0.010 in (0.25 mm) to clean up', missing };
}

/** Readings of a place at each joint, as made before as found. */
function jointFigures(values: Values, place: string): ReadonlyMap<Joint, Figure> {
  const reader = new FigureReader(values);
  return new Map(JOINTS.flatMap((joint): [Joint, Figure][] => {
    const found = reader.find(`${place}@${joint}#as-made|${place}@${joint}`);
    return found === undefined ? [] : [[joint, found]];
  }));
}

const greatest = (figures: ReadonlyMap<Joint, Figure>): Figure | undefined => [...figures.values()].sort((a, b) => b.quantity.value - a.quantity.value)[0];
/** True where all agree within a sixty-fourth. */
const sameAll = (figures: ReadonlyMap<Joint, Figure>): boolean => {
  const sizes = [...figures.values()].map((one) => one.quantity.value);
  return sizes.length === 0 || Math.max(...sizes) - Math.min(...sizes) <= SIXTY_FOURTH * 1.001;
};

const sizeUnknowns = (size: PinSize): readonly Unknown[] => size.missing.map((joint) => unknownPlace(`toggle-pins.diameter@${joint}`));

const noPin = (kind: PartKind, title: string, values: Values): Making => {
  const reader = new FigureReader(values);
  for (const joint of JOINTS) reader.need(`toggle-pins.diameter@${joint}`);
  return reader.notKnown(kind, title);
};
