import { shaftLimits } from '../../methods/elements/index.ts';
import { NUT_LOCKS, SPLIT_PINS, STOCK_DENSITIES } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { outsideTable } from './bushing.ts';
import { crankPinSize } from './crank-pin-size.ts';
import { crankPinShape } from './crank-pin-shape.ts';
import { pinTail } from './crank-pin-tail.ts';
import { chosen, estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { clearanceNote } from './fit-words.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { splitPinWords, washerWords } from './pin-hardware.ts';
import { possible } from './possible.ts';
import { reamerOver } from './reamer.ts';
import { majorLimits2A, majorLimits6g } from './thread-limits.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';
import { fineLength } from './shop-units.ts';

const KIND = 'crank-pin';
const TITLE = 'Crank pin';
const SIXTY_FOURTH = shopNumber('plate-room');
const TRUE_WITHIN = shopNumber('pin-clearance-least') / 2;

/**
 * A crank pin: thread and nut behind the plate, a shank that is tight in it, a collar, the length that the rod runs on, a split pin in front.
 * @returns the part; not known without pin, shank, plate and the rod's width; cannot be where the collar holds nothing or the rod is wider
 * than the pin is long
 */
export function makeCrankPin(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  reader.need('crank.pin-diameter#as-made|crank.pin-diameter');
  const shankRead = reader.need('crank.pin-shank#as-made|crank.pin-shank');
  const plate = reader.need('crank.plate-thickness');
  const rod = reader.find('connecting-rod.eye-width#as-made|connecting-rod.eye-width');
  const run = reader.find('crank.pin-length#as-made|crank.pin-length') ?? (rod === undefined ? reader.need('crank.pin-length') : { ...reckon('length', [rod, shopFigure('rod-end-play')], (width, play) => width! + play!), estimate: rod.estimate });
  if (shankRead === undefined || plate === undefined || run === undefined || reader.missing.length > 0) return reader.notKnown(KIND, TITLE);
  const size = crankPinSize(values, known, context);
  const named = (figure: Figure): string => figure.from.join(', ');
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  const split = SPLIT_PINS.rows.find((row) => size !== undefined && size.diameter.quantity.value <= row.upTo + 1e-9);
  if (size === undefined || split === undefined) return outsideTable(KIND, TITLE, reader.find('crank.pin-diameter#as-made|crank.pin-diameter') ?? shankRead, context);
  const play = reader.find('crank.pin-play');
  const shankAsMade = reader.find('crank.pin-shank#as-made') !== undefined && (play === undefined || play.quantity.value <= 0);
  const shankSize = shankAsMade ? shankRead.quantity.value : reamerOver(shankRead.quantity.value + (play?.quantity.value ?? 0), context);
  const shank = chosen(shankSize, 'length', 'derived', [...shankRead.from, ...(play?.from ?? [])]);
  const tight = shaftLimits(shankSize, 'k6');
  if (tight.state !== 'known') return outsideTable(KIND, TITLE, shank, context);
  const d = size.diameter.quantity.value;
  const { fillet, bore: mouth } = size.edges;
  const collarRead = reader.find('crank.pin-collar#as-made|crank.pin-collar');
  const collar: Figure = collarRead ?? { ...reckon('length', [size.diameter, shank], (journal, seat) => 1.3 * Math.max(journal!, seat!)), estimate: true };
  if (collar.quantity.value <= Math.max(d, shankSize) + 2 * mouth) {
    return cannot(`The collar bears on the plate on one side and on the rod on the other; it must stand out over both and over the chamfers at their mouths: one of the readings is wrong (${named(collar)}, ${[...size.diameter.from, ...shank.from].join(', ')}).`, `The collar is no larger than the pin; above ${print(Math.max(d, shankSize) + 2 * mouth)} is allowed: ${print(collar.quantity.value)}`);
  }
  if (rod !== undefined && rod.quantity.value >= run.quantity.value + 2 * Math.hypot(rod.quantity.uncertainty, run.quantity.uncertainty)) {
    return cannot(`The rod would not go on its pin: one of the readings is wrong (${named(rod)}, ${named(run)}).`, `The rod’s big end is wider than the pin is long; below ${print(run.quantity.value)} is allowed: ${print(rod.quantity.value)}`);
  }
  const thread = reader.find('crank.pin-thread#as-made|crank.pin-thread');
  const pitch = reader.find('crank.pin-thread-pitch#as-made|crank.pin-thread-pitch');
  if (thread !== undefined && thread.quantity.value > shankSize + 2 * thread.quantity.uncertainty) {
    return cannot(`A thread thicker than the shank does not go through the plate: one of the readings is wrong (${named(thread)}, ${named(shank)}).`, `The thread is thicker than the shank; up to ${print(shankSize)} is allowed: ${print(thread.quantity.value)}`);
  }
  const thickRead = reader.find('crank.pin-collar-thickness#as-made|crank.pin-collar-thickness');
  const thick = thickRead ?? shopFigure('collar-thickness');
  const shankLength = { ...reckon('length', [plate, shopFigure('pin-ahead-of-plate')], (through, back) => through! - back!), estimate: plate.estimate };
  const inch = inchThread(pitch?.quantity.value, context);
  const threadSize = thread === undefined ? undefined : nominalThread(thread.quantity.value, inch);
  const crests = threadSize === undefined || pitch === undefined ? undefined : inch ? majorLimits2A(threadSize, INCH / Math.round((INCH / pitch.quantity.value) * 2) * 2) : majorLimits6g(pitch.quantity.value);
  const fine = (length: number): string => fineLength(length, context.system);
  const lock = pinTail(chosen(threadSize ?? shankSize, 'length', 'derived', thread?.from ?? shank.from), pitch, inch);
  const tail = lock.length;
  const behind = reader.find('crank.pin-room');
  if (behind !== undefined && behind.quantity.value < lock.behind) {
    return cannot(`Washer, slotted nut and the end of the pin would strike what stands behind the plate (${named(behind)}): a thin nut with its lock, or a pin held another way, is for a machinist who sees it.`, `There is too little room behind the plate; above ${print(lock.behind)} is allowed: ${print(behind.quantity.value)}`);
  }
  const toHole = { ...reckon('length', [run, shopFigure('washer')], (along, washer) => along! + washer! + split.hole / 2), estimate: run.estimate };
  const hand = known.looks['crank.thread-hand']?.answer;
  const endChamfer = Math.min(shopNumber('chamfer'), 0.2 * Math.min(d, threadSize ?? shankSize));
  const dimensions: MakingDimension[] = [
    sized('journal', 'journal, diameter', size.diameter, { plus: size.fit.fit.shaft.upper, minus: -size.fit.fit.shaft.lower }, size.why, size.fit.shaft),
    sized('run', 'journal, length', run, plusMinus(0), 'as the old pin, or the rod’s width and 1/32 in (0.8 mm) of end play'),
    sized('shank', 'diameter in the plate', shank, { plus: tight.upper, minus: -tight.lower }, shankAsMade ? 'as made; the plate is reamed H7 to it' : 'the next reamer over the old shank, its play and 0.010 in (0.25 mm) to clean up; the plate is reamed H7 to it', 'k6'),
    sized('shank-length', 'length in the plate', shankLength, { plus: 0, minus: SIXTY_FOURTH }, 'thickness of the plate less 1/32 in (0.8 mm), so that the nut pulls on the collar'),
    sized('collar', 'diameter of the collar', collar, plusMinus(SIXTY_FOURTH), collarRead === undefined ? 'not measured: three tenths over the pin' : 'as the old pin'),
    sized('collar-thickness', 'thickness of the collar', thick, plusMinus(SIXTY_FOURTH), 'keeps the rod where it ran'),
    ...(threadSize === undefined ? [] : [sized('thread', 'thread, over the crests', chosen(threadSize, 'length', 'derived', thread!.from), crests === undefined ? { plus: 0, minus: SIXTY_FOURTH / 2 } : { plus: crests.upper, minus: -crests.lower }, 'as the old pin, to the nearest size that nuts are made in', crests === undefined ? undefined : inch ? '2A' : '6g')]),
    ...(pitch === undefined ? [] : [sized('pitch', 'thread pitch', pitch, plusMinus(0), 'as the old pin')]),
    sized('tail', 'length behind the shank', tail, plusMinus(2 * SIXTY_FOURTH), `1/32 in (0.8 mm) inside the plate, washer ${fine(lock.washer.quantity.value)} and slotted nut ${fine(lock.nut.quantity.value)} at most, and two turns beyond it; ${fine(lock.behind)} stand out behind the plate`),
    ...(threadSize === undefined ? [] : [sized('nut-hole', 'hole for the nut’s pin', chosen(lock.hole, 'length', NUT_LOCKS.source, tail.from), { plus: SIXTY_FOURTH, minus: 0 }, 'by the thread: for a split pin through a slot of the nut, drilled in place')]),
    sized('to-hole', 'collar to the split pin', toHole, { plus: SIXTY_FOURTH, minus: 0 }, 'length that the rod runs on, washer of 1/8 in (3.2 mm) and half of the hole'),
    sized('cross-hole', 'hole for the split pin', chosen(split.hole, 'length', SPLIT_PINS.source, size.diameter.from), { plus: SIXTY_FOURTH, minus: 0 }, 'by the diameter of the pin, ISO 2340'),
    sized('from-end', 'hole from the end', chosen(split.fromEnd, 'length', SPLIT_PINS.source, size.diameter.from), plusMinus(SIXTY_FOURTH), 'by the diameter of the pin, ISO 2340'),
    sized('over-all', 'length over all', { ...reckon('length', [shankLength, tail, thick, toHole], (...along) => along.reduce((sum, one) => sum + one, split.fromEnd)), estimate: false }, plusMinus(0), 'follows from the lengths along the pin'),
    sized('end-chamfer', 'chamfer, both ends', chosen(endChamfer, 'length', 'common-practice'), { plus: SIXTY_FOURTH, minus: 0 }, 'leads the nut on, and the pin through its bush'),
    sized('fillet', 'fillets at the collar', chosen(fillet, 'length', 'from-memory'), { plus: 0, minus: Math.min(SIXTY_FOURTH, fillet / 2) }, 'a sharp corner is where a pin breaks; no larger, or it rides on the chamfers over it'),
    sized('mouth', 'mouths of plate and bush', chosen(mouth, 'length', 'from-memory'), { plus: SIXTY_FOURTH, minus: 0 }, 'more than the fillet: else neither the collar nor the rod seats. In plate and bush, not in the pin'),
  ];
  const call = threadSize === undefined || pitch === undefined ? undefined : threadCall(threadSize, pitch.quantity.value, hand, inch);
  const parts = [[shankSize, shankLength.quantity.value], [collar.quantity.value, thick.quantity.value], [d, toHole.quantity.value + split.fromEnd], [threadSize ?? shankSize, tail.quantity.value]] as const;
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Alloy steel 4140 (42CrMo4), hardened and tempered; or case-hardening steel 8620 (20NiCrMo2)', hardness: '4140: 28 to 32 HRC all through. 8620: journal case 0.03 to 0.04 in (0.8 to 1 mm) deep, 55 to 60 HRC, thread and shank soft',
    mass: parts.reduce((sum, [across, long]) => sum + (Math.PI / 4) * across ** 2 * long, 0) * STOCK_DENSITIES.steel, roughness: 3.2e-6, dimensions,
    shape: crankPinShape({ journal: d, run: run.quantity.value, toHole: toHole.quantity.value, shank: shankSize, shankLength: shankLength.quantity.value, collar: collar.quantity.value, collarThickness: thick.quantity.value, thread: threadSize, tail: tail.quantity.value, nutHole: threadSize === undefined ? undefined : lock.hole, nutHoleAt: lock.toHole.quantity.value, pitch: pitch?.quantity.value, hole: split.hole, fromEnd: split.fromEnd, fillet, endChamfer, trueWithin: TRUE_WITHIN, call }),
    unknowns: [...(thread === undefined ? [unknownPlace('crank.pin-thread')] : []), ...(pitch === undefined ? [unknownPlace('crank.pin-thread-pitch')] : []), ...(hand === undefined ? [{ key: 'crank.thread-hand', what: 'hand of the crank pin’s thread', how: 'Hold the pin upright: a right-hand thread climbs to the right.' }] : []), ...(collarRead === undefined ? [unknownPlace('crank.pin-collar')] : []), ...(thickRead === undefined ? [unknownPlace('crank.pin-collar-thickness')] : []), ...(behind === undefined ? [unknownPlace('crank.pin-room')] : [])],
    disputes: [],
    notes: [
      `Ream the hole first, read it, then grind the shank to it. Plate H7, square to its face, mouth chamfered on the collar’s side; not clean, the next reamer. Shank k6, drawn in by the nut; back of the collar faced in one setting with it. ${clearanceNote(size.fit, context)}`,
      ...(threadSize === undefined ? ['Tail left thick and over length until thread and nut are measured; nut slotted, its split pin drilled through in place.'] : ['Slotted nut drawn home, on to the next slot, never back; then drilled through, as drawn, for its split pin. Thread soft.', 'Thread relief 1/8 in (3 mm) wide at the shank, no deeper than the root.']),
      'Front hole drilled before hardening; washer 1/8 in (3.2 mm). When in, dial along the journal front and top: parallel to the shaft within 0.001 in (0.025 mm).',
      'No oil hole in the pin: oil comes through rod and bush. Ground after heat treatment, fillets polished, centres left in.',
    ],
    besides: [
      ...(call === undefined || threadSize === undefined ? ['slotted nut with washer and split pin: first measure the thread'] : [`slotted nut ${call.replace(/, (?:class 2A|6g)$/u, '')}, 1 piece`, washerWords(threadSize, lock.washer.quantity.value, 1, context.system, 'hard washer under it'), splitPinWords(lock.hole, 1.4 * threadSize, 1, context.system)]),
      washerWords(d, shopNumber('washer'), 1, context.system), splitPinWords(split.hole, d, 1, context.system),
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'pinch'], sources: [...new Set(['iso-286', 'iso-2340', 'iso-1101', 'iso-21920', 'common-practice', 'from-memory', ...size.diameter.sources])],
    warnings: [...estimateWarnings(dimensions)],
  }, context.system);
}

