import { uncertainSchedule, type UncertainTask } from '../../methods/ordering/index.ts';
import type { Crew } from './crew-plan.ts';
import { leadOf } from './lead-of.ts';
import type { WorksheetJob } from './worksheet.ts';

/** One link of the critical path. */
export interface CriticalStep {
  readonly kind: 'work' | 'waiting for parts';
  readonly job: string;
  readonly title: string;
  readonly days: number;
}

/** The longest chain of work and waiting, hands enough for everything at once. */
export interface CriticalPath {
  readonly steps: readonly CriticalStep[];
  /** Expected length, days. */
  readonly days: number;
  /** Standard deviation of the chain, days. The whole may be somewhat longer: another chain may overtake it. */
  readonly deviation: number;
  /** Days that each job may slip without delaying the whole; 0 on the path. */
  readonly slack: Readonly<Record<string, number>>;
}

const LEAD = 'lead:';

/** Critical path over the open jobs, with a wait before each job whose parts take time to come. Their order has no rings. */
export function criticalPathOf(jobs: readonly WorksheetJob[], crew: Crew): CriticalPath {
  const ids = new Set(jobs.map((job) => job.job));
  const day = (hours: number, spent = 0): number => Math.max(0, hours - spent) / crew.hoursPerDay;
  const tasks = jobs.flatMap((job): readonly UncertainTask[] => {
    const after = job.after.filter((before) => ids.has(before));
    const spent = job.hoursSpent;
    const work = { id: job.job, least: day(job.hours.least, spent), likely: day(job.hours.likely, spent), most: day(job.hours.most, spent) };
    const lead = leadOf(job);
    if (lead === undefined) return [{ ...work, after }];
    const { least, likely, most } = lead;
    return [{ id: LEAD + job.job, least, likely, most, after: [] }, { ...work, after: [...after, LEAD + job.job] }];
  });
  const plan = uncertainSchedule(tasks);
  if (plan.state === 'cycle') throw new Error(`a worksheet's jobs wait in a ring, and its order should have let go of it: ${plan.cycle.join(', ')}`);
  const byId = new Map(plan.schedule.tasks.map((task) => [task.id, task]));
  const titles = new Map(jobs.map((job) => [job.job, job.title]));
  const steps = plan.schedule.critical.map((id): CriticalStep => {
    const task = byId.get(id);
    const job = id.startsWith(LEAD) ? id.slice(LEAD.length) : id;
    return { kind: id === job ? 'work' : 'waiting for parts', job, title: titles.get(job) ?? job, days: task === undefined ? 0 : task.earliestFinish - task.earliestStart };
  });
  return { steps, days: plan.expected, deviation: Math.sqrt(plan.variance), slack: Object.fromEntries(jobs.map((job) => [job.job, byId.get(job.job)?.slack ?? 0])) };
}
