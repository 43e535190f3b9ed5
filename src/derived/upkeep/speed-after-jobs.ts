import type { Quantity } from '../../methods/quantity/index.ts';
import { isFault } from '../condition/index.ts';
import type { SettingInputs, SettingLine } from './setting-line.ts';
import { motorShare } from './setting-limits.ts';

const PER_MINUTE = 60;
const MOTOR_JOB = 'motor.renew';

/**
 * The speed that the hammer runs at by itself, with the pulleys as they are, once an open job has ended the slip of its belt: counted
 * rate x (1 - usual slip) / (1 - slip as counted). Nobody sets it, so somebody has to be told.
 * @param asFound blows a second, as counted
 * @returns with what to mind before it runs; undefined where the slip is not known, is usual, or stays
 */
export function speedAfterJobs(inputs: SettingInputs, asFound: Quantity): Pick<SettingLine, 'afterJobs' | 'first'> | undefined {
  const { values, findings = [], jobs } = inputs;
  const known = (key: string): Quantity | undefined => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  const [slip, usual] = [known('drive.slip'), known('practice.belt-slip')];
  const slips = findings.find((finding) => finding.criterion === 'drive.slip');
  if (jobs === undefined || slip === undefined || usual === undefined || slips === undefined || !isFault(slips) || !slips.cures.some((job) => jobs.has(job))) return undefined;
  if (slip.value <= usual.value + 2 * usual.uncertainty || slip.value >= 1) return undefined;
  const ratio = (1 - usual.value) / (1 - slip.value);
  const then: Quantity = { ...asFound, value: asFound.value * ratio };
  const count = (rate: number): number => Math.round(rate * PER_MINUTE);
  const percent = (share: number): string => `${Math.round(100 * share)} %`;
  const sentence = `The belt slips ${percent(slip.value)} today. One that slips no more than the usual ${percent(usual.value)} runs the hammer at ${count(then.value)} blows/min with the pulleys as they are, ${count(then.value) - count(asFound.value)} faster than today.`;
  return { afterJobs: then, first: [sentence, ...motorWords(inputs, jobs, ratio)] };
}

/** What that asks of the motor: its current rises with the speed at the least. */
function motorWords(inputs: SettingInputs, jobs: ReadonlySet<string>, ratio: number): readonly string[] {
  const share = motorShare(inputs);
  if (share === undefined || share * ratio <= 1) return [];
  const what = `The motor that is there would then draw ${Math.round(100 * share * ratio)} % of its full-load current at the least`;
  return [jobs.has(MOTOR_JOB) ? `${what}: the larger motor goes on before the hammer runs with that belt. Until it does, no longer and no deeper than the limits card says, and an eye on the ammeter.` : `${what}: find what drags, or fit a larger motor, before the hammer runs with that belt.`];
}
