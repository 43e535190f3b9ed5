import type { Knowledge } from '../../knowledge/index.ts';

/**
 * Where a cause lies on a number between 0 and 1 that chance draws: it is there where the number falls from `from` up to
 * `to`. Causes drawn by the same name hold together where they begin at the same place, and exclude each other side by side.
 */
export interface Draw {
  readonly by: string;
  readonly from: number;
  readonly to: number;
}

/** A quick look or reading that settles whether a cause is there, before anything is bought. */
export interface CheckFirst {
  /** What to look at or read, and with what, without a full stop. */
  readonly words: string;
  readonly minutes: number;
  /** Value keys or look keys to enter. */
  readonly settles: readonly string[];
  /** Chance that it says that the job is not needed; as much as the cause is unlikely where it settles it for good. */
  readonly clears: number;
}

/** Something that may be wrong, and how likely: from a diagnosis, or from readings that lie on both sides of a limit. */
export interface Cause {
  /** The same for the same cause each time. */
  readonly id: string;
  readonly title: string;
  readonly part: string;
  /** Chance that it is there: above 0, at most 1. */
  readonly chance: number;
  /** Jobs that cure it, all of them. */
  readonly jobs: readonly string[];
  readonly urgency: 'watch' | 'limited' | 'stand-down';
  /** Where the chance comes from, one sentence. */
  readonly because: string;
  readonly basis: 'readings' | 'diagnosis';
  /** Drawn by itself where left out. Several explanations of which one is true share a name and stand side by side. */
  readonly draw?: { readonly by: string; readonly from: number };
  readonly check?: CheckFirst;
}

/** The part of its number that a cause takes. */
export const drawOf = (cause: Cause): Draw => ({ by: cause.draw?.by ?? cause.id, from: cause.draw?.from ?? 0, to: (cause.draw?.from ?? 0) + cause.chance });

/** Causes that can be used; what is wrong with the others, said plainly. */
export function usableCauses(causes: readonly Cause[], knowledge: Knowledge): { readonly causes: readonly Cause[]; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const usable = causes.filter((cause) => {
    const { to, from } = drawOf(cause);
    const unknown = cause.jobs.find((id) => !knowledge.jobs.some((job) => job.id === id));
    if (!(cause.chance > 0 && cause.chance <= 1)) problems.push(`The cause "${cause.title}" is passed over; a chance is above 0 and at most 1: ${cause.chance}`);
    else if (!(from >= 0 && to <= 1 + 1e-9)) problems.push(`The cause "${cause.title}" is passed over; its part of a number between 0 and 1 lies outside it: ${from} to ${to}`);
    else if (unknown !== undefined) problems.push(`The cause "${cause.title}" is passed over; it asks for a job that this version does not know: ${unknown}`);
    else return true;
    return false;
  });
  return { causes: usable, problems };
}

/** Chance that at least one of these parts is hit: parts of one number may overlap, different numbers are independent. */
export function chanceOfAny(draws: readonly Draw[]): number {
  const names = [...new Set(draws.map((draw) => draw.by))];
  if (names.length === 1) return lengthOf(draws);
  return 1 - names.reduce((none, name) => none * (1 - lengthOf(draws.filter((draw) => draw.by === name))), 1);
}

function lengthOf(draws: readonly Draw[]): number {
  let length = 0;
  let end = 0;
  for (const { from, to } of [...draws].sort((a, b) => a.from - b.from)) {
    length += Math.max(0, to - Math.max(end, from));
    end = Math.max(end, to);
  }
  return Math.min(1, length);
}
