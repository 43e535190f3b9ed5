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
  const run = lastRun(inputs.known);
  const ran = run !== undefined && (since === undefined || run >= since) ? run : undefined;
  const points = [
    ...TRIAL_POINTS.map((point) => pointOf(inputs, point, since, ran)),
    strikeTest(inputs.known, since, inputs.system ?? 'inch'),
    strikeEnergy(inputs, since),
    standsDown(inputs.findings),
  ];
  const red = points.filter((point) => point.state === 'red');
  const open = points.filter((point) => point.state === 'not-done');
  const amber = points.filter((point) => point.state === 'amber');
  const verdict = red.length > 0 ? 'refused' : open.length > 0 ? 'not-finished' : 'accepted';
  const names = (some: readonly AcceptancePoint[]): string => some.map((point) => point.title.toLowerCase()).join('; ');
  const sentence = verdict === 'refused' ? refusedWords(red, inputs.findings) : verdict === 'not-finished' ? `The trial is not finished; still to be shown: ${names(open)}.` : amber.length === 0 ? 'Right again: every point of the trial is green.' : `Right again, and to be watched: ${names(amber)}. Every other point of the trial is green.`;
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

/** When it was last seen running by somebody who wrote it down; what was only told shows no day. */
const lastRun = (known: Known): string | undefined => latest([
  ...Object.values(known.looks).filter((look) => look.key.startsWith('running.') && look.standing !== 'told').map((look) => look.when),
  ...Object.values(known.values).filter((value) => value.key.startsWith('running.') && value.standing !== 'told').flatMap((value) => value.when ?? []),
]);

/** True for a look that shows how the running left it: on the same day, and not before it. Another day has had its own causes. */
const isAfter = (when: string, ran: string): boolean => when >= ran && when.slice(0, 10) === ran.slice(0, 10);

function pointOf({ known, values, findings }: AcceptanceInputs, point: TrialPoint, since: string | undefined, ran: string | undefined): AcceptancePoint {
  const all = findings.filter((finding) => finding.criterion === point.criterion && finding.grade !== 'does-not-apply');
  const common = { id: point.id, title: point.title, source: point.source };
  const whenOf = (finding: Finding): string => latest(finding.from.flatMap((key) => known.looks[key]?.when ?? values[key]?.when ?? [])) ?? '';
  const judged = all.filter((finding) => finding.grade !== 'not-known' && (since === undefined || whenOf(finding) >= since));
  const red = judged.find((finding) => !isGreen(finding, point));
  if (red !== undefined) return { ...common, state: 'red', reason: red.reason, shown: shownOf(red), missing: [] };
  const open = all.filter((finding) => !judged.includes(finding));
  const missing = [...new Set(open.flatMap((finding) => (finding.missing.length > 0 ? finding.missing : finding.from)))];
  const late = point.afterRunning !== true || ran === undefined ? [] : judged.filter((finding) => !isAfter(whenOf(finding), ran));
  if (point.afterRunning === true && ran === undefined && judged.length > 0) return { ...common, state: 'not-done', reason: since === undefined ? 'Looked at, and nobody has seen it run.' : 'Looked at, and nobody has seen it run since the repair.', shown: judged.map(shownOf).join('; '), missing: [...new Set(judged.flatMap((finding) => finding.from))] };
  if (late.length > 0) return { ...common, state: 'not-done', reason: late.some((finding) => whenOf(finding) < ran!) ? 'Looked at before the running, not after it.' : 'Looked at on another day than it ran.', shown: late.map(shownOf).join('; '), missing: [...new Set(late.flatMap((finding) => finding.from))] };
  if (judged.length === 0 || open.length > 0) return { ...common, state: 'not-done', reason: since === undefined || open.every((finding) => finding.grade === 'not-known') ? 'Not looked at yet.' : 'Not looked at since the repair.', shown: judged.map(shownOf).join('; '), missing };
  const watch = judged.find((finding) => finding.grade === 'watch');
  return { ...common, state: watch === undefined ? 'green' : 'amber', reason: watch === undefined ? 'As it should be.' : `Good enough, and to be watched: ${watch.reason}`, shown: judged.map(shownOf).join('; '), missing: [] };
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
