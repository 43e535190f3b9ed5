/** What hot steel is asked to do. */
export interface Deformation {
  /** K */
  readonly temperature: number;
  /** logarithmic strain so far, above 0 */
  readonly strain: number;
  /** 1/s, above 0 */
  readonly rate: number;
}

export type FlowStress =
  /** Pa */
  | { readonly state: 'known'; readonly stress: number }
  | { readonly state: 'outside-validity'; readonly because: string };

/** Where a law was fitted. Temperatures in K, rates in 1/s, carbon as a share of the mass. */
export interface Validity {
  readonly temperature: readonly [number, number];
  readonly strain: readonly [number, number];
  readonly rate: readonly [number, number];
  readonly carbon?: readonly [number, number];
}

const CELSIUS_ZERO = 273.15;
const HAIR = 1e-9;

const isWithin = (value: number, [least, most]: readonly [number, number]): boolean => value >= least - HAIR * Math.abs(least) && value <= most + HAIR * Math.abs(most);

/** Sentence naming the first condition outside a law's validity, or undefined where all lie within. */
export function outsideOf(law: string, validity: Validity, one: Deformation, carbon?: number): string | undefined {
  // Asked some millions of times for one sheet, and nearly always all lies within: names are looked for only where it does not.
  if (one.strain > 0 && isWithin(one.temperature, validity.temperature) && isWithin(one.strain, validity.strain) && isWithin(one.rate, validity.rate) && (validity.carbon === undefined || carbon === undefined || isWithin(carbon, validity.carbon))) return undefined;
  const named: [string, number, readonly [number, number], string][] = [
    ['temperature', one.temperature, validity.temperature, ' K'],
    ['strain', one.strain, validity.strain, ''],
    ['strain rate', one.rate, validity.rate, ' per second'],
  ];
  if (validity.carbon !== undefined && carbon !== undefined) named.push(['share of carbon', carbon, validity.carbon, '']);
  for (const [what, value, range, unit] of named) {
    if (isWithin(value, range) && (what !== 'strain' || value > 0)) continue;
    return `the ${what} lies outside what the ${law} law was fitted to; ${range[0]} to ${range[1]}${unit} is allowed: ${value}`;
  }
  return undefined;
}

const KILOGRAM_FORCE_PER_SQUARE_MILLIMETRE = 9.80665e6;

/** From drop-hammer tests: Y. Misaka and T. Yoshimoto, J. Japan Soc. Technol. Plasticity 8:414, 1967. */
export const MISAKA_VALIDITY: Validity = { temperature: [750 + CELSIUS_ZERO, 1200 + CELSIUS_ZERO], strain: [0, 0.5], rate: [30, 200], carbon: [0, 0.012] };

/**
 * Flow stress of hot plain carbon steel by Misaka and Yoshimoto.
 * @param carbon share of the mass, 0.0045 for 0.45 %
 */
export function misaka(one: Deformation, carbon: number): FlowStress {
  const because = outsideOf('Misaka', MISAKA_VALIDITY, one, carbon);
  if (because !== undefined) return { state: 'outside-validity', because };
  const c = 100 * carbon;
  const exponent = 0.126 - 1.75 * c + 0.594 * c * c + (2851 + 2968 * c - 1120 * c * c) / one.temperature;
  return { state: 'known', stress: KILOGRAM_FORCE_PER_SQUARE_MILLIMETRE * Math.exp(exponent) * one.strain ** 0.21 * one.rate ** 0.13 };
}

/** S. Shida, J. Japan Soc. Technol. Plasticity 9:127, 1968; here above the transformation only. Carbon limits from memory. */
export const SHIDA_VALIDITY: Validity = { temperature: [700 + CELSIUS_ZERO, 1200 + CELSIUS_ZERO], strain: [0, 0.7], rate: [0.1, 100], carbon: [0.0007, 0.012] };

/**
 * Flow stress of hot plain carbon steel by Shida, above the transformation (T/1000 K from 0.95 (C + 0.41)/(C + 0.32)).
 * The rate exponent rises with temperature, +0.126 T: one transcription in circulation has the sign wrong, and its steel
 * grows softer the faster it is struck.
 * @param carbon share of the mass, 0.0045 for 0.45 %
 */
export function shida(one: Deformation, carbon: number): FlowStress {
  const because = outsideOf('Shida', SHIDA_VALIDITY, one, carbon);
  if (because !== undefined) return { state: 'outside-validity', because };
  const c = 100 * carbon;
  const t = one.temperature / 1000;
  const transformation = (0.95 * (c + 0.41)) / (c + 0.32);
  if (t < transformation) {
    return { state: 'outside-validity', because: `the Shida law is used above the transformation; from ${(1000 * transformation).toFixed(0)} K is allowed: ${one.temperature}` };
  }
  const base = 0.28 * Math.exp(5 / t - 0.01 / (c + 0.05));
  const rateExponent = (-0.019 * c + 0.126) * t + (0.075 * c - 0.05);
  const strainExponent = 0.41 - 0.07 * c;
  const share = one.strain / 0.2;
  const strainTerm = 1.3 * share ** strainExponent - 0.3 * share;
  return { state: 'known', stress: KILOGRAM_FORCE_PER_SQUARE_MILLIMETRE * base * strainTerm * (one.rate / 10) ** rateExponent };
}
