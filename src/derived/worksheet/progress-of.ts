import { answerWords } from '../../hammer/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known, PastReading } from '../survey/index.ts';
import { findingKey } from './cure-needs.ts';

/** A reading or look before and after a job. */
export interface FoundAndLeft {
  readonly key: string;
  readonly found?: { readonly shown: string; readonly when: string };
  readonly left?: { readonly shown: string; readonly when: string };
}

/** One finished job: who, when, how long, what was found before it and what was left after it. */
export interface DoneJob {
  readonly job: string;
  readonly title: string;
  readonly when: string;
  readonly by: string;
  readonly hours?: number;
  readonly words?: string;
  readonly values: readonly FoundAndLeft[];
  /** Findings that it was to cure and that nobody has looked at since. */
  readonly toProve: readonly string[];
  /** Findings that it was to cure and that are still, or again, there. */
  readonly stillThere: readonly string[];
}

/**
 * The finished jobs with the state as found, which no repair wipes out. Of a look only the latest answer is held, so what a
 * look showed before a repair is given until somebody looks again; the log keeps both.
 */
export function progressOf(known: Known, findings: readonly Finding[], knowledge: Knowledge): readonly DoneJob[] {
  const done = Object.values(known.progress).filter((one) => one.state === 'done').sort((a, b) => (a.when < b.when ? -1 : a.when > b.when ? 1 : 0));
  return done.map((one): DoneJob => {
    const criteria = knowledge.criteria.filter((criterion) => criterion.cures.includes(one.job)).map((criterion) => criterion.id);
    const touched = findings.filter((finding) => criteria.includes(finding.criterion));
    return {
      job: one.job, title: knowledge.jobs.find((job) => job.id === one.job)?.title ?? one.job, when: one.when, by: one.by,
      ...(one.hours === undefined ? {} : { hours: one.hours }), ...(one.words === undefined ? {} : { words: one.words }),
      values: valuesAbout(known, touched, one.when),
      toProve: touched.filter((finding) => finding.grade === 'not-known' && finding.evidence.length > 0).map(findingKey),
      stillThere: touched.filter((finding) => finding.cures.includes(one.job) && finding.grade !== 'not-known').map(findingKey),
    };
  });
}

function valuesAbout(known: Known, findings: readonly Finding[], repaired: string): readonly FoundAndLeft[] {
  const evidence = new Set(findings.flatMap((finding) => finding.evidence));
  const read = Object.entries(known.history).filter(([, past]) => past.some((one) => evidence.has(one.entry))).map(([key, past]): FoundAndLeft => {
    const before = past.filter((one) => one.when < repaired).at(-1);
    const after = past.find((one) => one.when >= repaired);
    return { key, ...(before === undefined ? {} : { found: shownReading(before) }), ...(after === undefined ? {} : { left: shownReading(after) }) };
  });
  const looked = Object.values(known.looks).filter((look) => evidence.has(look.entry)).map((look): FoundAndLeft => {
    const shown = { shown: answerWords(look.key, look.answer), when: look.when };
    return look.when < repaired ? { key: look.key, found: shown } : { key: look.key, left: shown };
  });
  return [...read, ...looked];
}

const shownReading = (reading: PastReading): { readonly shown: string; readonly when: string } => ({ shown: reading.asWritten, when: reading.when });
