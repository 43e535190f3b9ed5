import { inOrder } from '../../methods/ordering/index.ts';
import type { Job, Knowledge, Span } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { valueKey } from '../value.ts';
import { costOf } from './cost-of.ts';
import { classFactor } from './class-factor.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

type Urgency = WorksheetJob['urgency'];

interface Chosen {
  readonly job: Job;
  readonly cures: readonly string[];
  readonly urgency: Urgency;
}

const WEIGHT: Readonly<Record<Urgency, number>> = { watch: 0, limited: 1, 'stand-down': 2 };

/**
 * Jobs that cure the findings, in an order that the machine allows: the datum chain first, then what each job itself
 * must wait for. Jobs that somebody planned, started or finished are on it too.
 */
export function worksheetOf(known: Known, findings: readonly Finding[], knowledge: Knowledge): Worksheet {
  const problems: string[] = [];
  const chosen = choose(known, findings, knowledge, problems);
  const byId = new Map(chosen.map((one) => [one.job.id, one]));
  const ordered = inOrder(
    chosen.map((one) => ({ id: one.job.id, rank: one.job.stage * 10 - WEIGHT[one.urgency], after: one.job.after.filter((before) => byId.has(before.job)).map((before) => before.job) })),
  );
  if (ordered.state === 'cycle') {
    problems.push(`These jobs each wait for the other and cannot be put in order: ${ordered.cycle.join(', ')}`);
  }
  const order = ordered.state === 'ordered' ? ordered.order : chosen.map((one) => one.job.id);
  const jobs = order.map((id, index) => {
    const one = byId.get(id);
    if (one === undefined) throw new Error(`job ${id} was ordered and never chosen`);
    return entryOf(known, knowledge, one, index + 1, byId);
  });
  const open = jobs.filter((job) => job.state !== 'done' && job.state !== 'dropped');
  return { jobs, hours: sumSpans(open.map((job) => job.hours)), cost: sumSpans(open.map((job) => job.cost)), problems };
}

function choose(known: Known, findings: readonly Finding[], knowledge: Knowledge, problems: string[]): readonly Chosen[] {
  const jobs = new Map(knowledge.jobs.map((job) => [job.id, job]));
  const cures = new Map<string, { cures: string[]; urgency: Urgency }>();
  for (const finding of findings) {
    if (finding.grade !== 'watch' && finding.grade !== 'limited' && finding.grade !== 'stand-down') continue;
    for (const id of finding.cures) {
      const held = cures.get(id) ?? { cures: [], urgency: 'watch' };
      held.cures.push(valueKey(finding.criterion, finding.at));
      if (WEIGHT[finding.grade] > WEIGHT[held.urgency]) held.urgency = finding.grade;
      cures.set(id, held);
    }
  }
  for (const id of Object.keys(known.progress)) if (!cures.has(id)) cures.set(id, { cures: [], urgency: 'watch' });
  return [...cures].flatMap(([id, one]) => {
    const job = jobs.get(id);
    if (job === undefined) {
      problems.push(`A job is named that this version does not know: ${id}`);
      return [];
    }
    return job.families.includes(known.identity.family) ? [{ job, ...one }] : [];
  });
}

function entryOf(known: Known, knowledge: Knowledge, chosen: Chosen, number: number, all: ReadonlyMap<string, Chosen>): WorksheetJob {
  const { job } = chosen;
  const factor = classFactor(known.identity.ramClass.quantity.value);
  const waits = job.after.filter((before) => all.has(before.job));
  const stage = knowledge.stages.find((one) => one.number === job.stage);
  const because = waits.map((before) => `after "${all.get(before.job)?.job.title ?? before.job}": ${before.because}`);
  const cost = costOf(known, job);
  return {
    job: job.id, number, title: job.title, words: job.words, part: job.part, cures: chosen.cures, urgency: chosen.urgency,
    whyHere: [...because, ...(stage === undefined ? [] : [`step ${stage.number}, ${stage.title.toLowerCase()}: ${stage.because}`])].join(' '),
    after: waits.map((before) => before.job), stage: job.stage,
    hours: { least: job.hours.least * factor, likely: job.hours.likely * factor, most: job.hours.most * factor },
    skill: job.skill, helpers: job.helpers, parts: cost.parts, cost: cost.total, heard: cost.heard, cautions: job.cautions,
    state: known.progress[job.id]?.state ?? 'open', ...(job.cheaper === undefined ? {} : { cheaper: job.cheaper }),
  };
}

/** Sums of least, likely and most. The true spread of a sum is narrower: not everything goes wrong at once. */
const sumSpans = (spans: readonly Span[]): Span =>
  spans.reduce((sum, span) => ({ least: sum.least + span.least, likely: sum.likely + span.likely, most: sum.most + span.most }), { least: 0, likely: 0, most: 0 });
