import { atName } from '../../hammer/index.ts';
import type { Grade } from '../../knowledge/index.ts';
import type { Limit } from './limit.ts';

/** What a rule concludes about a part. `not-known` and `does-not-apply` are answers of their own, never a good grade. */
export type FindingGrade = Grade | 'not-known' | 'does-not-apply';

export interface Finding {
  /** Criterion id. */
  readonly criterion: string;
  /** Place on the part where the criterion judges several. */
  readonly at?: string;
  /** What this hammer calls that place, where the place alone does not say it. */
  readonly place?: string;
  readonly part: string;
  readonly title: string;
  readonly question: string;
  readonly grade: FindingGrade;
  /** What it means, one or two sentences. */
  readonly reason: string;
  /** The reading or look as a person reads it, with unit and doubt. */
  readonly shown: string;
  /** The rule in words: `limited from 0.030 in`. */
  readonly rule: string;
  /** Keys of the values behind it. */
  readonly from: readonly string[];
  readonly evidence: readonly string[];
  readonly sources: readonly string[];
  /** Chance of this very grade given the readings' doubt; 1 where nothing is doubtful. */
  readonly sure: number;
  /** Chance of each grade or worse. */
  readonly chances: { readonly watch: number; readonly limited: number; readonly standDown: number };
  /** Said in words: `certain`, `probably, 82 %`, `told, not seen`. */
  readonly sureWords: string;
  readonly gate: boolean;
  readonly limits: readonly Limit[];
  readonly cures: readonly string[];
  /** What its own grade asks for, where a job that another finding asks for has taken the place of some of it in `cures`. */
  readonly ownCures?: readonly string[];
  readonly cautions: readonly string[];
  /** Where not known: value keys or looks that would settle it, and minutes. */
  readonly missing: readonly string[];
  readonly minutes: number;
  /** Two answers about what it rests on that cannot both be right, and which one is used. */
  readonly atOdds?: string;
  /** Owner's override in force, with author and reason. */
  readonly override?: { readonly author: string; readonly reason: string; readonly entry: string; readonly defaultRule: string };
  readonly dispute?: { readonly oneSide: string; readonly otherSide: string; readonly source: string };
}

/** True where a finding asks for work. What is sound, not known or does not apply asks for none. */
export const isFault = (finding: Pick<Finding, 'grade'>): boolean => finding.grade === 'watch' || finding.grade === 'limited' || finding.grade === 'stand-down';

/** A finding's place behind its title: `, front left`; the place as this hammer calls it, so that every paper names it alike. */
export const placeWords = ({ at, place }: Pick<Finding, 'at' | 'place'>): string => (at === undefined ? '' : `, ${place ?? atName(at)}`);
