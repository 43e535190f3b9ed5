import type { Entry } from '../../entries/index.ts';
import { needsRun } from '../../hammer/index.ts';
import { AFTER_REPAIR_HOURS, MEASURE_MONTHS, TRIAL_JOB, UPKEEP_TASKS, type UpkeepTask } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { dayNumber, daysLater, monthsLater } from './calendar-day.ts';
import { hoursRun, type HoursRun } from './hours-run.ts';

/** Something that has to be done again, and when. */
export interface DueItem {
  readonly task: string;
  readonly title: string;
  readonly words: string;
  readonly state: 'overdue' | 'due' | 'ahead' | 'each-session';
  /** Date by the calendar, or the date on which the hours will be run at the usual use, whichever is the earlier. */
  readonly dueOn?: string;
  /** Running time left until it is due, s; below nought once it is past. */
  readonly timeLeft?: number;
  /** When it was last done; absent where the log does not say. */
  readonly last?: string;
  /** Why then, one sentence. */
  readonly because: string;
  readonly source: string;
}

export interface UpkeepPlan {
  /** What is due first comes first. */
  readonly items: readonly DueItem[];
  /** Date of the next full measuring, and the readings that are oldest by then. */
  readonly nextSurvey: { readonly on: string; readonly because: string; readonly oldest: readonly string[] };
  /** s in a day; absent where the log does not tell the use yet. */
  readonly usePerDay?: number;
}

const HOUR = 3_600;
/** Days before a date from which a thing counts as due rather than ahead. */
const SOON_DAYS = 14;

/** What is due by hours and by dates. @param asOf the instant of asking, ISO 8601 */
export function upkeepPlan(known: Known, entries: readonly Entry[], asOf: string): UpkeepPlan {
  const use = hoursRun(entries, asOf);
  const today = asOf.slice(0, 10);
  const start = known.visits[0]?.date ?? today;
  const items = [...UPKEEP_TASKS.map((task) => itemOf(known, task, use, today, start, asOf)), ...afterRepair(known, use, today, asOf)];
  const survey = nextSurvey(known, start);
  const measure = stateOn(survey.on, today);
  items.push({ task: 'full-measuring', title: 'Full measuring', words: 'Every place that was measured before, with the same tools.', state: measure, dueOn: survey.on, because: survey.because, source: 'common-practice' });
  const rank = { overdue: 0, due: 1, ahead: 2, 'each-session': 3 } as const;
  items.sort((a, b) => rank[a.state] - rank[b.state] || ((a.dueOn ?? '9') < (b.dueOn ?? '9') ? -1 : (a.dueOn ?? '9') > (b.dueOn ?? '9') ? 1 : 0));
  return { items, nextSurvey: survey, ...(use.perDay === undefined ? {} : { usePerDay: use.perDay }) };
}

function itemOf(known: Known, task: UpkeepTask, use: HoursRun, today: string, start: string, asOf: string): DueItem {
  const last = lastDone(known, task);
  const common = { task: task.id, title: task.title, words: task.words, source: task.source, ...(last === undefined ? {} : { last }) };
  if (task.eachSession === true) return { ...common, state: 'each-session', because: 'At every session, before the motor is switched on.' };
  const from = last ?? start;
  const timeLeft = task.hours === undefined ? undefined : task.hours * HOUR - (use.until(asOf) - use.until(last ?? `${start}T00:00:00Z`));
  const byMonths = task.months === undefined ? undefined : monthsLater(from, task.months);
  const byHours = timeLeft === undefined ? undefined : dateByHours(timeLeft, use, today);
  const dueOn = [byMonths, byHours].filter((date) => date !== undefined).sort()[0];
  const rhythm = [task.hours === undefined ? '' : `${task.hours} hours`, task.months === undefined ? '' : `${task.months} months`].filter((words) => words !== '').join(' or ');
  return {
    ...common, state: timeLeft !== undefined && timeLeft <= 0 ? 'overdue' : stateOn(dueOn ?? today, today), ...(dueOn === undefined ? {} : { dueOn }), ...(timeLeft === undefined ? {} : { timeLeft }),
    because: `Every ${rhythm}; ${last === undefined ? `not in the log, so counted from ${start}` : `last on ${last.slice(0, 10)}`}.`,
  };
}