const INCH = SIXTY_FOURTH * 64;
/** Pitches of coarse metric threads, m (ISO 261). */
const METRIC_PITCHES = [1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6].map((millimetres) => millimetres * 1e-3);

/** Whether nuts for this thread are made in turns to the inch: by its pitch, else as the shop works. */
function inchThread(pitch: number | undefined, context: MakingContext): boolean {
  if (pitch === undefined) return context.system === 'inch';
  const turns = INCH / pitch;
  const inch = Math.abs(turns - Math.round(turns * 2) / 2) / turns;
  const metric = Math.min(...METRIC_PITCHES.map((one) => Math.abs(one - pitch) / pitch));
  return inch <= metric;
}

/** Crests are worn and never over size: the next sixteenth of an inch, or millimetre, up, within a hair. */
const nominalThread = (read: number, inch: boolean): number => {
  const step = inch ? INCH / 16 : 1e-3;
  return Math.ceil(read / step - 0.1) * step;
};

/** Call-out of a thread: diameter and turns in an inch, or M, diameter and pitch. */
function threadCall(size: number, pitch: number, hand: string | undefined, inch: boolean): string {
  const side = hand === undefined ? '' : hand === 'left' ? ' LH' : ' RH';
  const bare = (unit: 'in' | 'mm', resolution: number, value: number): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 }, { unit, resolution, doubt: false }).replace(/ (in|mm)$/, '');
  return inch ? `${bare('in', SIXTY_FOURTH, size)}-${Math.round((INCH / pitch) * 2) / 2}${side}, class 2A` : `M${bare('mm', 1e-3, size)} × ${Math.round(pitch * 1e5) / 100}${side}, 6g`;
}
