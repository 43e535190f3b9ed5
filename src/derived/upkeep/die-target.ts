import type { Quantity } from '../../methods/quantity/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import { GRIND_JOB, heightAfter, standing, type DieEnd, type Lookup } from '../stack/index.ts';
import type { SettingTarget } from './setting-line.ts';

/**
 * How high a die should stand once the open jobs are done: what both were made with, shared as these jobs share it. A die that
 * no job replaces stays as it is, and one that is made anew makes good what the other has lost, as its drawing has it.
 * @param known looks a value up
 * @param jobs ids of the jobs that are still to be done
 * @returns undefined where a height is not known
 */
export function dieTarget(end: DieEnd, known: Lookup, jobs: ReadonlySet<string>, system: PrintSystem): SettingTarget | undefined {
  const other: DieEnd = end === 'upper' ? 'lower' : 'upper';
  const made = known(`${end}-die.height#as-made`);
  if (!jobs.has(`dies.new-${end}`)) {
    const stays = standing(end, known, jobs);
    if (stays !== undefined && jobs.has(GRIND_JOB)) return ground(end, stays, known, system);
    return stays === undefined ? undefined : target(stays, 'worked-out', `No open job replaces it: it stays as it is${made === undefined ? '' : `; it was made ${printQuantity(made, system)} high`}.`);
  }
  const height = heightAfter(end, known, jobs);
  if (height === undefined) return undefined;
  return jobs.has(`dies.new-${other}`) ? target(height, 'as-made', 'Both dies are made anew, each as high as it was made.') : target(height, 'worked-out', `As its drawing has it: both dies as made, less what the ${other} die stands${jobs.has(GRIND_JOB) && known(`${other}-die.hollow`) !== undefined ? ' once it is ground by its hollow' : ''}.`);
}

/** A face that an open job grinds loses its hollow at the least: how high the die then stands is read on it. */
function ground(end: DieEnd, stays: Quantity, known: Lookup, system: PrintSystem): SettingTarget {
  const hollow = known(`${end}-die.hollow`);
  const most: Quantity = { ...stays, value: stays.value - (hollow?.value ?? 0), uncertainty: Math.hypot(stays.uncertainty, hollow?.uncertainty ?? 0) };
  const less = hollow === undefined || hollow.value === 0 ? 'a few thousandths' : `${printQuantity(hollow, system)}, its hollow, at the least`;
  return { to: most, basis: 'worked-out', ground: true, sentence: `An open job grinds its face and takes off ${less}. Read it at all four corners when it comes back, within ${printQuantity(CORNERS_ALIKE, system)} of one another; the gap is set on that.`, sources: ['common-practice'] };
}

/** How alike the corners of a ground die stand, m: 5 thou. */
const CORNERS_ALIKE: Quantity = { dimension: 'length', value: 5 * 0.0000254, uncertainty: 0 };

const target = (height: Quantity, basis: SettingTarget['basis'], sentence: string): SettingTarget => ({ from: height, to: height, basis, sentence, sources: ['common-practice'] });
