import { knowledge, STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { dieShape, dieVolume, neckWidth, type DieSizes } from './die-outline.ts';
import { chosen, estimateWarnings, FigureReader, isLoose, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import { seatDepth, seatOverPlate } from './over-plate.ts';
import type { Making, MakingDimension, PartDispute, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
import { fineLength } from './shop-units.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const THOU = shopNumber('pin-clearance-least') / 2;
const SIXTY_FOURTH = shopNumber('plate-room');
const FOOT = 0.3048;

/** The side of the dispute over hardness that a drawing takes: chips of hard dies have killed, and a soft die is only dressed more often. */
const HARDNESS_TAKEN: Pick<PartDispute, 'taken' | 'because'> = { taken: 'otherSide', because: 'taken tough rather than hard, because a hard die can chip and the chips fly; a tough one mushrooms and is dressed.' };

type End = 'upper' | 'lower';
const KINDS = { upper: 'upper-die', lower: 'lower-die' } as const;
const TITLES = { upper: 'Upper die blank (top tool)', lower: 'Lower die blank (bottom tool, pallet)' } as const;

/**
 * Lower die blank: as high as restores the stack with the upper die and the filler plate that will be there, as wide as the seat
 * floor allows beside its key, at least as wide as the pressure on the seat asks for.
 * @returns the part; not known without heights as made and the seat; cannot be where the die would be wider than its seat
 */
export function makeLowerDie(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const print = printer(context);
  const height = heightOf('lower', reader, context);
  const seat = seatOverPlate(reader, context);
  const floor = seat?.width ?? reader.need('seat.width');
  const length = reader.need('seat.length|lower-die.length#as-made|lower-die.length');
  if (height === undefined || floor === undefined || length === undefined) return reader.notKnown(KINDS.lower, TITLES.lower);
  const oldDie = reader.find('lower-die.width');
  const allowed = floor.quantity.value;
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KINDS.lower, title: TITLES.lower, because, problem });
  if (oldDie !== undefined && oldDie.quantity.value > allowed + 2 * Math.hypot(oldDie.quantity.uncertainty, floor.quantity.uncertainty)) {
    return cannot('A die cannot be wider than the seat that it stands in: one of the two readings is wrong.', `The lower die is wider at the seat than the seat floor; up to ${print(allowed)} is allowed: ${print(oldDie.quantity.value)}`);
  }
  const least = leastWidth(reader, length);
  if (least !== undefined && least.quantity.value > allowed) {
    return cannot('The blow asks for a die wider than its seat: the seat wants a steel sow block, or the hammer a lighter blow. The figure is an estimate and rests on the stopping distance of a cold blow.', `The least width of a lower die for this seat is above the seat floor; up to ${print(allowed)} is allowed: ${print(least.quantity.value)}`);
  }
  const angle = reader.find('dovetail.flank-angle@lower|dovetail.flank-angle@lower#as-made');
  const key = sturdyKey(reader, 'lower');
  const width = reckon('length', [floor, key, ...(angle === undefined ? [] : [angle])], (seat, thick, lean = 0) => seat! - thick! / Math.cos(lean));
  if (width.quantity.value <= 0) return cannot('The key leaves no room for a die in this seat.', `The seat floor must be wider than its key; above ${print(key.quantity.value)} is allowed: ${print(allowed)}`);
  const warnings = least !== undefined && least.quantity.value > width.quantity.value
    ? [`Beside its key the widest die for this seat is ${print(width.quantity.value)}, and a cold blow asks for ${print(least.quantity.value)}: nothing but hot work of good thickness, or the seat sinks again.`] : [];
  const sunkUnknown = context.alsoMade.has('filler-plate') || reader.find('seat.sunk') !== undefined ? [] : [unknownPlace('seat.sunk')];
  const sunk = reader.find('stack.filler-plate');
  const bridge = context.alsoMade.has('filler-plate') && !context.floorCut ? ['It stands on the plate and on the floor beside it together: plate and floor are made flush first, tried with blue.'] : [];
  const plate = sunk !== undefined && sunk.quantity.value > 0 ? [`Height counts from the true floor: the filler plate of ${print(sunk.quantity.value)} goes in first. Without it the die must be that much higher.`] : [];
  return die('lower', known, context, reader, { height, width, length, angle, depth: seatDepth(reader, context), key, warnings: [...warnings, ...plate, ...bridge, ...(seat?.warnings ?? [])], unknowns: [...(seat?.open === true ? [unknownPlace('seat.width-over-plate')] : []), ...sunkUnknown], widthWhy: `seat floor less the key${least === undefined ? '' : `; a cold blow asks for ${print(least.quantity.value)} at least, an estimate`}` });
}

/**
 * Upper die blank: as high as restores the stack with the lower die and plate that will be there; foot as the ram's dovetail leaves room
 * for beside its key, else as the old die has it.
 * @returns the part; not known without heights as made and the foot; cannot be where the die is wider than the ram's dovetail
 */
export function makeUpperDie(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const print = printer(context);
  const height = heightOf('upper', reader, context);
  const floor = reader.find('ram.dovetail-width#as-made|ram.dovetail-width');
  const old = reader.find('upper-die.width#as-made|upper-die.width');
  const length = reader.need('ram.dovetail-length#as-made|upper-die.length#as-made|ram.dovetail-length|upper-die.length');
  const any = floor ?? old ?? reader.need('upper-die.width');
  if (height === undefined || any === undefined || length === undefined) return reader.notKnown(KINDS.upper, TITLES.upper);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KINDS.upper, title: TITLES.upper, because, problem });
  if (floor !== undefined && old !== undefined && old.quantity.value > floor.quantity.value + 2 * Math.hypot(old.quantity.uncertainty, floor.quantity.uncertainty)) {
    return cannot(`A die cannot be wider than the dovetail that holds it: one of the two readings is wrong (${floor.from.join(', ')}, ${old.from.join(', ')}).`, `The upper die is wider at its foot than the ram’s dovetail; up to ${print(floor.quantity.value)} is allowed: ${print(old.quantity.value)}`);
  }
  const angle = reader.find('dovetail.flank-angle@upper|dovetail.flank-angle@upper#as-made');
  const key = sturdyKey(reader, 'upper');
  const width = floor === undefined ? any : reckon('length', [floor, key, ...(angle === undefined ? [] : [angle])], (across, thick, lean = 0) => across! - thick! / Math.cos(lean));
  if (width.quantity.value <= 0) return cannot(`The key leaves no room for a die in the ram (${[...any.from, ...key.from].join(', ')}).`, `The ram’s dovetail must be wider than its key; above ${print(key.quantity.value)} is allowed: ${print(any.quantity.value)}`);
  const made = reader.find('upper-die.height#as-made');
  const taller = made !== undefined && height.quantity.value > made.quantity.value + 4 * THOU ? ['Higher than as made, since it also makes good what the lower die has lost: the ram grows heavier and the key sits as before. A new lower die as well keeps both as made.'] : [];
  return die('upper', known, context, reader, {
    height, width, length, angle, depth: reader.find('ram.dovetail-depth|ram.dovetail-depth#as-made'), key,
    warnings: taller, unknowns: floor === undefined ? [unknownPlace('ram.dovetail-width')] : [], widthWhy: floor === undefined ? 'as the die has it at the ram’s dovetail, from flank to flank' : 'floor of the ram’s dovetail less the key',
  });
}

