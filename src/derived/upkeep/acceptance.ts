import { GRADES, TRIAL_JOB, TRIAL_POINTS, type TrialPoint } from '../../knowledge/index.ts';
import { placeWords, type Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import type { AcceptanceInputs, AcceptancePoint } from './acceptance-point.ts';
import { strikeEnergy } from './strike-energy.ts';
import { strikeTest } from './strike-test.ts';

/** Whether the hammer is right again. */
export interface Acceptance {
  readonly verdict: 'accepted' | 'refused' | 'not-finished';
  readonly sentence: string;
  readonly points: readonly AcceptancePoint[];
  /** Only what was entered from this instant on counts; absent where no job was ever done. */
  readonly since?: string;
}

/**
 * Accepts or refuses a hammer by its trial run: one red refuses it, and one point not done keeps it from being accepted.
 * A matter of safety that stands the hammer down refuses it too, whatever the trial showed.
 */
export function acceptance(inputs: AcceptanceInputs): Acceptance {
  const since = inputs.since ?? lastRepair(inputs.known);
  const ran = lastRun(inputs.known);
  const points = [
    ...TRIAL_POINTS.map((point) => pointOf(inputs, point, since, point.afterRunning === true ? ran : undefined)),
    strikeTest(inputs.known, since, inputs.system ?? 'inch'),
    strikeEnergy(inputs, since),
    standsDown(inputs.findings),
  ];
  const red = points.filter((point) => point.state === 'red');
  const open = points.filter((point) => point.state === 'not-done');
  const verdict = red.length > 0 ? 'refused' : open.length > 0 ? 'not-finished' : 'accepted';
  const names = (some: readonly AcceptancePoint[]): string => some.map((point) => point.title.toLowerCase()).join('; ');
  const sentence = verdict === 'refused' ? refusedWords(red, inputs.findings) : verdict === 'not-finished' ? `The trial is not finished; still to be shown: ${names(open)}.` : 'Right again: every point of the trial is green.';
  return { verdict, sentence, points, ...(since === undefined ? {} : { since }) };
}

const STAND_DOWN = 'stand-down';

/** Which points failed, by their names, and what stands it down whatever the trial showed. */
function refusedWords(red: readonly AcceptancePoint[], findings: readonly Finding[]): string {
  const failed = red.filter((point) => point.id !== STAND_DOWN).map((point) => point.title.toLowerCase());
  const stops = findings.filter((finding) => finding.grade === 'stand-down').map((finding) => `${finding.title.toLowerCase()}${finding.shown === '' ? '' : ` (${finding.shown})`}`);
  return ['Not right yet.', ...(failed.length === 0 ? [] : [`Failed: ${failed.join('; ')}.`]), ...(stops.length === 0 ? [] : [`It stands down for: ${[...new Set(stops)].join('; ')}.`])].join(' ');
}

const latest = (instants: readonly string[]): string | undefined => [...instants].sort().at(-1);

const lastRepair = (known: Known): string | undefined => latest(Object.values(known.progress).filter((one) => one.state === 'done' && one.job !== TRIAL_JOB).map((one) => one.when));

/** When it was last seen running. */
const lastRun = (known: Known): string | undefined => latest([
  ...Object.values(known.looks).filter((look) => look.key.startsWith('running.')).map((look) => look.when),
  ...Object.entries(known.history).filter(([key]) => key.startsWith('running.')).flatMap(([, past]) => past.slice(-1).map((one) => one.when)),
]);

function pointOf({ known, values, findings }: AcceptanceInputs, point: TrialPoint, since: string | undefined, ran: string | undefined): AcceptancePoint {
  const all = findings.filter((finding) => finding.criterion === point.criterion && finding.grade !== 'does-not-apply');
  const common = { id: point.id, title: point.title, source: point.source };
  const whenOf = (finding: Finding): string => latest(finding.from.flatMap((key) => known.looks[key]?.when ?? values[key]?.when ?? [])) ?? '';
  const judged = all.filter((finding) => finding.grade !== 'not-known' && (since === undefined || whenOf(finding) >= since));
  const red = judged.find((finding) => !isGreen(finding, point));
  if (red !== undefined) return { ...common, state: 'red', reason: red.reason, shown: shownOf(red), missing: [] };
  const open = all.filter((finding) => !judged.includes(finding));
  const missing = [...new Set(open.flatMap((finding) => (finding.missing.length > 0 ? finding.missing : finding.from)))];
  const late = ran === undefined ? [] : judged.filter((finding) => whenOf(finding) < ran);
  if (late.length > 0) return { ...common, state: 'not-done', reason: 'Looked at before the running, not after it.', shown: late.map(shownOf).join('; '), missing: [...new Set(late.flatMap((finding) => finding.from))] };
  if (judged.length === 0 || open.length > 0) return { ...common, state: 'not-done', reason: since === undefined || open.every((finding) => finding.grade === 'not-known') ? 'Not looked at yet.' : 'Not looked at since the repair.', shown: judged.map(shownOf).join('; '), missing };
  const watch = judged.find((finding) => finding.grade === 'watch');
  return { ...common, state: 'green', reason: watch === undefined ? 'As it should be.' : `Good enough, and to be watched: ${watch.reason}`, shown: judged.map(shownOf).join('; '), missing: [] };
}

const isGreen = (finding: Finding, point: TrialPoint): boolean => {
  const grade = GRADES.findIndex((one) => one === finding.grade);
  return grade >= 0 && grade <= GRADES.indexOf(point.greenUpTo);
};

const shownOf = (finding: Finding): string => (finding.at === undefined ? finding.shown : `${placeWords(finding).slice(2)}: ${finding.shown}`);

function standsDown(findings: readonly Finding[]): AcceptancePoint {
  const down = findings.filter((finding) => finding.grade === 'stand-down');
  return {
    id: STAND_DOWN, title: down.length === 0 ? 'Nothing else stands it down' : 'Something else stands it down', state: down.length > 0 ? 'red' : 'green', shown: '', missing: [], source: 'common-practice',
    reason: down.length === 0 ? 'No finding stands the hammer down.' : down.map((finding) => `${finding.title}: ${finding.reason}`).join(' '),
  };
}
