import { outsideOf, type Deformation, type FlowStress, type Validity } from './flow-stress.ts';

/** Coefficients of the Hensel-Spittel law: stress in MPa at a temperature in °C, as printed. */
export interface SpittelSteel {
  readonly name: string;
  readonly source: string;
  readonly a: number;
  readonly m1: number;
  readonly m2: number;
  /** power of the rate; 0 in many fits */
  readonly m3: number;
  readonly m4: number;
  readonly m5: number;
  readonly m7: number;
  readonly m8: number;
  readonly validity: Validity;
}

const CELSIUS_ZERO = 273.15;
const celsius = (least: number, most: number): readonly [number, number] => [least + CELSIUS_ZERO, most + CELSIUS_ZERO];

// The handbook's own ranges, from memory: it was not opened, only its coefficients were read in an open transcription.
const HANDBOOK: Validity = { temperature: celsius(800, 1250), strain: [0.04, 1.5], rate: [0.01, 500] };
const SPITTEL = 'M. and T. Spittel, Landolt-Börnstein VIII/2C1, Springer 2009';

/** Plain steels of the handbook. */
export const SPITTEL_STEELS = {
  c45: { name: 'C45', source: SPITTEL, a: 3268.49, m1: -0.00267855, m2: 0.34446, m3: 0, m4: 0.000551814, m5: -0.00132042, m7: 0.0166334, m8: 0.000149907, validity: HANDBOOK },
  c22: { name: 'C22', source: SPITTEL, a: 3304.39, m1: -0.00281, m2: 0.34766, m3: 0, m4: 0.00002, m5: -0.0013, m7: 0.07632, m8: 0.000148, validity: HANDBOOK },
  s355: { name: 'S355', source: SPITTEL, a: 2852.66, m1: -0.00244, m2: 0.41934, m3: 0, m4: 0.00088, m5: -0.00149, m7: 0.12169, m8: 0.000127, validity: HANDBOOK },
} as const satisfies Readonly<Record<string, SpittelSteel>>;

/** Medium-carbon low-alloy forging steel (0.30 C, 0.89 Mn, 1.86 Cr, 0.52 Mo, 0.68 Ni, per cent) with openly published compression tests. */
export const LOW_ALLOY_STEEL: SpittelSteel = {
  name: 'medium-carbon low-alloy forging steel',
  source: 'Tize Mha et al., Metals 13(3):633, 2023, doi 10.3390/met13030633',
  a: 5954, m1: -3.3576e-3, m2: 0.2641, m3: -0.0868, m4: 2.2688e-4, m5: -4.2163e-4, m7: -0.0561, m8: 2.264e-4,
  validity: { temperature: celsius(1050, 1250), strain: [0, 0.7], rate: [0.001, 5] },
};

/**
 * Flow stress by the law of Hensel and Spittel:
 * A exp(m1 T) e^m2 r^(m3 + m8 T) exp(m4/e) (1 + e)^(m5 T) exp(m7 e), with e the strain, r the rate in 1/s and T in °C.
 */
export function spittel(one: Deformation, steel: SpittelSteel): FlowStress {
  const because = outsideOf(`Spittel (${steel.name})`, steel.validity, one);
  if (because !== undefined) return { state: 'outside-validity', because };
  const t = one.temperature - CELSIUS_ZERO;
  const { strain, rate } = one;
  const megapascals =
    steel.a * Math.exp(steel.m1 * t + steel.m4 / strain + steel.m7 * strain) * strain ** steel.m2 * rate ** (steel.m3 + steel.m8 * t) * (1 + strain) ** (steel.m5 * t);
  return { state: 'known', stress: megapascals * 1e6 };
}
