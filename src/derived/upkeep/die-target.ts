import type { Quantity } from '../../methods/quantity/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { SettingTarget } from './setting-line.ts';

export type DieEnd = 'upper' | 'lower';

/**
 * How high a die should stand once the open jobs are done: what both were made with, shared as these jobs share it. A die that
 * no job replaces stays as it is, and one that is made anew makes good what the other has lost, as its drawing has it.
 * @param known looks a value up
 * @param jobs ids of the jobs that are still to be done
 * @returns undefined where a height is not known
 */
export function dieTarget(end: DieEnd, known: (key: string) => Quantity | undefined, jobs: ReadonlySet<string>, system: PrintSystem): SettingTarget | undefined {
  const other: DieEnd = end === 'upper' ? 'lower' : 'upper';
  const made = known(`${end}-die.height#as-made`);
  if (!jobs.has(`dies.new-${end}`)) {
    const stays = standing(end, known, jobs);
    return stays === undefined ? undefined : target(stays, 'worked-out', `No open job replaces it: it stays as it is${made === undefined ? '' : `; it was made ${printQuantity(made, system)} high`}.`);
  }
  if (made === undefined) return undefined;
  if (jobs.has(`dies.new-${other}`)) return target(made, 'as-made', 'Both dies are made anew, each as high as it was made.');
  const both = known(`${other}-die.height#as-made`);
  const rest = standing(other, known, jobs);
  if (both === undefined || rest === undefined) return undefined;
  const height: Quantity = { ...made, value: made.value + both.value - rest.value, uncertainty: Math.hypot(made.uncertainty, both.uncertainty, rest.uncertainty) };
  return target(height, 'worked-out', `As its drawing has it: both dies as made, less what the ${other} die stands.`);
}

/** Net height of a die that stays, on the plate that an open job puts under the lower one. */
function standing(end: DieEnd, known: (key: string) => Quantity | undefined, jobs: ReadonlySet<string>): Quantity | undefined {
  const net = known(`stack.${end}-net`);
  const plate = end === 'lower' && jobs.has('seat.fit-filler-plate') ? known('stack.filler-plate') : undefined;
  return net === undefined || plate === undefined ? net : { ...net, value: net.value + plate.value, uncertainty: Math.hypot(net.uncertainty, plate.uncertainty) };
}

const target = (height: Quantity, basis: SettingTarget['basis'], sentence: string): SettingTarget => ({ from: height, to: height, basis, sentence, sources: ['common-practice'] });
