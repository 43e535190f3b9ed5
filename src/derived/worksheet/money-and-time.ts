import { nextUniform, normalQuantile, seeded } from '../../methods/chance/index.ts';
import { PRICE_DOUBT, SHARED_OVERRUN, TRIAL_JOB, USUAL_CREW, type Knowledge, type Span } from '../../knowledge/index.ts';
import { planDays, type Crew, type PlannedJob } from './crew-plan.ts';
import { leadOf, unaskedWaits } from './lead-of.ts';
import { criticalPathOf, type CriticalPath } from './longest-way.ts';
import { driversOf, meanOf, rangeOf, type Driver, type Range } from './spread.ts';
import { SpanTables } from './quantile-table.ts';
import { isOpen } from './job-entry.ts';
import { needsDrawn } from './needs-drawn.ts';
import type { BuyLine } from './to-buy.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

export interface MoneyTimeOptions {
  readonly crew?: Partial<Crew>;
  /** 10 000 unless said. */
  readonly draws?: number;
}

/** What the open jobs cost and last, with the doubt and what makes it. */
export interface MoneyAndTime {
  readonly currency: string;
  readonly draws: number;
  readonly seed: number;
  readonly cost: Range;
  /** Hours of work, whoever does it. */
  readonly hours: Range;
  /** Days from the start to the end of the trial with this crew, parts ordered on the first day. */
  readonly days: Range;
  readonly costDrivers: readonly Driver[];
  /** The same by what is bought: parts over all jobs that use them, outside work, whole prices. */
  readonly boughtDrivers: readonly Driver[];
  readonly hourDrivers: readonly Driver[];
  /** Work of others whose wait nobody has asked about: the days count none of it. */
  readonly unasked: readonly BuyLine[];
  /** The longest chain of work and waiting at expected times, hands enough for everything at once. */
  readonly critical: CriticalPath;
  readonly crew: Crew;
  /** Jobs that are needed only by chance, those not asked for yet among them, with what they come to on average. */
  readonly doubtful: readonly { readonly job: string; readonly title: string; readonly chance: number; readonly cost: number; readonly hours: number; readonly asked: boolean }[];
  /** Jobs that want more skill than the crew has: somebody else does them. */
  readonly byOthers: readonly { readonly job: string; readonly title: string; readonly skill: number }[];
  readonly helpers: { readonly most: number; readonly hours: number; readonly jobs: readonly string[] };
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

interface Bought {
  readonly id: string;
  readonly words: string;
  readonly price: Span;
  /** How many of it each job takes, by index of the job. */
  readonly uses: readonly { readonly job: number; readonly count: number }[];
}

/**
 * Cost, hours and days of the open jobs by a seeded Monte Carlo: three-point estimates as beta distributions, overruns
 * correlated through one shared score (the hammer is worse, or better, than it looked), the price of one part drawn once
 * for all jobs that use it; whether a doubtful job is needed at all by its chance. A driver's share is the covariance of its part of the sum with the sum, over the variance of
 * the sum; the shares add up to 1.
 * @param seed 0 to 2^53 - 1
 */
export function moneyAndTime(worksheet: Worksheet, knowledge: Knowledge, seed: number, options: MoneyTimeOptions = {}): MoneyAndTime {
  const { crew, problems } = crewOf(options.crew);
  const draws = Math.max(100, Math.round(options.draws ?? 10_000));
  const asked = worksheet.jobs.filter(isOpen);
  const mayBe = worksheet.mayBe ?? [];
  const jobs: readonly WorksheetJob[] = [...asked, ...mayBe];
  const bought = boughtFor(jobs);
  const place = new Map(jobs.map((job, index) => [job.job, index]));
  const after = jobs.map((job) => [...job.after.flatMap((before) => place.get(before) ?? []), ...(job.job === TRIAL_JOB ? mayBe.map((_, index) => asked.length + index) : [])]);
  const isNeeded = needsDrawn(asked, mayBe, seed);
  const leads = jobs.map((job) => leadOf(job) ?? NONE);
  const tables = new SpanTables();
  const generator = seeded(seed, 'money-and-time');
  const shared = Math.sqrt(SHARED_OVERRUN);
  const own = Math.sqrt(1 - SHARED_OVERRUN);
  const costs = jobs.map(() => new Float64Array(draws));
  const hours = jobs.map(() => new Float64Array(draws));
  const things = bought.map(() => new Float64Array(draws));
  const days = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    const common = shared * normalQuantile(nextUniform(generator));
    const score = (): number => common + own * normalQuantile(nextUniform(generator));
    const needed = isNeeded();
    for (const [index, thing] of bought.entries()) {
      const price = tables.at(thing.price, score());
      for (const { job, count } of thing.uses) {
        if (!needed[job]) continue;
        costs[job]![draw]! += price * count;
        things[index]![draw]! += price * count;
      }
    }
    const planned = jobs.map((job, index): PlannedJob => {
      const whole = tables.at(job.hours, score());
      const left = needed[index] ? Math.max(0, whole - (job.hoursSpent ?? 0)) : 0;
      const lead = tables.at(leads[index]!, score());
      hours[index]![draw] = left;
      return { days: left / crew.hoursPerDay, lead: needed[index] ? lead : 0, after: after[index]!, outside: job.skill > crew.skill };
    });
    days[draw] = planDays(planned, crew.hands);
  }
  /** Names the job where a thing is bought only for what may be needed: what is found sound may still be in doubt. */
  const onlyIf = (words: string, uses: readonly number[]): string => (uses.some((index) => index < asked.length) ? words : `${words}, if it is needed: ${[...new Set(uses.map((index) => jobs[index]!.title))].join('; ')}`);
  const helped = asked.filter((job) => job.helpers > 0);
  return {
    currency: worksheet.currency ?? 'unit', draws, seed, cost: rangeOf(costs, draws), hours: rangeOf(hours, draws), days: rangeOf([days], draws),
    costDrivers: driversOf(costs, jobs.map((job) => ({ id: job.job, words: job.title })), draws),
    boughtDrivers: driversOf(things, bought.map((thing) => ({ id: thing.id, words: onlyIf(thing.words, thing.uses.map((use) => use.job)) })), draws),
    hourDrivers: driversOf(hours, jobs.map((job, index) => ({ id: job.job, words: index < asked.length ? job.title : `${job.title}, if it is needed` })), draws),
    unasked: unaskedWaits(worksheet), critical: criticalPathOf(asked, crew),
    doubtful: jobs.flatMap((job, index) => (job.need === undefined ? [] : [{ job: job.job, title: job.title, chance: job.need.chance, cost: meanOf(costs[index]!), hours: meanOf(hours[index]!), asked: index < asked.length }])),
    crew, byOthers: asked.filter((job) => job.skill > crew.skill).map(({ job, title, skill }) => ({ job, title, skill })),
    helpers: { most: Math.max(0, ...helped.map((job) => job.helpers)), hours: helped.reduce((sum, job) => sum + job.helpers * job.hours.likely, 0), jobs: helped.map((job) => job.job) },
    notes: notesOf(worksheet, knowledge, asked, crew), problems: [...worksheet.problems, ...problems],
  };
}

