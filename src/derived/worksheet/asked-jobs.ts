import type { Job, Knowledge } from '../../knowledge/index.ts';
import { isFault, type Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { chanceOfAny, drawOf, type Cause } from './cause.ts';
import { DOUBT } from './causes-of-readings.ts';
import { findingKey, insteadOf } from './cure-needs.ts';
import { needOf } from './need-of.ts';
import type { WorksheetJob } from './worksheet.ts';

export type Urgency = WorksheetJob['urgency'];

/** A job with what asks for it. */
export interface Chosen {
  readonly job: Job;
  readonly cures: readonly string[];
  readonly urgency: Urgency;
  readonly state: WorksheetJob['state'];
  readonly again?: string;
  /** What makes it doubtful that it is needed; none where it is certain. */
  readonly causes: readonly Cause[];
}

export const WEIGHT: Readonly<Record<Urgency, number>> = { watch: 0, limited: 1, 'stand-down': 2 };

/** Jobs that the findings ask for, that somebody entered progress for, and that a certain cause asks for. @param problems written to where a job is unknown */
export function jobsAsked(known: Known, findings: readonly Finding[], knowledge: Knowledge, causes: readonly Cause[], problems: string[]): readonly Chosen[] {
  const jobs = new Map(knowledge.jobs.map((job) => [job.id, job]));
  const cures = new Map<string, { cures: string[]; urgency: Urgency; certain: boolean }>();
  const doubtful = new Set(causes.map((cause) => cause.id));
  for (const finding of findings) {
    const { grade } = finding;
    if (!isFault(finding) || grade === 'sound' || grade === 'not-known' || grade === 'does-not-apply') continue;
    for (const id of finding.cures) {
      const held = cures.get(id) ?? { cures: [], urgency: 'watch', certain: false };
      held.cures.push(findingKey(finding));
      held.certain ||= !doubtful.has(`${findingKey(finding)}:${grade}`);
      if (WEIGHT[grade] > WEIGHT[held.urgency]) held.urgency = grade;
      cures.set(id, held);
    }
  }
  for (const id of Object.keys(known.progress)) if (!cures.has(id)) cures.set(id, { cures: [], urgency: 'watch', certain: true });
  for (const id of new Set(causes.flatMap((cause) => cause.jobs))) {
    const asking = causes.filter((cause) => cause.jobs.includes(id));
    if (chanceOfAny(asking.map(drawOf)) <= 1 - DOUBT || asking.every((cause) => insteadOf(id, cause.part, knowledge).some((other) => cures.has(other.id)))) continue;
    cures.set(id, { cures: cures.get(id)?.cures ?? [], urgency: asking.reduce((held, cause) => worst(held, cause.urgency), cures.get(id)?.urgency ?? 'watch'), certain: true });
  }
  return [...cures].flatMap(([id, { certain, ...one }]) => {
    const job = jobs.get(id);
    if (job === undefined) {
      problems.push(`A job is named that this version does not know: ${id}`);
      return [];
    }
    return job.families.includes(known.identity.family) ? [{ job, ...one, causes: certain ? [] : askingFor(id, causes, knowledge), ...stateOf(known, id, one.cures.length > 0) }] : [];
  });
}

/** The weightier of two. */
export const worst = (one: Urgency = 'watch', other: Urgency): Urgency => (WEIGHT[one] >= WEIGHT[other] ? one : other);

/** Causes that a job cures, itself or in the place of the job that they ask for. */
const askingFor = (id: string, causes: readonly Cause[], knowledge: Knowledge): readonly Cause[] =>
  causes.filter((cause) => cause.jobs.some((job) => job === id || insteadOf(job, cause.part, knowledge).some((other) => other.id === id)));

/** Jobs that only a cause asks for, and that nothing on the worksheet makes pointless. */
export function mayBeNeeded(known: Known, knowledge: Knowledge, causes: readonly Cause[], asked: readonly Chosen[]): readonly Chosen[] {
  const held = new Set(asked.map((one) => one.job.id));
  const wanted = new Map<string, Cause[]>();
  for (const cause of causes) {
    for (const id of cause.jobs) {
      if (held.has(id) || insteadOf(id, cause.part, knowledge).some((other) => held.has(other.id))) continue;
      wanted.set(id, [...(wanted.get(id) ?? []), cause]);
    }
  }
  return [...wanted].flatMap(([id, some]): readonly Chosen[] => {
    const job = knowledge.jobs.find((one) => one.id === id);
    if (job === undefined || !job.families.includes(known.identity.family) || needOf(some) === undefined) return [];
    return [{ job, cures: [], urgency: some.map((one) => one.urgency).reduce((a, b) => worst(a, b)), state: 'open', causes: some }];
  });
}

/** A finding is judged only on what was seen after a repair, so one that asks for a finished job asks for it again. */
function stateOf(known: Known, id: string, asked: boolean): Pick<Chosen, 'state' | 'again'> {
  const progress = known.progress[id];
  if (progress === undefined) return { state: 'open' };
  if (progress.state !== 'done' || !asked) return { state: progress.state };
  return { state: 'open', again: `Done on ${progress.when.slice(0, 10)}, and found again since.` };
}
