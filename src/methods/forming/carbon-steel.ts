import { misaka, shida, type Deformation, type FlowStress } from './flow-stress.ts';
import { spittel, SPITTEL_STEELS } from './spittel.ts';

export type FlowStressRange =
  | {
      readonly state: 'known';
      /** Pa; least and most of the laws that hold, and the middle between them */
      readonly least: number;
      readonly middle: number;
      readonly most: number;
      readonly laws: readonly string[];
    }
  | { readonly state: 'outside-validity'; readonly because: readonly string[] };

/**
 * Flow stress of hot plain carbon steel by every independent law that holds for the conditions. The laws disagree by some 12 %
 * each way, and that is as well as it is known.
 * @param carbon share of the mass; the tables for C22 and C45 are used within 0.05 % of their own
 */
export function carbonSteelFlowStress(one: Deformation, carbon: number): FlowStressRange {
  const near = (percent: number): boolean => Math.abs(100 * carbon - percent) <= 0.05 + 1e-9;
  const laws: string[] = [];
  const because: string[] = [];
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  const hear = (law: string, answer: FlowStress): void => {
    if (answer.state !== 'known') {
      because.push(answer.because);
      return;
    }
    laws.push(law);
    least = Math.min(least, answer.stress);
    most = Math.max(most, answer.stress);
  };
  hear('Misaka', misaka(one, carbon));
  hear('Shida', shida(one, carbon));
  if (near(0.45)) hear('Spittel C45', spittel(one, SPITTEL_STEELS.c45));
  if (near(0.22)) hear('Spittel C22', spittel(one, SPITTEL_STEELS.c22));
  if (laws.length === 0) return { state: 'outside-validity', because };
  return { state: 'known', least, middle: (least + most) / 2, most, laws };
}