interface DieFigures {
  readonly height: Figure;
  readonly width: Figure;
  readonly length: Figure;
  readonly angle: Figure | undefined;
  readonly depth: Figure | undefined;
  readonly key: Figure;
  readonly warnings: readonly string[];
  readonly unknowns: readonly Unknown[];
  readonly widthWhy: string;
}

function die(end: End, known: Known, context: MakingContext, reader: FigureReader, figures: DieFigures): Making {
  const { angle, depth } = figures;
  const tongue = angle === undefined || depth === undefined ? undefined : { height: reckon('length', [depth, { ...shopFigure('rim-gap'), estimate: false }], (deep, gap) => deep! + gap!), angle };
  const edge = { ...shopFigure('edge-radius'), estimate: false };
  const dovetail = tongue === undefined ? undefined : { height: tongue.height.quantity.value, angle: tongue.angle.quantity.value };
  // A parallel seat has the taper of its key on the die: the foot is narrower where the key is driven in.
  const onDie = tongue !== undefined && known.looks[`keys.taper-flank@${end}`]?.answer === 'die';
  const taper = reader.find(`keys.taper@${end}#as-made|keys.taper@${end}`) ?? shopFigure('key-taper');
  const rise = onDie ? reckon('length', [taper, figures.length, tongue.angle], (perFoot, along, lean) => ((perFoot! / FOOT) * along!) / Math.cos(lean!)) : undefined;
  const side = known.looks[`keys.side@${end}`]?.answer === 'left' ? -1 : 1;
  const narrow = rise === undefined ? figures.width : reckon('length', [figures.width, rise], (middle, more) => middle! - more! / 2);
  const wide = rise === undefined ? undefined : reckon('length', [figures.width, rise], (middle, more) => middle! + more! / 2);
  const neck = neckWidth({ baseWidth: narrow.quantity.value, dovetail });
  const ownFace = reader.find(`${end}-die.face-width`);
  const otherFace = reader.find(`${end === 'lower' ? 'upper' : 'lower'}-die.face-width`);
  // The two faces meet: where one was not read, the other stands for it.
  const face = ownFace ?? (otherFace === undefined ? undefined : { ...otherFace, estimate: true });
  const bodyFigure = face === undefined ? undefined : reckon('length', [face, edge], (flat, radius) => flat! + 2 * radius!);
  const body = bodyFigure === undefined || Math.abs(bodyFigure.quantity.value - neck) < shopNumber('body-step') ? neck : bodyFigure.quantity.value;
  const lost = `as-made total of both dies less the ${end === 'lower' ? 'upper' : 'lower'} die that will be there${groundOff(end === 'lower' ? 'upper' : 'lower', reader, context) === undefined ? '' : ', its face ground by its hollow'}`;
  const exact = sized('height', 'height, foot to face', figures.height, { plus: 10 * THOU, minus: 0 }, `${lost}; a little over, since the first grinding takes it`);
  const hearsay = isLoose(exact);
  const straight = body === neck;
  const leftOn = { ...shopFigure('grind-with-pair'), estimate: false };
  const blank = hearsay ? reckon('length', [figures.height, leftOn], (finished, more) => finished! + more!) : figures.height;
  const print = printer(context);
  const finished = fineLength(figures.height.quantity.value, context.system);
  const dimensions: MakingDimension[] = [
    ...(hearsay ? [
      { ...sized('height', 'height of the blank, foot to face', blank, { plus: 10 * THOU, minus: 0 }, `${lost}, and 1/16 in (1.6 mm) left on; ground to ${finished} with its pair`), fitted: true as const },
      sized('height-ground', 'height when ground with its pair', figures.height, plusMinus(0), lost),
    ] : [exact]),
    sized('base-width', wide === undefined ? 'width of the foot' : 'width of the foot, key end', narrow, { plus: 0, minus: 10 * THOU }, wide === undefined ? figures.widthWhy : `${figures.widthWhy}, at the middle, less half of the key’s taper over the length`),
    ...(wide === undefined ? [] : [sized('far-width', 'width of the foot, far end', wide, { plus: 0, minus: 10 * THOU }, `${figures.widthWhy}, at the middle, and half of the key’s taper over the length`)]),
    sized('length', 'length', figures.length, plusMinus(SIXTY_FOURTH), 'full length of the seat, the way the key is driven'),
    sized('edge-radius', 'edges of the face, all four', edge, plusMinus(2 * SIXTY_FOURTH), 'sharp edges cut the work and chip; 1/16 to 1/8 in (1.6 to 3.2 mm) is practice'),
    ...(bodyFigure === undefined || straight ? tongue === undefined ? [] : [
      sized('neck-width', wide === undefined ? 'neck and body, straight up' : 'neck and body, key end', neckOf(narrow, tongue), plusMinus(0), 'follows from foot, flank and its height'),
      ...(wide === undefined ? [] : [sized('far-neck', 'neck and body, far end', neckOf(wide, tongue), plusMinus(0), 'follows likewise; the keyed side of the body runs with the taper, so that no ledge is left')]),
    ] : [sized('body-width', 'width of the body', bodyFigure, plusMinus(SIXTY_FOURTH), ownFace === undefined ? 'as the face of the other die, with its edges: the two meet' : 'face as found, with its edges')]),
    ...(tongue === undefined ? [] : [
      sized('dovetail-height', straight ? 'height of the flanks' : 'foot to shoulder', tongue.height, { plus: SIXTY_FOURTH, minus: 0 }, 'depth of the seat with room over the rim: nothing of the die may rest on the rim'),
      sized('flank-angle', 'flank from upright, both sides', tongue.angle, plusMinus(0.2 * Math.PI / 180), 'as the seat has it; makers differ'),
    ]),
  ];
  const dispute = knowledge.criteria.find((one) => one.id === `dies.${end}-hardness`)?.dispute;
  const unknowns = [...figures.unknowns, ...(ownFace === undefined ? [unknownPlace(`${end}-die.face-width`)] : []), ...(angle === undefined ? [unknownPlace(`dovetail.flank-angle@${end}`)] : []), ...(depth === undefined ? [unknownPlace(end === 'lower' ? 'seat.depth' : 'ram.dovetail-depth')] : []), ...keyedFlank(end, known, onDie)];
  const shoulder = dovetail?.height ?? 0;
  if (neck <= 2 * edge.quantity.value || body <= 2 * edge.quantity.value) return wrongDie(end, 'Flank angle and depth of the dovetail leave no die over its foot: one of the readings is wrong.', `The body of the die would be narrower than its two rounded edges; above ${print(2 * edge.quantity.value)} is allowed: ${print(Math.min(neck, body))}`);
  if (figures.height.quantity.value <= shoulder + edge.quantity.value) return wrongDie(end, 'The other die and its plate leave no height for this one: heights as made or as read are wrong, or the other die was built up.', `The die would be no higher than its foot; above ${print(shoulder + edge.quantity.value)} is allowed: ${print(figures.height.quantity.value)}`);
  const sizes: DieSizes = { height: blank.quantity.value, baseWidth: narrow.quantity.value, farWidth: wide?.quantity.value, keySide: side, bodyWidth: body, bodyTapers: straight && wide !== undefined, length: figures.length.quantity.value, edge: edge.quantity.value, dovetail, flatWithin: 2 * THOU, parallelWithin: 5 * THOU };
  return possible({
    state: 'to-make', kind: KINDS[end], id: KINDS[end], title: TITLES[end], quantity: 1,
    material: 'Alloy steel 4140 or 4340 (42CrMo4, 34CrNiMo6), bought hardened and tempered',
    hardness: '28 to 32 HRC as bought, no heat treatment afterwards: tough before hard',
    mass: dieVolume(sizes) * STOCK_DENSITIES.steel, roughness: 3.2e-6, dimensions, shape: dieShape(sizes, end === 'lower' ? 'down' : 'up'),
    notes: [
      tongue === undefined ? 'Foot left square: flanks are cut to the seat when angle and depth are measured.' : `Flanks to gauge and blue; key flat on the full flank. Root radius 1/16 in (1.6 mm), no tool marks in it.${onDie ? ` The ${side < 0 ? 'left' : 'right'} flank runs to the taper of the key, seen from where it is driven in, as drawn${straight ? '; the body runs with it, with no ledge' : ''}.` : ''}`,
      'Break the edges of the foot 1/32 in (0.8 mm). Stamp FRONT on the end where the key is driven in: the front view is seen from there.',
      `Hardness: ${HARDNESS_TAKEN.because}${dispute === undefined ? '' : ` The other side: ${dispute[HARDNESS_TAKEN.taken === 'oneSide' ? 'otherSide' : 'oneSide']}`} Who wants that writes it on this sheet, with steel and heat treatment, before the die is cut. No grinding burn either way.`,
      ...(hearsay ? [`Height: ground to ${finished} with its pair, on the grinder, before the key is fitted.`] : []),
      ...(end === 'upper' ? [] : [`Leaves room for a key of ${printer(context)(figures.key.quantity.value)} at the middle of its length.`]),
      ...(end === 'upper' ? ['Its weight is part of the weight of the ram.'] : []),
    ],
    unknowns, disputes: dispute === undefined ? [] : [{ about: 'Hardness of dies', ...dispute, ...HARDNESS_TAKEN }],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail', 'no-cold-blow'],
    sources: [...new Set(['common-practice', 'page-dies', 'iso-1101', 'iso-21920', ...figures.height.sources, ...figures.width.sources])],
    warnings: [
      ...figures.warnings,
      ...(hearsay ? ['Height: 1/16 in (1.6 mm) is left on, since what the dies were made to is known no better. It is ground off on the grinder with its pair, before the key is fitted.'] : []),
      ...(face === undefined ? ['No face was read on either die, so the body goes straight up. Where a wider face is wanted, say it before cutting: the body then stands on a shoulder over the rim.'] : []),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/** Where the flanks meet the body. */
const neckOf = (foot: Figure, tongue: { readonly height: Figure; readonly angle: Figure }): Figure => reckon('length', [foot, tongue.height, tongue.angle], (across, high, lean) => across! - 2 * high! * Math.tan(lean!));

const wrongDie = (end: End, because: string, problem: string): Making => ({ state: 'cannot-be', kind: KINDS[end], title: TITLES[end], because, problem });

/** Which flank is tapered, and on which side the key lies: asked until it was looked at. */
function keyedFlank(end: End, known: Known, onDie: boolean): readonly Unknown[] {
  const flank = known.looks[`keys.taper-flank@${end}`]?.answer;
  return [
    ...(flank === undefined ? [{ key: `keys.taper-flank@${end}`, what: 'which flank carries the taper of the key', how: 'Measure the width of the seat, or of the ram’s dovetail, at both ends: if it is parallel, the keyed flank of the die is cut to the taper of the key.' }] : []),
    ...((onDie || flank === undefined) && known.looks[`keys.side@${end}`] === undefined ? [{ key: `keys.side@${end}`, what: 'on which side of the die the key lies', how: 'Stand where the key is driven in and look along it.' }] : []),
  ];
}

/** Height that restores the stack: as-made total less the other die as it will be, plate included. */
function heightOf(end: End, reader: FigureReader, context: MakingContext): Figure | undefined {
  const other: End = end === 'lower' ? 'upper' : 'lower';
  const mine = reader.need(`${end}-die.height#as-made`);
  const others = reader.need(`${other}-die.height#as-made`);
  if (context.alsoMade.has(KINDS[other])) return mine;
  const now = reader.need(other === 'upper' ? 'stack.upper-net' : 'stack.lower-net');
  if (mine === undefined || others === undefined || now === undefined) return undefined;
  const plate = other === 'lower' && context.alsoMade.has('filler-plate') ? reader.find('stack.filler-plate') : undefined;
  const off = groundOff(other, reader, context);
  const rest = plate === undefined ? now : reckon('length', [now, plate], (there, raised) => there! + raised!);
  return reckon('length', [mine, others, rest, ...(off === undefined ? [] : [off])], (upper, lower, there, ground = 0) => upper! + lower! - there! + ground);
}

/** What a die that stays loses when its face is ground, its hollow at the least; undefined where nothing grinds it or nobody read that. */
const groundOff = (other: End, reader: FigureReader, context: MakingContext): Figure | undefined => (context.pairGround === true && !context.alsoMade.has(KINDS[other]) ? reader.find(`${other}-die.hollow`) : undefined);

/** Least width by the pressure on the seat, carried over to the length of the new die. */
function leastWidth(reader: FigureReader, length: Figure): Figure | undefined {
  const least = reader.find('seat-pressure.least-width');
  const old = reader.find('lower-die.length');
  return least === undefined || old === undefined ? undefined : reckon('length', [least, old, length], (width, was, is) => (width! * was!) / is!);
}

/** The key as found where it is sturdy, else one of 3/8 in. */
export function sturdyKey(reader: FigureReader, end: End): Figure {
  const found = reader.find(`keys.thickness@${end}#as-made|keys.thickness@${end}`);
  const least = shopNumber('key-thickness');
  if (found !== undefined && found.quantity.value >= least) return found;
  return found === undefined ? { ...shopFigure('key-thickness') } : chosen(least, 'length', 'page-keys', found.from);
}

const printer = (context: MakingContext) => (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
