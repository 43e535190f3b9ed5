import { GAP_JOB, ROOM_JOB, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import { stackLookup } from '../stack/index.ts';
import type { Known } from '../survey/index.ts';
import { worst, type Chosen } from './asked-jobs.ts';
import { changesStack, gapPlan } from './gap-plan.ts';
import { beforeTheDies } from './gap-words.ts';
import { isOpen } from './job-entry.ts';

/**
 * Adds what no finding asks for and the chosen jobs do: the ram is moved clear of a stack that grows, before what raises it
 * goes in, and the gap is set again at the end.
 */
export function withRoom(known: Known, findings: readonly Finding[], knowledge: Knowledge, asked: readonly Chosen[]): readonly Chosen[] {
  const jobs = new Set(asked.filter(isOpen).map((one) => one.job.id));
  const plan = gapPlan({ known, findings, lookup: stackLookup(known), jobs });
  if (!changesStack(plan) || plan.movedOn !== undefined) return asked;
  const changing = new Set(plan.stack.changing.map((one) => one.job));
  const urgency = asked.filter((one) => changing.has(one.job.id)).reduce<Chosen['urgency']>((held, one) => worst(held, one.urgency), 'watch');
  const added = (id: string, change: Partial<Chosen['job']>): readonly Chosen[] => {
    const job = knowledge.jobs.find((one) => one.id === id);
    return job === undefined || asked.some((one) => one.job.id === id) ? [] : [{ job: { ...job, ...change }, cures: [], urgency, state: 'open', causes: [] }];
  };
  const first = beforeTheDies(plan, known.identity.family, 'inch');
  const plateWaits = plan.waiting.includes('seat.fit-filler-plate');
  const room = first === '' ? [] : added(ROOM_JOB, { words: `${first} Then one whole turn by hand, and the gap is set when they are in.`, ...(plateWaits ? {} : { stage: stageOf(asked, plan.waiting) }) });
  // The plate alone leaves room enough: it does not wait until the dies are there.
  const held = plateWaits ? asked : asked.map((one) => (plan.waiting.includes(one.job.id) ? one : { ...one, job: { ...one.job, after: one.job.after.filter((before) => before.job !== ROOM_JOB) } }));
  return [...held, ...room, ...added(GAP_JOB, {})];
}

/** The step of the first job that waits for it. */
const stageOf = (asked: readonly Chosen[], waiting: readonly string[]): number => Math.min(...asked.filter((one) => waiting.includes(one.job.id)).map((one) => one.job.stage));
