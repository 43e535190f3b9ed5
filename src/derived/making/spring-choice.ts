import { EUROPEAN_SHEAR_MODULUS, orderHelicalSpring, permissibleSolidStress, springIndex, wireStrengthSides, type CoilEnds, type SpringOrder, type WireKind } from '../../methods/elements/index.ts';

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
