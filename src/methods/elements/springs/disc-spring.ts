import { demandPositive } from '../../numerics/index.ts';

/** A coned disc spring without flats. */
export interface DiscSpring {
  /** m, > 0, and > insideDiameter. */
  readonly outsideDiameter: number;
  readonly insideDiameter: number;
  /** m, > 0. */
  readonly thickness: number;
  /** Height of the free cone over the flat disc, m, > 0. */
  readonly coneHeight: number;
  /** Pa, > 0. */
  readonly elasticModulus: number;
  /** Poisson's ratio, 0.3 for steel. */
  readonly poisson: number;
}

/** Constants of J. O. Almen and A. Laszlo, Trans. ASME 58, 1936, 305, for a ratio of outside to inside diameter > 1. */
const constants = (ratio: number): { readonly m: number; readonly c1: number; readonly c2: number } => {
  if (!(ratio > 1 && Number.isFinite(ratio))) throw new RangeError(`Outside over inside diameter of a disc spring is outside its range; above 1 is allowed: ${ratio}`);
  const base = 6 / (Math.PI * Math.log(ratio));
  return { m: base * ((ratio - 1) / ratio) ** 2, c1: base * ((ratio - 1) / Math.log(ratio) - 1), c2: (base * (ratio - 1)) / 2 };
};

const common = (disc: DiscSpring): number =>
  demandPositive('elastic modulus', disc.elasticModulus) / ((1 - disc.poisson ** 2) * constants(disc.outsideDiameter / demandPositive('inside diameter', disc.insideDiameter)).m * (disc.outsideDiameter / 2) ** 2);

/** Load at a deflection from free, N: E δ/((1 - µ²) M (Do/2)²) · ((h - δ/2)(h - δ) t + t³). Deflection in m, 0 to twice the cone height. */
export const discLoad = (disc: DiscSpring, deflection: number): number =>
  common(disc) * deflection * ((disc.coneHeight - deflection / 2) * (disc.coneHeight - deflection) * disc.thickness + demandPositive('thickness', disc.thickness) ** 3);

/** Compressive stress at the inner upper edge, Pa: E δ/((1 - µ²) M (Do/2)²) · (C1 (h - δ/2) + C2 t). */
export const discStress = (disc: DiscSpring, deflection: number): number => {
  const { c1, c2 } = constants(disc.outsideDiameter / disc.insideDiameter);
  return common(disc) * deflection * (c1 * (disc.coneHeight - deflection / 2) + c2 * demandPositive('thickness', disc.thickness));
};

/** What a disc spring must do when pressed flat. */
export interface DiscWanted {
  readonly loadFlat: number;
  readonly stressFlat: number;
  /** Outside over inside diameter, > 1. */
  readonly diameterRatio: number;
  /** Cone height over thickness, > 0. */
  readonly heightRatio: number;
  readonly elasticModulus: number;
  readonly poisson: number;
}

/**
 * Disc that reaches a load and a stress together when flat (Bhandari, Design of Machine Elements, ex. 10.26). Flat, the load goes
 * with t⁴/Do² and the stress with t²/Do², so one division gives t.
 */
export const orderDiscSpring = (wanted: DiscWanted): DiscSpring => {
  const { m, c1, c2 } = constants(wanted.diameterRatio);
  const q = demandPositive('height ratio', wanted.heightRatio);
  const stiffness = (4 * demandPositive('elastic modulus', wanted.elasticModulus)) / ((1 - wanted.poisson ** 2) * m);
  const loadConstant = stiffness * q;
  const stressConstant = stiffness * q * ((c1 * q) / 2 + c2);
  const slenderness = demandPositive('stress', wanted.stressFlat) / stressConstant;
  const thickness = Math.sqrt(demandPositive('load', wanted.loadFlat) / (loadConstant * slenderness));
  const outsideDiameter = thickness / Math.sqrt(slenderness);
  return {
    outsideDiameter, insideDiameter: outsideDiameter / wanted.diameterRatio, thickness, coneHeight: q * thickness,
    elasticModulus: wanted.elasticModulus, poisson: wanted.poisson,
  };
};
