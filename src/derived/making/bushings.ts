import type { Known } from '../survey/index.ts';
import { bushing } from './bushing.ts';
import { crankPinSize } from './crank-pin-size.ts';
import { FigureReader, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { clearanceNote } from './fit-words.ts';
import { jointPinSize, keyOf, type JointPinKind } from './joint-pins.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making } from './part-to-make.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

/** Bore of a bush for a pin that is there: its size and the clearance of practice. */
function boreTo(pin: Figure, least: string, most: string, why: string) {
  const gap = shopFigure(least);
  const figure = { ...reckon('length', [pin, gap], (diameter, room) => diameter! + room!), estimate: pin.estimate };
  return { boreFigure: figure, bore: sized('bore', 'bore, after pressing in', figure, { plus: shopNumber(most) - gap.quantity.value, minus: 0 }, why) };
}

const OUT_OF_ROUND = shopNumber('pin-clearance-least') / 2;
const oval = (round: Figure | undefined, pin: string): readonly string[] => (round !== undefined && round.quantity.value > OUT_OF_ROUND ? [`The ${pin} is out of round: turn or grind it first, then bore the bush to what is left.`] : []);

/** The new pin that a bush is bored to, where one is made at the same time. */
const freshPin = (kind: JointPinKind, values: Values, context: MakingContext): Figure | undefined => (context.alsoMade.has(kind) ? jointPinSize(kind, values, context)?.diameter : undefined);

/** A hole that is still to be read with the old bush out. */
const unread = (reader: FigureReader, key: string): readonly string[] => (reader.find(key) === undefined ? [key] : []);

/** Bush for the big end of the rod: to a new pin with a running fit where one is made as well, else to the pin as it is with 0.003 to 0.006 in of room. */
export function makeRodBushing(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const title = 'Bushing of the rod’s big end';
  const reader = new FigureReader(values);
  const common = {
    kind: 'rod-bushing', title, quantity: 1, hole: reader.find('connecting-rod.eye-bore'), holesUnread: unread(reader, 'connecting-rod.eye-bore'), eye: reader.find('connecting-rod.eye-outside'), eyeKey: 'connecting-rod.eye-outside',
    length: reader.find('connecting-rod.eye-width#as-made|connecting-rod.eye-width'), lengthKey: 'connecting-rod.eye-width', lengthWhy: 'width of the big end; faced flush with it', wall: shopNumber('rod-bush-wall'), overFillet: true,
  } as const;
  const fresh = context.alsoMade.has('crank-pin') ? crankPinSize(values, known, context) : undefined;
  if (fresh !== undefined) {
    const { fit, diameter } = fresh;
    const bore = sized('bore', 'bore, after pressing in', diameter, { plus: fit.fit.hole.upper, minus: -fit.fit.hole.lower }, 'the new crank pin, with a running fit', fit.hole);
    return bushing({ ...common, bore, boreFigure: diameter, clearance: clearanceNote(fit, context), notes: ['Bored to the new crank pin; finish the bore with the pin at hand.'], warnings: [] }, context);
  }
  const pin = reader.need('crank.pin-diameter');
  if (pin === undefined) return reader.notKnown('rod-bushing', title);
  return bushing({
    ...common, ...boreTo(pin, 'rod-clearance-least', 'rod-clearance-most', 'crank pin as measured, finished round, and 0.003 to 0.006 in (0.08 to 0.15 mm) of clearance'), clearance: 'Clearance on the crank pin 0.003 to 0.006 in (0.08 to 0.15 mm).',
    notes: ['Bore to the pin as it is, not to a nominal size; try the chamfer over the fillet of its collar.'], warnings: oval(reader.find('crank.pin-out-of-round'), 'crank pin'),
  }, context);
}

/** Bush of the crosshead, bored to its pin as it is with the clearance of a linkage pin, 0.002 to 0.005 in. */
export function makeCrossheadBushing(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Bushing of the crosshead';
  const reader = new FigureReader(values);
  const fresh = freshPin('crosshead-pin', values, context);
  const pin = fresh ?? reader.need('crosshead.pin-diameter');
  if (pin === undefined) return reader.notKnown('crosshead-bushing', title);
  return bushing({
    kind: 'crosshead-bushing', title, quantity: 1, ...boreTo(pin, 'pin-clearance-least', 'pin-clearance-most', `${fresh === undefined ? 'crosshead pin as measured, finished round,' : 'the new crosshead pin'} and 0.002 to 0.005 in (0.05 to 0.13 mm) of clearance`),
    hole: reader.find('crosshead.eye-bore'), holesUnread: unread(reader, 'crosshead.eye-bore'), eye: reader.find('crosshead.eye-outside'), eyeKey: 'crosshead.eye-outside', length: reader.find('crosshead.eye-width'), lengthKey: 'crosshead.eye-width', lengthWhy: 'width of the eye; faced flush with it',
    clearance: 'Clearance on the pin 0.002 to 0.005 in (0.05 to 0.13 mm).', notes: ['Mark which way round the crosshead’s ears stand before it is taken off.', fresh === undefined ? 'Bore to the pin as it is, square to the rod.' : 'Bored to the new pin, square to the rod.'], warnings: fresh === undefined ? oval(reader.find('crosshead.pin-out-of-round'), 'crosshead pin') : [],
  }, context);
}

/** Bush of the clutch pulley, bored to the shaft that is there with the 0.010 to 0.015 in of play that lets it go. */
export function makeClutchPulleyBushing(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const title = 'Bushing of the clutch pulley';
  const reader = new FigureReader(values);
  const under = reader.find('clutch-pulley.shaft-diameter');
  const shaft = under ?? reader.need('main-shaft.diameter@rear|main-shaft.diameter@front|main-shaft.diameter');
  if (shaft === undefined) return reader.notKnown('clutch-pulley-bushing', title);
  const at = under === undefined ? 'shaft at its bearing' : 'shaft under the pulley';
  return bushing({
    kind: 'clutch-pulley-bushing', title, quantity: 1, ...boreTo(shaft, 'clutch-play-least', 'clutch-play-most', `${at} and 0.010 to 0.015 in (0.25 to 0.38 mm) of play, which lets the pulley free itself`),
    runsOn: 'shaft', hole: reader.find('clutch-pulley.hub-bore'), holesUnread: unread(reader, 'clutch-pulley.hub-bore'), eye: reader.find('clutch-pulley.hub-outside'), eyeKey: 'clutch-pulley.hub-outside', length: reader.find('clutch-pulley.hub-length#as-made|clutch-pulley.hub-length'), lengthKey: 'clutch-pulley.hub-length', lengthWhy: 'length of the hub; faced flush with it, the end float of the pulley stays as it is',
    clearance: 'Play on the shaft 0.010 to 0.015 in (0.25 to 0.38 mm), total.', unknowns: under === undefined ? [unknownPlace('clutch-pulley.shaft-diameter')] : [], notes: ['Bore to the shaft as it is under the pulley.'],
    warnings: under === undefined ? ['The shaft was read at a bearing, not under the pulley.'] : [], cautions: ['isolate', 'pinch', 'block-ram'],
  }, context);
}

/** Bushes of a bow: for both rolled eyes, and for the clip's pivot. */
export const makeBowEyeBushings = (values: Values, _known: Known, context: MakingContext = ALONE): Making => jointBushing('bow-eye-bushing', values, context);
export const makeBowClipBushing = (values: Values, _known: Known, context: MakingContext = ALONE): Making => jointBushing('bow-clip-bushing', values, context);
/** Bushes of the helve's pivot, left and right. */
export const makeTreadleBushings = (values: Values, _known: Known, context: MakingContext = ALONE): Making => jointBushing('treadle-bushing', values, context);
/** Bushes of the helve’s pivot, left and right. */
export const makeHelveBushings = (values: Values, _known: Known, context: MakingContext = ALONE): Making => jointBushing('helve-bushing', values, context);

/** A joint with a bush at one or two places, both made to the larger pin. */
interface Joint {
  readonly title: string;
  readonly ends: readonly string[];
  readonly pin: string;
  /** The pin that may be made new with it. */
  readonly fresh: JointPinKind;
  /** How many are alike where one reading stands for all. */
  readonly quantity?: number;
  readonly width: string;
  /** Bore of the eye with the old bush out. */
  readonly bore: string;
  /** True where the eye is part of a leaf and is only cleaned up; else it is bored to the bush. */
  readonly asItIs?: true;
  readonly runsOn?: string;
  readonly outside?: string;
  readonly clearance: readonly [least: string, most: string, words: string, note: string];
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

const LINKAGE = ['pin-clearance-least', 'pin-clearance-most', '0.002 to 0.005 in (0.05 to 0.13 mm)', 'Clearance on the pin 0.002 to 0.005 in (0.05 to 0.13 mm).'] as const;
const JOINTS: Readonly<Record<'bow-eye-bushing' | 'bow-clip-bushing' | 'helve-bushing' | 'treadle-bushing', Joint>> = {
  'bow-eye-bushing': {
    title: 'Bushing of the bow’s eyes', ends: ['left', 'right'], pin: 'bow-spring.pin-diameter', fresh: 'bow-eye-pin', width: 'bow-spring.eye-width', bore: 'bow-spring.eye-bore', asItIs: true, clearance: LINKAGE,
    notes: ['The eye is reamed just clean and no more: it is part of the main leaf. No heat on it.'], cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'],
  },
  'bow-clip-bushing': {
    title: 'Bushing of the bow’s clip pivot', ends: ['middle'], pin: 'bow-spring.pin-diameter', fresh: 'bow-clip-pin', width: 'bow-spring.eye-width', bore: 'bow-spring.eye-bore', outside: 'bow-spring.eye-outside', clearance: LINKAGE, notes: ['Bored square to the rod.'], cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'],
  },
  'helve-bushing': {
    title: 'Bushing of the helve’s pivot', ends: ['left', 'right'], pin: 'helve.pivot-diameter', fresh: 'helve-pin', width: 'helve.pivot-width', bore: 'helve.pivot-bore', runsOn: 'trunnion', outside: 'helve.pivot-outside',
    clearance: ['helve-clearance-least', 'helve-clearance-most', '0.004 to 0.010 in (0.10 to 0.25 mm)', 'Clearance on the trunnion 0.004 to 0.010 in (0.10 to 0.25 mm), from memory: slow, heavily loaded, and oiled by hand.'],
    notes: ['Both bearings bored in one line and level from side to side; the helve hangs square over the anvil before they are fixed.'], cautions: ['isolate', 'block-ram', 'top-heavy'],
  },
  'treadle-bushing': {
    title: 'Bushing of the treadle', ends: [''], quantity: 2, pin: 'treadle.pivot-diameter', fresh: 'treadle-pin', width: 'treadle.eye-width', bore: 'treadle.eye-bore', outside: 'treadle.eye-outside', clearance: LINKAGE, notes: ['One for each side; count them. Hard plastic (nylon, acetal) does as well here; its bore then 0.005 in (0.13 mm) larger.'], cautions: ['isolate', 'block-ram'],
  },
};

function jointBushing(kind: keyof typeof JOINTS, values: Values, context: MakingContext): Making {
  const joint = JOINTS[kind];
  const reader = new FigureReader(values);
  const each = (place: string) => joint.ends.map((end) => ({ end, figure: reader.find(keyOf(place, end)) }));
  const pins = each(joint.pin);
  const there = pins.flatMap(({ end, figure }) => (figure === undefined ? [] : [{ end, figure }])).sort((a, b) => b.figure.quantity.value - a.figure.quantity.value);
  const [largest] = there;
  if (largest === undefined) {
    for (const { end } of pins) reader.need(keyOf(joint.pin, end));
    return reader.notKnown(kind, joint.title);
  }
  const [least, most, words, note] = joint.clearance;
  const fresh = freshPin(joint.fresh, values, context);
  const smallest = there[there.length - 1]!;
  const apart = largest.figure.quantity.value - smallest.figure.quantity.value;
  // Old pins that differ by more than the clearance have a bush each: same outside, another bore.
  const odd = fresh === undefined && apart > shopNumber(most) - shopNumber(least);
  const missing = pins.filter(({ figure }) => figure === undefined);
  const holes = each(joint.bore).flatMap(({ end, figure }) => (figure === undefined ? [] : [{ end, figure }])).sort((a, b) => b.figure.quantity.value - a.figure.quantity.value);
  const widest = holes[0]?.figure;
  // Where both holes were read each bush is turned to its own; drawn is the one whose bore is drawn, else the larger.
  const shown = (odd ? holes.find(({ end }) => end === largest.end) : undefined) ?? holes[0];
  const other = holes.find((one) => one !== shown);
  const ownHole = joint.asItIs === true || shown === undefined || other === undefined ? { hole: widest } : { hole: shown.figure, pair: { end: shown.end, other: other.end, hole: other.figure } };
  const eyes = joint.outside === undefined ? [] : each(joint.outside).flatMap(({ figure }) => figure ?? []);
  const thinnest = [...eyes].sort((a, b) => a.quantity.value - b.quantity.value)[0];
  const widths = each(joint.width);
  const longest = widths.flatMap(({ figure }) => figure ?? []).sort((a, b) => b.quantity.value - a.quantity.value)[0];
  const firstUnread = (place: string): string => keyOf(place, each(place).find(({ figure }) => figure === undefined)?.end ?? joint.ends[0]!);
  const why = (pin: string): string => `${pin} and ${words} of clearance`;
  const bores = boreTo(fresh ?? largest.figure, least, most, why(fresh !== undefined ? 'the new pin' : odd ? `the ${largest.end} pin as measured, finished round,` : `${joint.ends.length > 1 ? 'the larger pin' : 'pin'} as measured, finished round,`));
  return bushing({
    kind, title: joint.title, quantity: joint.quantity ?? joint.ends.length, boreFigure: bores.boreFigure, bore: odd ? { ...bores.bore, title: `${bores.bore.title}, ${largest.end}` } : bores.bore,
    ...(odd ? { more: [{ ...boreTo(smallest.figure, least, most, why(`the ${smallest.end} pin as measured, finished round,`)).bore, name: `bore-${smallest.end}`, title: `bore, after pressing in, ${smallest.end}` }] } : {}),
    ...(joint.asItIs === true ? (widest === undefined ? {} : { seat: widest }) : ownHole), holesUnread: each(joint.bore).flatMap(({ end, figure }) => (figure === undefined ? [keyOf(joint.bore, end)] : [])), ...(joint.runsOn === undefined ? {} : { runsOn: joint.runsOn }), eye: thinnest, ...(joint.outside === undefined ? {} : { eyeKey: firstUnread(joint.outside) }), length: longest, lengthKey: firstUnread(joint.width), lengthWhy: `width of the ${joint.ends.length > 1 ? 'wider ' : ''}eye; faced flush with it`,
    ...(joint.asItIs === true ? { oiledAtEnd: true } : {}), clearance: note, notes: joint.notes, unknowns: [...missing.map(({ end }) => unknownPlace(keyOf(joint.pin, end)))], cautions: joint.cautions,
    warnings: [
      ...missing.map(({ end }) => `The ${end} pin was not measured; its bush is taken to be of the same size.`),
      ...(odd ? [`The two pins differ by more than the clearance: one bush is bored for the ${largest.end} pin, as drawn, the other for the ${smallest.end} one, as in the table.`] : []),
    ],
  }, context);
}