const NONE: Span = { least: 0, likely: 0, most: 0 };

function crewOf(asked: Partial<Crew> = {}): { readonly crew: Crew; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const crew = { ...USUAL_CREW, ...asked };
  const hands = Number.isInteger(crew.hands) && crew.hands >= 1 ? crew.hands : USUAL_CREW.hands;
  const hoursPerDay = crew.hoursPerDay > 0 && crew.hoursPerDay <= 24 ? crew.hoursPerDay : USUAL_CREW.hoursPerDay;
  if (hands !== crew.hands) problems.push(`Hands are a whole number from 1; reckoned with ${hands}: ${crew.hands}`);
  if (hoursPerDay !== crew.hoursPerDay) problems.push(`A working day has more than 0 and at most 24 hours; reckoned with ${hoursPerDay}: ${crew.hoursPerDay}`);
  return { crew: { hands, skill: crew.skill, hoursPerDay }, problems };
}

/** What is paid for, each thing once however many jobs use it. A price heard is doubted by its kind. */
function boughtFor(jobs: readonly WorksheetJob[]): readonly Bought[] {
  const things = new Map<string, { id: string; words: string; price: Span; uses: { job: number; count: number }[] }>();
  const buy = (id: string, words: string, price: Span, job: number, count: number): void => {
    const held = things.get(id) ?? { id, words, price, uses: [] };
    held.uses.push({ job, count });
    things.set(id, held);
  };
  jobs.forEach((job, index) => {
    if (job.wholePrice !== undefined) return buy(job.job, job.title, doubted(job.cost, job.wholePrice), index, 1);
    for (const part of job.parts) {
      const each = { least: part.cost.least / part.quantity, likely: part.cost.likely / part.quantity, most: part.cost.most / part.quantity };
      buy(part.id, part.words, part.heard ? doubted(each, part.source) : each, index, part.quantity);
    }
    if (job.outside !== undefined) buy(`${job.job}:outside`, `${job.outside.words}: ${job.title}`, job.outside.cost, index, 1);
  });
  return [...things.values()];
}

function doubted(span: Span, kind: string): Span {
  const share = PRICE_DOUBT[kind as keyof typeof PRICE_DOUBT] ?? 0;
  return { least: span.least * (1 - share), likely: span.likely, most: span.most * (1 + share) };
}

function notesOf(worksheet: Worksheet, knowledge: Knowledge, jobs: readonly WorksheetJob[], crew: Crew): readonly string[] {
  const guessed = jobs.flatMap((job) => (job.wholePrice === undefined ? job.parts.filter((part) => !part.heard) : []));
  const ids = new Set(guessed.map((part) => part.id));
  const overrun = jobs.filter((job) => (job.hoursSpent ?? 0) > job.hours.most).map((job) => job.title);
  return [
    ...(worksheet.prices?.notes ?? []),
    ...(jobs.some((job) => job.need !== undefined) || (worksheet.mayBe ?? []).length > 0 ? ['Whether a doubtful job is needed is drawn by its chance; findings that rest on the same reading hold or fail together.'] : []),
    ...(ids.size === 0 ? [] : [`No price was heard for ${ids.size} of the parts: their ranges are from knowledge version ${knowledge.version} and only estimates.`]),
    ...(overrun.length === 0 ? [] : [`Took longer than their range already, and what is left of them is not known: ${overrun.join(', ')}`]),
    `Reckoned with ${crew.hands === 1 ? 'one pair' : `${crew.hands} pairs`} of hands, ${crew.hoursPerDay} hours a day, and all parts ordered on the first day.`,
  ];
}
