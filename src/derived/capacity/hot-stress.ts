import { carbonSteelFlowStress, misaka, shida, spittel, SPITTEL_STEELS, type Deformation, type FlowStress } from '../../methods/forming/index.ts';

/** How stiff the steel is at a deformation; outside a law's validity is an answer. */
export type StressAt = (one: Deformation) => FlowStress;

/** A published law for hot plain carbon steel. */
export interface StressLaw {
  readonly id: 'misaka' | 'shida' | 'spittel';
  readonly name: string;
  readonly source: string;
  readonly standing: string;
  readonly at: StressAt;
}

/**
 * The laws side by side for a steel. The third has tables for two plain steels and speaks for carbon within 0.05 % of them;
 * elsewhere it answers that it does not.
 * @param carbon share of the mass
 */
export function stressLaws(carbon: number): readonly StressLaw[] {
  const table = Math.abs(100 * carbon - 0.45) <= 0.05 + 1e-9 ? SPITTEL_STEELS.c45 : Math.abs(100 * carbon - 0.22) <= 0.05 + 1e-9 ? SPITTEL_STEELS.c22 : undefined;
  return [
    { id: 'misaka', name: 'Misaka', source: 'Y. Misaka and T. Yoshimoto, J. Japan Soc. Technol. Plasticity 8:414, 1967', standing: 'formula read, drop-hammer tests', at: (one) => misaka(one, carbon) },
    { id: 'shida', name: 'Shida', source: 'S. Shida, J. Japan Soc. Technol. Plasticity 9:127, 1968', standing: 'form read, sign of its rate term from memory', at: (one) => shida(one, carbon) },
    {
      id: 'spittel', name: 'Spittel', source: 'M. and T. Spittel, Landolt-Börnstein VIII/2C1, Springer 2009', standing: 'coefficients read, its range from memory',
      at: (one) => (table === undefined ? { state: 'outside-validity', because: `the Spittel tables used here are for 0.22 and 0.45 % carbon, each within 0.05: ${(100 * carbon).toPrecision(3)} %` } : spittel(one, table)),
    },
  ];
}

/**
 * A stress between the least and the most of the laws that hold.
 * @param share 0 takes the least of them, 1 the most @param factor doubt of the laws against their own tests
 */
export const betweenLaws = (carbon: number, share: number, factor = 1): StressAt => (one) => {
  const range = carbonSteelFlowStress(one, carbon);
  if (range.state !== 'known') return { state: 'outside-validity', because: range.because.join('; ') };
  return { state: 'known', stress: factor * (range.least + share * (range.most - range.least)) };
};
