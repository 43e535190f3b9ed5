import { demandBetween, demandPositive } from '../../numerics/index.ts';

/** A pack of leaves, seen as one half: from the clip at the middle to one eye. */
export interface LeafPack {
  /** Leaves that reach the eye at full width, a whole number, 0 or above. */
  readonly fullLeaves: number;
  /** Leaves cut shorter and shorter, a whole number, 0 or above. */
  readonly graduatedLeaves: number;
  /** Middle to eye, m, > 0. */
  readonly reach: number;
  /** Width of a leaf, m, > 0. */
  readonly width: number;
  /** Thickness of a leaf, m, > 0. */
  readonly thickness: number;
  /** Pa, > 0. */
  readonly elasticModulus: number;
}

const demandLeaves = (full: number, graduated: number): number => {
  const count = demandBetween('number of full leaves', full, 0, 100) + demandBetween('number of graduated leaves', graduated, 0, 100);
  return demandPositive('number of leaves', count);
};

/**
 * Deflection of the middle against the eyes, m, under a load at each eye: δ = 12 P L³ / (E b t³ (3 nf + 2 ng)), leaves not nipped
 * (Bhandari, Design of Machine Elements, ch. 10). With graduated leaves only it is 6 P L³/(E n b t³); with full ones only 4.
 * @param loadAtEye P, N: half of the load at the middle
 */
export const leafDeflection = (pack: LeafPack, loadAtEye: number): number => {
  demandLeaves(pack.fullLeaves, pack.graduatedLeaves);
  return (
    (12 * loadAtEye * demandPositive('reach', pack.reach) ** 3) /
    (demandPositive('elastic modulus', pack.elasticModulus) * demandPositive('width', pack.width) * demandPositive('thickness', pack.thickness) ** 3 * (3 * pack.fullLeaves + 2 * pack.graduatedLeaves))
  );
};

/** Rate of a pack held at both eyes and loaded at the middle, N/m: middle load over deflection. */
export const leafRate = (pack: LeafPack): number => 2 / leafDeflection(pack, 1);

/**
 * Bending stress at the clip, Pa, leaves not nipped: in the full leaves 18 P L/(b t² (3 nf + 2 ng)), in the graduated ones two thirds of it;
 * nipped so that all share alike: 6 P L/(n b t²) (Bhandari ch. 10).
 */
export const leafStress = (pack: LeafPack, loadAtEye: number): { readonly full: number; readonly graduated: number; readonly shared: number } => {
  const count = demandLeaves(pack.fullLeaves, pack.graduatedLeaves);
  const base = (6 * loadAtEye * demandPositive('reach', pack.reach)) / (demandPositive('width', pack.width) * demandPositive('thickness', pack.thickness) ** 2);
  const full = (3 * base) / (3 * pack.fullLeaves + 2 * pack.graduatedLeaves);
  return { full, graduated: (2 * full) / 3, shared: base / count };
};

/**
 * Thickness of leaf, m, that keeps the shared stress at a limit: t = √(6 P L/(σ n b)).
 * @param stress permissible bending stress σ, Pa, > 0
 */
export const leafThickness = (leaves: number, reach: number, width: number, loadAtEye: number, stress: number): number =>
  Math.sqrt(
    (6 * demandPositive('load', loadAtEye) * demandPositive('reach', reach)) /
      (demandPositive('stress', stress) * demandPositive('number of leaves', leaves) * demandPositive('width', width)),
  );
