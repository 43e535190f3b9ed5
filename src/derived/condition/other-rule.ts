import type { Grade, OtherRule } from '../../knowledge/index.ts';
import { formatQuantity, type Quantity } from '../../methods/quantity/index.ts';
import type { Value } from '../value.ts';
import type { PrintSystem } from '../print-system.ts';
import { gradeMeasured, type ReadStep } from './grade-measured.ts';
import { shownReading } from './shown.ts';

/** Both sides of a judgement for which two published rules exist, in words. */
export interface BothSides {
  /** Both figures, each with the name of its rule. */
  readonly shown: string;
  /** Where the two give another grade: said in the finding itself. */
  readonly parting?: string;
  readonly dispute: { readonly oneSide: string; readonly otherSide: string; readonly source: string };
  /** Key of the other value, where it is known. */
  readonly from: readonly string[];
}

/**
 * The other published rule beside the one that is judged by.
 * @param mine the value that is judged, known; @param quantity its figure; @param grade what it was graded
 * @param theirs the value by the other rule, known or not
 * @param steps the default steps: the owner's own limit was set for the rule that is judged by
 */
export function bothSides(rule: OtherRule, mine: Value, quantity: Quantity, grade: Grade, theirs: Value | undefined, steps: readonly ReadStep[], worse: 'more' | 'less', system: PrintSystem): BothSides {
  const shown = `${shownReading(mine, system)} by ${rule.taken}`;
  const oneSide = `By ${rule.taken} it is ${shownReading(mine, system)}: ${gradeWords(grade)}. ${rule.why}`;
  if (theirs?.outcome.state !== 'known') {
    const because = theirs?.outcome.state === 'outside-validity' ? theirs.outcome.because : `${rule.other} gives no figure here`;
    return { shown, dispute: { oneSide, otherSide: `${capital(because)}.`, source: rule.source }, from: [] };
  }
  const other = theirs.outcome.quantity;
  const otherGrade = gradeMeasured(other, steps, worse).grade;
  const [first] = steps;
  // The same limit on the scale of the rule that is judged by, so that the owner can choose the other one.
  const ownLimit = first === undefined || !(other.value > 0) ? '' : ` Who goes by ${rule.other} sets a limit of their own at ${formatQuantity({ ...quantity, value: Number(((first.from * quantity.value) / other.value).toPrecision(3)), uncertainty: 0 }, { system, doubt: false })}.`;
  const parting = otherGrade === grade ? undefined : `${capital(sideWords(rule, otherGrade))} by ${rule.other}, ${sideWords(rule, grade)} by ${rule.taken}.`;
  return {
    shown: `${shown}; ${shownReading(theirs, system)} by ${rule.other}`, ...(parting === undefined ? {} : { parting }),
    dispute: { oneSide, otherSide: `By ${rule.other} it is ${shownReading(theirs, system)}: ${gradeWords(otherGrade)}.${ownLimit}`, source: rule.source }, from: [theirs.key],
  };
}

const gradeWords = (grade: Grade): string => (grade === 'watch' ? 'worth watching' : grade.replace('-', ' '));
const sideWords = (rule: OtherRule, grade: Grade): string => (grade === 'sound' ? rule.words.sound : rule.words.worse);
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
