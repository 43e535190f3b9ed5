import { misaka, shida, type Deformation } from './flow-stress.ts';
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
  const answers = [
    { law: 'Misaka', answer: misaka(one, carbon) },
    { law: 'Shida', answer: shida(one, carbon) },
    ...(near(0.45) ? [{ law: 'Spittel C45', answer: spittel(one, SPITTEL_STEELS.c45) }] : []),
    ...(near(0.22) ? [{ law: 'Spittel C22', answer: spittel(one, SPITTEL_STEELS.c22) }] : []),
  ];
  const known = answers.flatMap(({ law, answer }) => (answer.state === 'known' ? [{ law, stress: answer.stress }] : []));
  if (known.length === 0) return { state: 'outside-validity', because: answers.flatMap(({ answer }) => (answer.state === 'known' ? [] : [answer.because])) };
  const least = Math.min(...known.map((one) => one.stress));
  const most = Math.max(...known.map((one) => one.stress));
  return { state: 'known', least, middle: (least + most) / 2, most, laws: known.map((one) => one.law) };
}
