import type { LinkageFamily } from '../hammer/index.ts';

/** How bad a thing is. The order is the order of strictness. */
export type Grade = 'sound' | 'watch' | 'limited' | 'stand-down';

export const GRADES: readonly Grade[] = ['sound', 'watch', 'limited', 'stand-down'];

/** Where a statement comes from, and how far to trust it. */
export interface Source {
  readonly id: string;
  readonly title: string;
  readonly kind: 'standard' | 'regulation' | 'handbook' | 'paper' | 'public-page' | 'common-practice' | 'derived' | 'memory';
  /** Clause, page, example or address; empty for common practice. */
  readonly where: string;
  /** Who read it and how: `read`, `transcribed`, `from memory`, `common practice, no source`. */
  readonly standing: string;
}

/** A quantity as the source prints it, in shop notation; the value's own dimension says how to read it. */
export type ShopText = string;

/** A step of a measured criterion: from this value on, the grade holds. */
export interface Step {
  readonly grade: Exclude<Grade, 'sound'>;
  readonly from: ShopText;
  readonly source: string;
  /** What it means at this grade, one sentence, in the trade's words. */
  readonly because: string;
  readonly limits?: readonly LimitRule[];
  /** Jobs that this grade asks for; where absent, all cures of the criterion. Empty: nothing is to be done yet. */
  readonly cures?: readonly string[];
}

/** Judges a value: reading (`part.place`) or consequence (`stack.loss`). */
export interface MeasuredRule {
  readonly kind: 'measured';
  readonly value: string;
  /** `more`: a greater value is worse, and a step holds at its `from` and above. `less`: a smaller one is worse. */
  readonly worse: 'more' | 'less';
  /** From mildest to strictest. */
  readonly steps: readonly Step[];
  /** The same thing by another published rule, where sources do not agree: shown beside it, and said where it would give another grade. */
  readonly otherwise?: OtherRule;
}

/** Another published way to the same figure, held against the same steps. */
export interface OtherRule {
  /** The value by the other way. */
  readonly value: string;
  /** Names of the way that is judged by and of the other: `the older table`, `the newer table`. */
  readonly taken: string;
  readonly other: string;
  /** Why the one is taken, one sentence. */
  readonly why: string;
  readonly source: string;
  /** Short, for a sentence that says where the two part: `good`, `too much`. */
  readonly words: { readonly sound: string; readonly worse: string };
}

/** Judges a look by its answer. */
export interface SeenRule {
  readonly kind: 'seen';
  readonly look: string;
  readonly answers: Readonly<Record<string, SeenGrade>>;
}

export interface SeenGrade {
  /** A reading that gainsays the answer: from this value up the two cannot both be right, and the worse is heeded. */
  readonly gainsaid?: { readonly by: string; readonly from: ShopText; readonly as: Omit<SeenGrade, 'gainsaid'> };
  readonly grade: Grade;
  readonly because: string;
  readonly source: string;
  readonly limits?: readonly LimitRule[];
  /** Jobs that this answer asks for; where absent, all cures of the criterion. Empty: nothing is to be done yet. */
  readonly cures?: readonly string[];
}

/** What a restriction is about; merging keeps the strictest of each kind. */
export type LimitKind =
  | 'least-work-thickness'
  | 'greatest-work-thickness'
  | 'greatest-speed'
  | 'greatest-bar'
  | 'greatest-tread'
  | 'longest-run'
  | 'oil-every'
  | 'check-keys-every'
  | 'no-hand-held-tools'
  | 'flat-dies-only'
  | 'no-bystanders'
  | 'named-operator'
  | 'light-work-only'
  | 'second-person'
  | 'double-hearing-protection'
  | 'guard-first'
  | 'oil-way-first'
  | 'guard-kept'
  | 'not-unattended';

/** A restriction that a finding puts on use. */
export interface LimitRule {
  readonly kind: LimitKind;
  /** The value of the limit: fixed text, or the id of a consequence that gives it. Absent for plain prohibitions. */
  readonly value?: { readonly fixed: ShopText } | { readonly from: string };
  /** The sentence for the limits card; `{value}` is replaced by the figure. */
  readonly sentence: string;
}

/** What a limit turns into where a look has one of these answers. */
export interface TurnedLimit {
  readonly from: LimitKind;
  readonly where: { readonly look: string; readonly answers: readonly string[] };
  readonly to: LimitRule;
}

/** A worked example that the tests run: given this, the grade must be that. */
export interface Example {
  /** Shop text for a measured rule, an answer id for a seen one. */
  readonly given: string;
  readonly grade: Grade;
  /** Where it stands against a step. */
  readonly stands: 'at' | 'just under' | 'just over' | 'plain';
}

/** Two sides of a practice that the trade does not agree on. */
export interface Dispute {
  readonly oneSide: string;
  readonly otherSide: string;
  readonly source: string;
}

/** One rule: id, the question it answers, when it applies, what it needs, its steps with their sources, what it imposes and what cures it. */
export interface Criterion {
  /** Dotted trade words, for example `guide.play`. */
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly part: string;
  /** Rows of the component list that it judges. */
  readonly rows: readonly number[];
  readonly families: readonly LinkageFamily[];
  /** Applies only where this look has one of these answers, for example only where a brake is fitted. */
  readonly onlyWhere?: { readonly look: string; readonly answers: readonly string[] };
  readonly rule: MeasuredRule | SeenRule;
  /** A gate: until it is known, the verdict is not known yet. */
  readonly gate: boolean;
  /** Minutes to settle it where it is not known. */
  readonly minutes: number;
  /** Every job that may cure it, alternatives included; a step or answer says which of them it asks for. */
  readonly cures: readonly string[];
  readonly cautions: readonly string[];
  readonly dispute?: Dispute;
  readonly examples: readonly Example[];
}
