import { keySize } from '../../methods/elements/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, estimateWarnings, plusMinus, reckon, sized, unknownPlace, type Figure } from './figure.ts';
import type { MakingContext } from './making-context.ts';
import type { Making, MakingDimension, PartKind, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
import { pulleyShape, type Wheel } from './pulley-shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const THOU = shopNumber('pin-clearance-least') / 2;
/** Above this a pulley has a rim, a web and a hub and is not turned from the solid. */
const SOLID_UP_TO = 0.2;

/** What a flat-belt pulley is worked out from. */
export interface PulleyFigures {
  readonly kind: PartKind;
  readonly title: string;
  readonly diameter: Figure;
  readonly diameterWhy: string;
  /** Width of its belt. */
  readonly belt: Figure;
  readonly shaft: Figure | undefined;
  readonly shaftKey: string;
  readonly shaftWords: string;
  /** Key of the shaft where it was measured; else the standard one of its diameter. */
  readonly key: Figure | undefined;
  readonly keyPlace?: string;
  /** Shaft that stands out, where that bounds the hub. */
  readonly room?: Figure | undefined;
  readonly unknowns?: readonly Unknown[];
  readonly notes: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * A crowned pulley for a flat belt, bored and keyed to its shaft.
 * @returns the part; cannot be where the shaft with its key takes the rim
 */
export function pulley(figures: PulleyFigures, context: MakingContext): Making {
  const { kind, title, diameter, belt, shaft } = figures;
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  const face = { ...reckon('length', [belt, shopFigure('face-beyond-belt')], (width, more) => width! + more!), estimate: belt.estimate };
  const crown = { ...reckon('length', [face, shopFigure('crown-share')], (width, share) => (width! * share!) / 2), estimate: false };
  const standard = shaft === undefined ? undefined : keySize(shaft.quantity.value);
  const keyWidth: Figure | undefined = figures.key ?? (standard?.state === 'known' && shaft !== undefined ? { quantity: { dimension: 'length', value: standard.width, uncertainty: 0 }, from: shaft.from, estimate: true, sources: ['asme-b17-1'] } : undefined);
  const seat = shaft === undefined || keyWidth === undefined || keyWidth.quantity.value >= shaft.quantity.value ? undefined
    : { ...reckon('length', [shaft, keyWidth], (across, key) => (across! + Math.sqrt(across! ** 2 - key! ** 2) + key!) / 2 + shopNumber('key-room')), estimate: keyWidth.estimate };
  const rim = diameter.quantity.value - 2 * crown.quantity.value;
  if (shaft !== undefined) {
    const least = (seat?.quantity.value ?? shaft.quantity.value) * 2 - shaft.quantity.value + 4 * (keyWidth?.quantity.value ?? shopNumber('bush-wall'));
    if (rim <= least) {
      return { state: 'cannot-be', kind, title, because: `Over the keyway there must be as much metal as the key is wide twice over: a slower motor, a countershaft or a smaller shaft (${[...diameter.from, ...shaft.from].join(', ')}).`, problem: `The pulley is too small for its shaft; above ${print(least)} is allowed: ${print(diameter.quantity.value)}` };
    }
  }
  const wanted = shaft === undefined ? undefined : wheelOf(diameter.quantity.value, seat?.quantity.value ?? shaft.quantity.value, shaft.quantity.value);
  // A hub that reaches the rim leaves no web.
  const solid = diameter.quantity.value <= SOLID_UP_TO || (wanted !== undefined && wanted.hub > 0.7 * rim);
  const wheel = solid ? undefined : wanted;
  const part = (name: string, title: string, size: number, why: string, of: Figure): MakingDimension => sized(name, title, { ...chosen(size, 'length', 'from-memory', of.from), estimate: of.estimate }, plusMinus(32 * THOU), why);
  const dimensions: MakingDimension[] = [
    sized('diameter', 'diameter at the crown', diameter, plusMinus(10 * THOU), figures.diameterWhy),
    sized('face', 'face', face, plusMinus(32 * THOU), 'belt and 1/2 in (12.7 mm)'),
    sized('crown', 'crown, on the radius', crown, plusMinus(5 * THOU), 'a hundredth of the face, half of it on each side'),
    ...(shaft === undefined ? [] : [sized('bore', 'bore', shaft, { plus: THOU, minus: 0 }, figures.shaftWords)]),
    ...(keyWidth === undefined ? [] : [sized('key-width', 'keyway, width', keyWidth, { plus: 2 * THOU, minus: 0 }, figures.key === undefined ? 'not measured: the usual one of this shaft, ANSI B17.1' : 'as the shaft’s key')]),
    ...(seat === undefined ? [] : [sized('key-depth', 'bore and keyway together', seat, { plus: 10 * THOU, minus: 0 }, 'square key with 0.005 in (0.13 mm) over it, ANSI B17.1')]),
  ];
  if (wheel !== undefined) {
    dimensions.push(
      part('rim', 'rim, thickness at its edge', wheel.rim, 'a two-hundredth of the diameter and 1/8 in (3 mm), to the next sixteenth: a handbook’s rule for cast iron, from memory', diameter), part('web', 'web, thickness', wheel.web, 'as thick as the rim and not under 3/8 in (9.5 mm)', diameter),
      part('hub', 'hub, diameter; as long as the face', wheel.hub, 'twice the shaft, or a quarter of it over the keyway', shaft!),
    );
  }
  const tooDeep = figures.room !== undefined && face.quantity.value > figures.room.quantity.value;
  return possible({
    state: 'to-make', kind, id: kind, title, quantity: 1, material: solid ? 'Grey iron class 30 (EN-GJL-200) or free-cutting steel, from the solid' : 'Grey iron class 30 (EN-GJL-200), cast with a web; or rim, web and hub of mild steel welded and then turned', hardness: 'As supplied; no heat treatment', dimensions,
    ...(wheel !== undefined ? { mass: wheelVolume(diameter.quantity.value - crown.quantity.value, face.quantity.value, shaft!.quantity.value, wheel) * STOCK_DENSITIES.iron } : {}),
    ...(solid ? { mass: (Math.PI / 4) * (diameter.quantity.value ** 2 - (shaft?.quantity.value ?? 0) ** 2) * face.quantity.value * STOCK_DENSITIES.iron } : {}), roughness: 3.2e-6,
    shape: pulleyShape({ diameter: diameter.quantity.value, face: face.quantity.value, crown: crown.quantity.value, bore: shaft?.quantity.value, keyWidth: keyWidth?.quantity.value, keyDepth: seat?.quantity.value, runOut: 3 * THOU, wheel }), disputes: [],
    unknowns: [...(shaft === undefined ? [unknownPlace(figures.shaftKey)] : []), ...(figures.key === undefined && figures.keyPlace !== undefined ? [unknownPlace(figures.keyPlace)] : []), ...(figures.unknowns ?? [])],
    notes: [
      'Rim turned on its own bore, so that it runs true. Smooth, not polished; edges rounded 1/16 in (1.6 mm).',
      'Bore a light push on the shaft; set screw on the key, cup point, with a second at a right angle. Ends of the bore chamfered 1/32 in (0.8 mm).',
      ...(solid ? [] : [`${wheel === undefined ? 'Hub and web follow from the shaft, which was not measured: the outside alone is drawn.' : 'Web in the middle of the face; four holes in it, half as wide as the web is high, may be left out for weight.'} A bought pulley or one with spokes does as well where diameter, face and bore are these. Balanced still: it stays where it is put on level edges.`]), ...figures.notes,
    ],
    cautions: ['isolate', 'pinch'], sources: ['belt-arithmetic', 'common-practice', 'from-memory', 'iso-1101', 'iso-21920', ...(keyWidth === undefined ? [] : ['asme-b17-1'])],
    warnings: [...figures.warnings, ...(tooDeep ? [`The face is wider than the shaft stands out, ${print(figures.room!.quantity.value)}: the hub is recessed, or the pulley hangs over the end.`] : []), ...estimateWarnings(dimensions)],
  }, context.system);
}

const SIXTEENTH = 0.0254 / 16;

/** Rim, web and hub of a large pulley. */
function wheelOf(diameter: number, overKey: number, shaft: number): Wheel {
  const up = (length: number): number => Math.ceil(length / SIXTEENTH - 1e-6) * SIXTEENTH;
  const rim = up(diameter / 200 + 2 * SIXTEENTH);
  const hub = up(Math.max(2 * shaft, 2 * (overKey - shaft / 2) + shaft / 2));
  return { rim, web: Math.max(rim, 6 * SIXTEENTH), hub };
}

/** Metal of a pulley with rim, web and hub, m³; the rim at its middle diameter, crown and keyway left aside. */
const wheelVolume = (outside: number, face: number, bore: number, { rim, web, hub }: Wheel): number => {
  const inside = outside - 2 * rim;
  return (Math.PI / 4) * ((outside ** 2 - inside ** 2) * face + (inside ** 2 - hub ** 2) * web + (hub ** 2 - bore ** 2) * face);
};
