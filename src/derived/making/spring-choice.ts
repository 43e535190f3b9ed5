import { activeCoils, coilsForRate, deadCoils, EUROPEAN_SHEAR_MODULUS, helicalRate, helicalStress, orderHelicalSpring, permissibleSolidStress, solidLength, springIndex, wahlFactor, wireStrengthSides, type CoilEnds, type SpringOrder, type WireKind } from '../../methods/elements/index.ts';

/** Wires for a hammer spring, plain first. */
const WIRES: readonly { readonly kind: WireKind; readonly words: string }[] = [
  { kind: 'oil-tempered', words: 'oil-tempered carbon spring steel' },
  { kind: 'chrome-vanadium', words: 'chromium-vanadium spring steel' },
  { kind: 'chrome-silicon', words: 'chromium-silicon spring steel' },
];

export interface WireAnswer {
  readonly words: string;
  /** Permissible stress with the coils solid, Pa: by the lower of the two tables, which a spring is chosen by. */
  readonly permissible: number;
  /** The same by the older table, and by the newer one where it is printed for wire this thick. */
  readonly older: number;
  readonly newer?: number;
}

/** What each wire of this thickness stands with the coils solid: 0.56 of its strength, by both published tables. */
export const wireAnswers = (wire: number): readonly WireAnswer[] =>
  WIRES.map(({ kind, words }) => {
    const { early, late, lower } = wireStrengthSides(kind, wire);
    return { words, permissible: permissibleSolidStress(lower), older: permissibleSolidStress(early), ...(late === undefined ? {} : { newer: permissibleSolidStress(late) }) };
  });

/** Bar sizes that are stocked: sixteenths of an inch from 3/16 to 1 1/4 in, or whole millimetres from 5 to 32. */
const bars = (metric: boolean): readonly number[] => (metric ? Array.from({ length: 28 }, (_, index) => (5 + index) * 1e-3) : Array.from({ length: 18 }, (_, index) => ((3 + index) * 0.0254) / 16));

/**
 * A spring of the same rate and inside diameter that may go solid in plain oil-tempered wire: the thinnest stocked bar that stands it.
 * @param insideDiameter m; @param rate N/m; @param travel from free to solid, m; @param freeLength of the spring that it would take the place of, m: a quarter more is the most that a box may have room for
 * @returns the order with its outside diameter, or undefined where no stocked bar does it
 */
export function easierSpring(insideDiameter: number, rate: number, travel: number, freeLength: number, ends: CoilEnds, metric: boolean): (SpringOrder & { readonly outsideDiameter: number }) | undefined {
  for (const wire of bars(metric)) {
    const stress = wireAnswers(wire)[0]?.permissible;
    if (stress === undefined) continue;
    const order = orderHelicalSpring({ load: rate * travel, rate, index: springIndex(insideDiameter + wire, wire), stress, shearModulus: EUROPEAN_SHEAR_MODULUS['oil-hardened'], ends, gap: 0, wires: [wire] });
    if (order.state === 'known' && order.freeLength <= freeLength * 1.25) return { ...order, outsideDiameter: order.meanDiameter + order.wire };
  }
  return undefined;
}

/** What a spring has to take up, whatever its own sizes. */
export interface SpringDemand {
  /** Load as set, N, and greatest load, N. */
  readonly load: number;
  readonly force: number;
  /** Energy taken up from the load as set on, J. */
  readonly energy: number;
}

/** Travel from free that a demand asks of a spring of this rate, m: by its energy or by its force, whichever is more. */
export const travelWanted = (rate: number, { load, force, energy }: SpringDemand): number => Math.max(force / rate, Math.hypot(load / rate, Math.sqrt((2 * Math.max(0, energy)) / rate)));

/** A spring by its sizes, SI. */
export interface SpringSizes {
  readonly wire: number;
  readonly inside: number;
  readonly coils: number;
  readonly free: number;
  readonly ends: CoilEnds;
}

/** A spring that serves where another comes too short. */
export interface ServingSpring extends SpringSizes {
  readonly rate: number;
  readonly solid: number;
  /** Travel that the demand asks of it, m. */
  readonly wanted: number;
  /** Its length at the load as set, and the shortest that it may run down to, m. */
  readonly set: number;
  readonly least: number;
}

/** A spring may be delivered this share shorter than ordered; it has to serve all the same. */
export const FREE_LENGTH_TOLERANCE = 0.02;
/** More length than a quarter has no box. */
const MOST_LONGER = 1.25;
const LEAST_WORKING_COILS = 3;

/**
 * A spring of the same bore and about the same rate that has the travel a demand asks for, with the share kept, even where it is
 * delivered at the short end of its tolerance, and that may go solid in plain oil-tempered wire by the lower table. The same wire and
 * coils wound longer come first, then stocked bars, the thinnest that does it.
 * @param drawn the spring that comes too short; @param keep share of the travel that is kept
 * @returns undefined where a quarter more length gives nothing that serves
 */
export function servingSpring(drawn: SpringSizes, demand: SpringDemand, keep: number, metric: boolean): ServingSpring | undefined {
  const { inside, ends } = drawn;
  const rate = rateOf(drawn.wire, inside, drawn.coils, ends);
  const step = metric ? 5e-3 : 0.0254 / 8;
  const candidates = [{ wire: drawn.wire, coils: drawn.coils }, ...bars(metric).map((wire) => ({ wire, coils: Math.round(4 * coilsForRate(MODULUS, wire, inside + wire, rate)) / 4 + deadCoils(ends) }))];
  for (const { wire, coils } of candidates) {
    if (activeCoils(coils, ends) < LEAST_WORKING_COILS) continue;
    const own = rateOf(wire, inside, coils, ends);
    const solid = solidLength(wire, coils, ends);
    const wanted = travelWanted(own, demand);
    const least = (solid + wanted / (1 - keep)) / (1 - FREE_LENGTH_TOLERANCE);
    const free = Math.ceil(least / step - 1e-9) * step;
    if (free > drawn.free * MOST_LONGER) continue;
    const atSolid = helicalStress(own * (free - solid), inside + wire, wire, wahlFactor(springIndex(inside + wire, wire)));
    if (atSolid <= (wireAnswers(wire)[0]?.permissible ?? 0)) return { wire, inside, coils, free, ends, rate: own, solid, wanted, set: free - demand.load / own, least: solid + keep * (free - solid) };
  }
  return undefined;
}

const MODULUS = EUROPEAN_SHEAR_MODULUS['oil-hardened'];
const rateOf = (wire: number, inside: number, coils: number, ends: CoilEnds): number => helicalRate(MODULUS, wire, inside + wire, activeCoils(coils, ends));
