const POUND_MASS = 0.45359237;
const POUND_FORCE = 4.4482216152605;
const INCH = 0.0254;
const POUND_PER_SQUARE_INCH = 6894.757293168361;

/** A square hardwood timber that holds a ram up while hands are under it. SI. */
export interface RamProp {
  /** name of the timber, its nominal side in inches */
  readonly name: string;
  /** side, m */
  readonly side: number;
  readonly area: number;
  /** load at which a short column of it fails, N */
  readonly shortColumnLoad: number;
  /** heaviest hammer that it may hold, kg, at a safety factor of 10 */
  readonly hammerMass: number;
  /** longest allowed, m */
  readonly length: number;
}

const row = (sideInches: number, areaSquareInches: number, loadPounds: number, hammerPounds: number, lengthInches: number): RamProp => ({
  name: `${sideInches} x ${sideInches}`, side: sideInches * INCH, area: areaSquareInches * INCH * INCH, shortColumnLoad: loadPounds * POUND_FORCE,
  hammerMass: hammerPounds * POUND_MASS, length: lengthInches * INCH,
});

/**
 * 29 CFR 1910.218, table O-11, as printed. Its figures are 5000 lb for each square inch, a tenth of that as the hammer, and
 * eleven times the side as length, but for the 10 x 10, for which it prints 100 in and not 110: the table governs.
 */
export const RAM_PROPS: readonly RamProp[] = [
  row(4, 16, 80_000, 8_000, 44),
  row(6, 36, 180_000, 18_000, 66),
  row(8, 64, 320_000, 32_000, 88),
  row(10, 100, 500_000, 50_000, 100),
  row(12, 144, 720_000, 72_000, 132),
];

/** Least crushing strength along the grain that the table supposes, Pa. */
export const RAM_PROP_STRENGTH = 5000 * POUND_PER_SQUARE_INCH;

export type PropChoice =
  | { readonly state: 'known'; readonly prop: RamProp; readonly source: string }
  | { readonly state: 'outside-validity'; readonly because: string };

/**
 * The smallest timber of the table that may hold a hammer up at a length. Sides are actual ones: a dressed timber is smaller than its name.
 * @param hammerMass everything that would come down, kg, positive @param length of the prop, m, positive
 */
export function propFor(hammerMass: number, length: number): PropChoice {
  const prop = RAM_PROPS.find((one) => hammerMass <= one.hammerMass * (1 + 1e-9) && length <= one.length * (1 + 1e-9));
  if (prop !== undefined) return { state: 'known', prop, source: '29 CFR 1910.218, table O-11' };
  const last = RAM_PROPS[RAM_PROPS.length - 1]!;
  return { state: 'outside-validity', because: `the table of ram props ends at ${last.hammerMass.toFixed(0)} kg and ${last.length.toFixed(2)} m: ${hammerMass} kg at ${length} m` };
}
