import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { leafShape } from './leaf-shape.ts';
import { estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension, Unknown } from './part-to-make.ts';
import { roundPressure } from './round-pressure.ts';
import { possible } from './possible.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';
import { fineLength } from './shop-units.ts';

const KIND = 'bow-leaf';
const TITLE = 'Leaf of the bow spring';
const SIXTY_FOURTH = shopNumber('plate-room');
/** Young's modulus of spring steel, Pa, as the judgement of the bow has it (Bhandari, Design of Machine Elements, chapter 10). */
const YOUNG = 207e9;
/** More of a turn than this no bow has: half of the leaf's angle, rad. */
const HALF_TURN = (100 * Math.PI) / 180;

/**
 * One leaf to replace a broken one: of the section of its neighbours, as long along its curve as the broken one, bent to the bow's own
 * curve; the main leaf with an eye rolled at each end.
 * @returns the part; not known without section, length and which leaf it is; cannot be where its length does not fit the bow, where the hole
 * takes the leaf, or where an eye is smaller than its pin
 */
export function makeBowLeaf(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const size = (place: string): Figure | undefined => reader.need(`bow-spring.${place}#as-made|bow-spring.${place}`);
  const thick = size('leaf-thickness');
  const wide = size('leaf-width');
  const along = reader.need('bow-spring.new-leaf-length');
  const which = known.looks['bow-spring.new-leaf']?.answer;
  const main = which === 'main';
  const bores = ['left', 'right'].flatMap((end) => reader.find(`bow-spring.eye-bore@${end}`) ?? []).sort((a, b) => a.quantity.value - b.quantity.value);
  const bore = main ? bores[0] ?? reader.need('bow-spring.eye-bore@left') : undefined;
  const asked: readonly Unknown[] = which === undefined ? [{ key: 'bow-spring.new-leaf', what: 'which leaf is made new', how: 'Count from the leaf with the eyes; look whether the broken one has eyes.' }] : [];
  if (thick === undefined || wide === undefined || along === undefined || which === undefined || (main && bore === undefined)) return { state: 'not-known', kind: KIND, title: TITLE, missing: [...asked, ...reader.missing] };
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  const hole = reader.find('bow-spring.centre-hole');
  if (thick.quantity.value >= wide.quantity.value) return cannot('A leaf stands flat in its pack: thickness and width were changed about, or one is wrong (bow-spring.leaf-thickness, bow-spring.leaf-width).', `The leaf is thicker than it is wide; below ${print(wide.quantity.value)} is allowed: ${print(thick.quantity.value)}`);
  if (hole !== undefined && hole.quantity.value > wide.quantity.value / 2) return cannot('A hole of half the width leaves no leaf beside it: hole or width is wrong (bow-spring.centre-hole, bow-spring.leaf-width).', `The hole of the centre bolt takes the leaf; up to ${print(wide.quantity.value / 2)} is allowed: ${print(hole.quantity.value)}`);
  const span = reader.find('bow-spring.span#as-made|bow-spring.span');
  const camber = reader.find('bow-spring.camber#as-made|bow-spring.camber');
  // The new leaf lies against leaves that have set: bent to them as they are now. Their length along the curve is as it was made.
  const [spanNow, camberNow] = [reader.find('bow-spring.span'), reader.find('bow-spring.camber')];
  const asNow = spanNow !== undefined && camberNow !== undefined && camberNow.quantity.value > 0;
  const [bowSpan, bowCamber] = asNow ? [spanNow, camberNow] : [span, camber];
  const curve = radiusOf(bowSpan, bowCamber);
  const curveOld = radiusOf(span, camber);
  const bend = curve === undefined ? undefined : along.quantity.value / 2 / curve.quantity.value;
  if (bend !== undefined && bend > HALF_TURN) return cannot('On the curve of the bow this leaf would meet itself: length, span or camber is wrong (bow-spring.new-leaf-length, bow-spring.span, bow-spring.camber).', `The leaf is too long for the bow’s curve; up to ${print(2 * HALF_TURN * curve!.quantity.value)} is allowed: ${print(along.quantity.value)}`);
  const mainLeaf = span === undefined || camber === undefined || curveOld === undefined ? undefined : reckon('length', [span, camber], (across, high) => {
    const radius = arcRadius(across!, high!);
    return 2 * radius * Math.atan2(across! / 2, radius - high!);
  });
  const mainAlong = mainLeaf?.quantity.value;
  if (!main && mainAlong !== undefined && along.quantity.value > mainAlong * 1.02) return cannot('A leaf without eyes is no longer than the main leaf from eye to eye: it is the main leaf, or a length is wrong (bow-spring.new-leaf-length, bow-spring.span, bow-spring.camber).', `The leaf is longer than the main leaf; up to ${print(mainAlong)} is allowed: ${print(along.quantity.value)}`);
  const pin = ['left', 'right'].flatMap((end) => reader.find(`bow-spring.pin-diameter@${end}`) ?? []).sort((a, b) => b.quantity.value - a.quantity.value)[0];
  if (bore !== undefined && pin !== undefined && bore.quantity.value <= pin.quantity.value) return cannot(`The eye must go over its pin: one of the readings is wrong (${bore.from.join(', ')}, ${pin.from.join(', ')}).`, `The eye is smaller than its pin; above ${print(pin.quantity.value)} is allowed: ${print(bore.quantity.value)}`);
  const rolled = bore === undefined ? undefined : { ...reckon('length', [along, bore, thick, shopFigure('eye-roll')], (between, inside, leaf, share) => between! + 2 * share! * Math.PI * (inside! + leaf!)), estimate: true };
  const flat = rolled ?? along;
  const chord = curve === undefined ? undefined : reckon('length', [along, curve], (long, radius) => 2 * radius! * Math.sin(long! / 2 / radius!));
  const rise = curve === undefined ? undefined : reckon('length', [along, curve], (long, radius) => radius! * (1 - Math.cos(long! / 2 / radius!)));
  const flex = reader.find('bow-spring.deflection');
  // A short leaf is bent as far as the main one that it lies under, over half the span, as the judgement of the bow reckons it; the leaf with the eyes takes half as much again.
  const reach = spanNow ?? span;
  const stress = flex === undefined || reach === undefined ? undefined : { ...reckon('pressure', [flex, thick, reach], (give, leaf, across) => ((main ? 1.5 : 1) * YOUNG * leaf! * give!) / (across! / 2) ** 2), estimate: true };
  const dimensions: MakingDimension[] = [
    sized('flat-length', main ? 'length to cut, eyes not yet rolled' : 'length to cut, along the curve', flat, plusMinus(main ? 16 * SIXTY_FOURTH : 4 * SIXTY_FOURTH), main ? 'from eye to eye along the curve and nine tenths of a turn for each eye; cut long and trimmed after rolling' : 'as the broken leaf'),
    sized('width', 'width', wide, { plus: SIXTY_FOURTH, minus: SIXTY_FOURTH }, 'as the other leaves'),
    sized('thickness', 'thickness', thick, plusMinus(SIXTY_FOURTH / 2), `${thicknessWords(thick, reader, print)}; stiffness grows with its cube`),
    ...(hole === undefined || hole.quantity.value <= 0 ? [] : [sized('centre-hole', 'hole of the centre bolt, in the middle', hole, { plus: SIXTY_FOURTH, minus: 0 }, 'as the other leaves'), sized('half', 'middle from the end', { ...reckon('length', [flat], (long) => long! / 2), estimate: flat.estimate }, plusMinus(SIXTY_FOURTH * 2), 'half of the length')]),
    ...(bore === undefined ? [] : [sized('eye', 'bore of the eyes, as rolled', bore, { plus: 0, minus: SIXTY_FOURTH * 2 }, 'as the other eye; left small to be reamed')]),
    ...(bore === undefined ? [] : [sized('between-eyes', 'between the eyes, along the curve', along, plusMinus(8 * SIXTY_FOURTH), 'as the broken leaf')]),
    ...(curve === undefined ? [] : [sized('radius', main ? 'radius of the inside, free' : 'radius of the bow, free; the neighbour wins', curve, plusMinus(curve.quantity.value * 0.03), `span and camber of the bow, ${curveWords(bowSpan, bowCamber)}${asMadeCurve(asNow, curve, curveOld, along, context)}`)]),
    ...(chord === undefined ? [] : [sized('chord', 'from end to end, straight', chord, plusMinus(0), 'follows from length and radius')]),
    ...(rise === undefined ? [] : [sized('rise', 'height of the curve', rise, plusMinus(0), 'follows from length and radius')]),
    ...(stress === undefined ? [] : [sized('stress', 'bending at the clip in full stroke', stress, plusMinus(0), `${main ? 'one and a half times ' : ''}modulus, thickness and flex of the bow over the square of half its span (Bhandari, chapter 10, leaves not nipped${main ? '' : '; the leaf with the eyes takes half as much again, and the report judges that one'}); preload not counted`)]),
  ];
  const over = stress !== undefined && stress.quantity.value > shopNumber('leaf-stress');
  const pressure = (value: number) => printQuantity(roundPressure(value, context.system), context.system);
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: `${TITLE}, ${main ? 'main leaf' : 'without eyes'}`, quantity: 1, material: 'Spring steel 5160 (55Cr3) or 6150 (51CrV4), rolled flat with round edges', hardness: '42 to 46 HRC: oil from 1550 F (845 °C), tempered at 800 to 900 F (430 to 480 °C)',
    mass: thick.quantity.value * wide.quantity.value * flat.quantity.value * STOCK_DENSITIES.steel, dimensions,
    shape: leafShape({ length: along.quantity.value, flat: flat.quantity.value, width: wide.quantity.value, thickness: thick.quantity.value, hole: hole !== undefined && hole.quantity.value > 0 ? hole.quantity.value : undefined, bore: bore?.quantity.value, radius: curve?.quantity.value }),
    unknowns: [...(hole === undefined ? [unknownPlace('bow-spring.centre-hole')] : []), ...(span === undefined ? [unknownPlace('bow-spring.span')] : []), ...(camber === undefined ? [unknownPlace('bow-spring.camber')] : [])], disputes: [{ about: 'A broken leaf', oneSide: 'One new leaf in the old pack works for years if its section and curve match.', otherSide: 'The old leaves have set and the new one has not: it takes more than its share. Renew the pack.', source: 'page-other-families', taken: 'oneSide', because: 'the open job asks for one leaf, and a new pack costs several times as much' }],
    notes: [
      ...(main ? [] : [`Which leaf: the one that is ${print(along.quantity.value)} long along its curve; count its place from the leaf with the eyes and stamp it on the end.`]),
      'Bent hot to the curve of its neighbour, over the neighbour or a template of it: the neighbour wins over the radius. Gap to the neighbour before clipping 1/16 in (1.6 mm) at the middle at most.',
      ...(main ? ['Eyes rolled hot round a mandrel, square to the leaf and in line with one another; reamed for their bushes after heat treatment.'] : ['Ends as the neighbours have them: cut square and drawn thin, or trimmed; corners rounded 1/8 in (3 mm).']),
      'Hole drilled, never burnt, and chamfered both sides before hardening. No punch mark, weld, stamp or grinding burn on the tension side; edges dressed smooth along the leaf, then shot-peened on the tension side.',
      'Scrapped if it cracks at all: a leaf is never welded. Grease between the leaves.',
      ...(stress === undefined ? [] : [`In full stroke the clip bends it to about ${pressure(stress.quantity.value)}, an estimate; a handbook’s example allows ${pressure(shopNumber('leaf-stress'))}.${main ? '' : ' The leaf with the eyes takes half as much again: the report holds that against the same example.'}`]),
    ],
    cautions: ['spring-unload', 'stand-aside', 'isolate', 'block-ram'], sources: ['page-other-families', 'bhandari-springs', 'common-practice', 'from-memory'],
    warnings: [
      ...(over ? ['It bends further than a handbook’s example allows: find out why the bow flexes so far before a new leaf is fitted.'] : []),
      ...(curve === undefined ? ['Span and free camber are not known: the leaf is drawn flat, and bent to its neighbour.'] : []), ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/** Radius of an arc by its chord and its height. */
const arcRadius = (chord: number, high: number): number => chord ** 2 / (8 * high) + high / 2;

const radiusOf = (span: Figure | undefined, camber: Figure | undefined): Figure | undefined =>
  (span === undefined || camber === undefined || camber.quantity.value <= 0 ? undefined : reckon('length', [span, camber], (chord, high) => arcRadius(chord!, high!)));

/** Which thickness that is: the one the leaves were made to, as strip is sold, or that of the others now. */
function thicknessWords(thick: Figure, reader: FigureReader, print: (length: number) => string): string {
  if (!thick.from.some((key) => key.endsWith('#as-made'))) return 'as the other leaves';
  const now = reader.find('bow-spring.leaf-thickness');
  return `as made, and as strip is sold${now === undefined || Math.abs(now.quantity.value - thick.quantity.value) < 1e-5 ? '' : `; the old leaves read ${print(now.quantity.value)} now`}`;
}

/** What the curve as made would be, and by how much such a leaf would stand off its neighbours. */
function asMadeCurve(asNow: boolean, curve: Figure, old: Figure | undefined, along: Figure, context: MakingContext): string {
  if (!asNow || old === undefined || Math.abs(old.quantity.value - curve.quantity.value) < 1e-4) return '';
  const high = (radius: number): number => radius * (1 - Math.cos(along.quantity.value / 2 / radius));
  const apart = Math.abs(high(old.quantity.value) - high(curve.quantity.value));
  return `. As made the radius was ${printQuantity({ ...old.quantity, uncertainty: 0 }, context.system)}: a leaf bent to that would stand ${fineLength(apart, context.system)} off its neighbours at the middle`;
}

/** Whether a curve is the one that the bow was made to, or the one that it stands at. */
function curveWords(span: Figure | undefined, camber: Figure | undefined): string {
  const asMade = [span, camber].map((one) => one?.from.some((key) => key.endsWith('#as-made')) === true);
  return asMade.every(Boolean) ? 'as made' : asMade.some(Boolean) ? 'one as made and one as it stands' : 'as it stands, since it lies against leaves that have set; the span is read with the straps on, the camber with them off, so the free bow is a little flatter still';
}
