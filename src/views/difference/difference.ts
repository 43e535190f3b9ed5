import { placeWords, valueKey, type Finding, type Picture } from '../../derived/index.ts';
import { CONDITION_WORDS } from '../drawing/hatch.ts';
import { shownValue, VERDICT_WORDS } from '../sentences/words.ts';

/** One thing that an entry changes, as a sentence: what, from what, to what. */
export interface Change {
  readonly kind: 'remark' | 'verdict' | 'limit' | 'finding' | 'value';
  readonly title: string;
  readonly before: string;
  readonly after: string;
  /** True where the hammer is worse off, false where it is better off or only better known. */
  readonly worse: boolean;
}

const WEIGHT: Readonly<Record<Finding['grade'], number>> = { 'does-not-apply': 0, sound: 0, 'not-known': 1, watch: 2, limited: 3, 'stand-down': 4 };

/** What one picture says that the other did not: verdict first, then limits, findings, values worked out. */
export function difference(before: Picture | undefined, after: Picture): readonly Change[] {
  return [...remarks(before, after), ...verdictChange(before, after), ...limitChanges(before, after), ...findingChanges(before, after), ...valueChanges(before, after)];
}

/** What the picture newly remarks on, first of all: readings that cannot both be true. */
function remarks(before: Picture | undefined, after: Picture): readonly Change[] {
  return after.problems.filter((problem) => before?.problems.includes(problem) !== true).map((problem) => ({ kind: 'remark', title: problem, before: '', after: '', worse: true }));
}

function verdictChange(before: Picture | undefined, after: Picture): readonly Change[] {
  if (before === undefined || before.duty.verdict === after.duty.verdict) return [];
  const rank = { fit: 0, 'fit-within-limits': 1, 'not-known-yet': 2, 'stand-down': 3 } as const;
  return [{ kind: 'verdict', title: 'Verdict', before: VERDICT_WORDS[before.duty.verdict], after: VERDICT_WORDS[after.duty.verdict], worse: rank[after.duty.verdict] > rank[before.duty.verdict] }];
}

function limitChanges(before: Picture | undefined, after: Picture): readonly Change[] {
  const old = new Map(before?.duty.limits.map((limit) => [limit.kind, limit.sentence]));
  const now = new Map(after.duty.limits.map((limit) => [limit.kind, limit.sentence]));
  const kinds = [...new Set([...old.keys(), ...now.keys()])];
  return kinds.flatMap((kind) => (old.get(kind) === now.get(kind) ? [] : [{ kind: 'limit', title: 'Limit', before: old.get(kind) ?? 'none', after: now.get(kind) ?? 'lifted', worse: now.has(kind) } as const]));
}

function findingChanges(before: Picture | undefined, after: Picture): readonly Change[] {
  const old = new Map(before?.findings.map((finding) => [valueKey(finding.criterion, finding.at), finding]));
  return after.findings.flatMap((finding) => {
    const was = old.get(valueKey(finding.criterion, finding.at))?.grade ?? 'not-known';
    if (was === finding.grade) return [];
    return [{ kind: 'finding', title: `${finding.title}${placeWords(finding)}`, before: CONDITION_WORDS[was], after: CONDITION_WORDS[finding.grade], worse: WEIGHT[finding.grade] > WEIGHT[was] } as const];
  });
}

function valueChanges(before: Picture | undefined, after: Picture): readonly Change[] {
  return Object.values(after.values).flatMap((value) => {
    if (value.standing !== 'worked-out' || value.outcome.state !== 'known') return [];
    const was = before === undefined ? 'not known yet' : shownValue(before, value.key);
    const now = shownValue(after, value.key);
    return was === now ? [] : [{ kind: 'value', title: value.title, before: was, after: now, worse: false } as const];
  });
}