/** All looks taken again, or one of the jobs done again. */
function lastDone(known: Known, task: UpkeepTask): string | undefined {
  const looks = (task.doneBy.looks ?? []).map((id) => Object.values(known.looks).filter((look) => look.look === id).map((look) => look.when).sort()[0]);
  if (looks.length > 0) return looks.includes(undefined) ? undefined : looks.flatMap((when) => when ?? []).sort()[0];
  return (task.doneBy.jobs ?? []).flatMap((job) => { const progress = known.progress[job]; return progress?.state === 'done' ? [progress.when] : []; }).sort().at(-1);
}

/** After a repair keys and bolts are tried again at set hours; a look taken after that many hours settles it. */
function afterRepair(known: Known, use: HoursRun, today: string, asOf: string): readonly DueItem[] {
  const keys = known.looks['keys.secure'];
  const looked = keys === undefined ? undefined : use.until(keys.when);
  const now = use.until(asOf);
  const open = Object.values(known.progress).filter((one) => one.state === 'done' && one.job !== TRIAL_JOB).flatMap((one) => {
    const repaired = use.until(one.when);
    const settled = (hours: number): boolean => looked !== undefined && keys !== undefined && keys.when > one.when && looked >= repaired + hours * HOUR - 1;
    const hours = AFTER_REPAIR_HOURS.find((step) => !settled(step));
    return hours === undefined ? [] : [{ when: one.when, hours, timeLeft: repaired + hours * HOUR - now }];
  });
  const [next] = open.sort((a, b) => a.timeLeft - b.timeLeft);
  if (next === undefined) return [];
  const dueOn = dateByHours(next.timeLeft, use, today);
  return [{
    task: 'after-repair', title: `Keys and bolts ${next.hours} h after repair`, words: 'Lock off, ram blocked: try every key and nut that the work touched, and those beside it.',
    state: next.timeLeft <= 0 ? 'overdue' : dueOn === undefined ? 'ahead' : stateOn(dueOn, today), timeLeft: next.timeLeft, ...(dueOn === undefined ? {} : { dueOn }),
    because: `After ${AFTER_REPAIR_HOURS.join(', ')} hours of running from the repair of ${next.when.slice(0, 10)}.`, source: 'common-practice',
  }];
}

function dateByHours(timeLeft: number, use: HoursRun, today: string): string | undefined {
  if (timeLeft <= 0) return today;
  if (use.perDay === undefined) return undefined;
  const days = Math.floor(timeLeft / use.perDay);
  // Beyond some years the use of today says nothing.
  return days > 3_650 ? undefined : daysLater(today, days);
}

const stateOn = (date: string, today: string): 'overdue' | 'due' | 'ahead' => {
  const days = dayNumber(date) - dayNumber(today);
  return days < 0 ? 'overdue' : days <= SOON_DAYS ? 'due' : 'ahead';
};

/** A year after the oldest reading that still counts, of those that are taken while it stands. */
function nextSurvey(known: Known, start: string): UpkeepPlan['nextSurvey'] {
  const all = Object.entries(known.history).flatMap(([key, past]) => { const last = past.at(-1); return last === undefined ? [] : [{ key, date: last.when.slice(0, 10) }]; });
  // What only a running hammer shows is read on another day, and no survey of a hammer at rest makes it newer.
  const atRest = all.filter(({ key }) => !needsRun(key.split('@')[0] ?? key));
  const newest = atRest.length > 0 ? atRest : all;
  const oldest = newest.map((one) => one.date).sort()[0] ?? start;
  return {
    on: newest.length === 0 ? start : monthsLater(oldest, MEASURE_MONTHS), oldest: newest.filter((one) => one.date === oldest).map((one) => one.key).sort(),
    because: newest.length === 0 ? 'Nothing was measured yet.' : `${MEASURE_MONTHS} months after the oldest reading that still counts and that is taken at rest, of ${oldest}.`,
  };
}
