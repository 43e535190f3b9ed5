import { SPLIT_PINS, STOCK_DENSITIES } from '../../knowledge/index.ts';
import { shaftLimits } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { outsideTable } from './bushing.ts';
import { chosen, FigureReader, plusMinus, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { splitPinWords, washerWords } from './pin-hardware.ts';
import { pinShape } from './pin-shape.ts';
import { strapPlace } from './strap-place.ts';
import { nextReamer, reamerOver } from './reamer.ts';
import { possible } from './possible.ts';
import { shopNumber } from './shop-figures.ts';

export type JointPinKind = 'bow-eye-pin' | 'bow-clip-pin' | 'helve-pin' | 'crosshead-pin' | 'treadle-pin';

/** A plain pin that a joint turns on, at one place or at two. */
interface PinJoint {
  readonly title: string;
  /** Where on the part; an empty word for a place that there is only once. */
  readonly ends: readonly string[];
  readonly diameter: string;
  readonly length: string;
  /** How many are alike where one reading stands for all. */
  readonly quantity: number;
  /** True where it sits in something that is knocked with it, and that a reamer must clean up; a bow’s straps are drilled to the new pin. */
  readonly seated: boolean;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

const LINKAGE_CAUTIONS = ['isolate', 'block-ram', 'spring-unload'];
const JOINTS: Readonly<Record<JointPinKind, PinJoint>> = {
  'bow-eye-pin': { title: 'Pin of the bow’s eyes', ends: ['left', 'right'], diameter: 'bow-spring.pin-diameter', length: 'bow-spring.pin-length', quantity: 2, seated: false, notes: ['Through the rolled eye and the straps of each end.'], cautions: [...LINKAGE_CAUTIONS, 'stand-aside'] },
  'bow-clip-pin': { title: 'Pin of the bow’s clip pivot', ends: ['middle'], diameter: 'bow-spring.pin-diameter', length: 'bow-spring.pin-length', quantity: 1, seated: true, notes: ['Through the clip and the end of the rod.'], cautions: [...LINKAGE_CAUTIONS, 'stand-aside'] },
  'helve-pin': {
    title: 'Pivot pin of the helve (trunnion)', ends: ['left', 'right'], diameter: 'helve.pivot-diameter', length: 'helve.pin-length', quantity: 2, seated: true,
    notes: ['Only where the trunnions are loose pins. Trunnions that are cast or shrunk on the beam’s saddle are turned clean and bushed to what is left: read them again then.'], cautions: ['isolate', 'block-ram', 'top-heavy'],
  },
  'crosshead-pin': { title: 'Pin of the crosshead', ends: [''], diameter: 'crosshead.pin-diameter', length: 'crosshead.pin-length', quantity: 1, seated: true, notes: [], cautions: LINKAGE_CAUTIONS },
  'treadle-pin': { title: 'Pivot pin of the treadle', ends: [''], diameter: 'treadle.pivot-diameter', length: 'treadle.pin-length', quantity: 2, seated: true, notes: ['One for each side; count them. A bolt of this diameter with a plain shank does as well.'], cautions: ['isolate', 'block-ram'] },
};
const SIXTY_FOURTH = shopNumber('plate-room');

/** Key of a reading at one end of a joint; an empty end where there is only one. */
export const keyOf = (place: string, end: string): string => (end === '' ? place : `${place}@${end}`);

interface PinSize {
  readonly diameter: Figure;
  readonly why: string;
  /** Ends that were not read. */
  readonly missing: readonly string[];
  /** What was read where, largest first. */
  readonly read: readonly { readonly end: string; readonly figure: Figure }[];
}

/**
 * Diameter of the new pins of a joint, one for both ends: as made where that is known, else the next reamer over the larger of the worn ones.
 * It is chosen, so that no doubt of a worn pin stays in it.
 * @returns undefined where no pin of the joint was measured
 */
export function jointPinSize(kind: JointPinKind, values: Values, context: MakingContext): PinSize | undefined {
  const { ends, diameter, seated } = JOINTS[kind];
  const reader = new FigureReader(values);
  const at = (suffix: string) => ends.flatMap((end) => {
    const figure = reader.find(`${keyOf(diameter, end)}${suffix}`);
    return figure === undefined ? [] : [{ end, figure }];
  }).sort((a, b) => b.figure.quantity.value - a.figure.quantity.value);
  const read = at('');
  const [made] = at('#as-made');
  const [worn] = read;
  const basis = made ?? worn;
  if (basis === undefined) return undefined;
  const size = made === undefined ? (seated ? reamerOver : nextReamer)(basis.figure.quantity.value, context) : basis.figure.quantity.value;
  const from = made === undefined ? read.flatMap((one) => one.figure.from) : basis.figure.from;
  const larger = ends.length > 1 ? 'the larger of the old pins' : 'the old pin';
  return {
    diameter: { ...chosen(size, 'length', 'derived', from), estimate: basis.figure.estimate }, why: made === undefined ? seated ? `the next reamer over ${larger} and 0.010 in (0.25 mm) to clean up; bush and seat are finished to it` : `the next reamer over ${larger}; bush and straps are finished to it` : 'as made; bush and seat are finished to it',
    missing: ends.filter((end) => !read.some((one) => one.end === end)), read,
  };
}

/**
 * New pins of a joint: one diameter, a hole for a split pin at each end, each as long as its old one.
 * @returns the part; not known where no pin of the joint was measured; cannot be outside the table of fits, or where it is too short for two split pins
 */
function makeJointPin(kind: JointPinKind, values: Values, known: Known, context: MakingContext): Making {
  const joint = JOINTS[kind];
  const reader = new FigureReader(values);
  const size = jointPinSize(kind, values, context);
  if (size === undefined) {
    for (const end of joint.ends) reader.need(keyOf(joint.diameter, end));
    return reader.notKnown(kind, joint.title);
  }
  const d = size.diameter.quantity.value;
  const ground = shaftLimits(d, 'h6');
  const split = SPLIT_PINS.rows.find((row) => d <= row.upTo + 1e-9);
  if (ground.state !== 'known' || split === undefined) return outsideTable(kind, joint.title, size.diameter, context);
  const lengths = joint.ends.flatMap((end) => {
    const figure = reader.find(keyOf(joint.length, end));
    return figure === undefined ? [] : [{ end, figure }];
  }).sort((a, b) => b.figure.quantity.value - a.figure.quantity.value);
  const [longest] = lengths;
  const shortest = lengths[lengths.length - 1];
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const least = 2 * (split.fromEnd + split.hole) + 2 * shopNumber('washer');
  if (shortest !== undefined && shortest.figure.quantity.value <= least) {
    return { state: 'cannot-be', kind, title: joint.title, because: `A pin needs a washer and a split pin at each end and something between them: its length is wrong, or its diameter (${[...shortest.figure.from, ...size.diameter.from].join(', ')}).`, problem: `The pin is shorter than what keeps it in; above ${print(least)} is allowed: ${print(shortest.figure.quantity.value)}` };
  }
  // On an eye the straps take the room, and what is left decides the washers.
  const washer = (kind === 'bow-eye-pin' ? strapPlace(reader, known, d, context.system)?.washer : undefined) ?? shopNumber('washer');
  const alike = longest === undefined || shortest === undefined || longest.figure.quantity.value - shortest.figure.quantity.value <= SIXTY_FOURTH * 1.001;
  const chamfer = shopNumber('chamfer');
  const dimensions: MakingDimension[] = [
    sized('diameter', 'diameter', size.diameter, { plus: ground.upper, minus: -ground.lower }, size.why, 'h6'),
    ...(longest === undefined ? [] : alike ? [sized('length', 'length over all', longest.figure, { plus: 0, minus: SIXTY_FOURTH }, 'as the old pin')] : lengths.map(({ end, figure }, index) => sized(index === 0 ? 'length' : `length-${end}`, `length over all, ${end}`, figure, { plus: 0, minus: SIXTY_FOURTH }, 'as the old pin'))),
    sized('cross-hole', 'hole for the split pin, both ends', chosen(split.hole, 'length', SPLIT_PINS.source, size.diameter.from), { plus: SIXTY_FOURTH, minus: 0 }, 'by the diameter of the pin, ISO 2340'),
    sized('from-end', 'hole from the end', chosen(split.fromEnd, 'length', SPLIT_PINS.source, size.diameter.from), plusMinus(SIXTY_FOURTH), 'by the diameter of the pin, ISO 2340'),
    sized('washer', 'washers, both ends, thick', chosen(washer, 'length', 'from-memory'), plusMinus(0), washer < shopNumber('washer') ? 'the thickest that go in beside eye and straps; bought, not made' : 'bought, not made'),
    sized('chamfer', 'chamfer, both ends', chosen(chamfer, 'length', 'common-practice'), { plus: SIXTY_FOURTH, minus: 0 }, 'leads the pin through its bush'),
  ];
  const old = size.read.length < 2 ? [] : [`One size for both, so that they can change places. The old ones were ${size.read.map(({ end, figure }) => `${end} ${print(figure.quantity.value)}`).join(', ')}.`];
  return possible({
    state: 'to-make', kind, id: kind, title: joint.title, quantity: joint.quantity, material: 'Case-hardening steel 8620 (20NiCrMo2), ground; or alloy steel 4140 (42CrMo4)', hardness: '8620: case 0.03 to 0.04 in (0.8 to 1 mm) deep, 55 to 60 HRC, core tough. 4140: 40 to 45 HRC all through',
    ...(longest === undefined ? {} : { mass: (Math.PI / 4) * d ** 2 * longest.figure.quantity.value * STOCK_DENSITIES.steel }), roughness: 3.2e-6, dimensions,
    shape: pinShape({ diameter: d, length: longest?.figure.quantity.value, chamfer, hole: split.hole, fromEnd: split.fromEnd, several: !alike }),
    unknowns: joint.ends.flatMap((end) => [...(size.missing.includes(end) ? [unknownPlace(keyOf(joint.diameter, end))] : []), ...(lengths.some((one) => one.end === end) ? [] : [unknownPlace(keyOf(joint.length, end))])]), disputes: [],
    notes: [
      ...old, ...joint.notes, ...(joint.seated ? ['Where the pin does not turn: ream the hole first, read it, then grind the pin to it; where the reamer does not clean the hole up, take the next. The bush has the clearance: bore it to the pin.'] : ['The bush has the clearance: bore it to the pin.']),
      'Both cross holes in one plane, drilled before hardening; ends kept soft for them. Washer and split pin at each end: a pin must not walk out. Where a head, a set screw or a flat keeps the old one in, make that instead.',
      `Ground after heat treatment. ${kind === 'bow-eye-pin' ? 'Left solid: oil goes in at the end of the bush, beside the eye.' : 'Left solid: oil comes through the hole in eye and bush.'}`,
    ],
    besides: [washerWords(d, washer, 2 * joint.quantity, context.system), splitPinWords(split.hole, d, 2 * joint.quantity, context.system)],
    cautions: joint.cautions, sources: [...new Set(['iso-286', 'iso-2340', 'iso-21920', 'common-practice', ...size.diameter.sources])],
    warnings: size.missing.map((end) => `The ${end} pin was not measured; it is taken to be of the same size.`),
  }, context.system);
}

export const makeBowEyePins = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeJointPin('bow-eye-pin', values, known, context);
export const makeBowClipPin = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeJointPin('bow-clip-pin', values, known, context);
export const makeHelvePins = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeJointPin('helve-pin', values, known, context);
export const makeCrossheadPin = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeJointPin('crosshead-pin', values, known, context);
export const makeTreadlePins = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeJointPin('treadle-pin', values, known, context);
