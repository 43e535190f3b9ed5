import { lookOf } from '../../hammer/index.ts';
import type { Known } from '../survey/index.ts';
import type { Finding } from './finding.ts';

/**
 * Findings of a crack and its like, each with what nobody said of it: where it is, and whether there is a photograph. A
 * crack that the next reader cannot find again cannot be watched.
 */
export const sayWhere = (findings: readonly Finding[], known: Known): readonly Finding[] =>
  findings.map((finding) => {
    const words = openOf(finding, known);
    return words === '' ? finding : { ...finding, reason: `${finding.reason} ${words}` };
  });

function openOf(finding: Finding, { looks, photographs }: Known): string {
  const look = finding.from.map((key) => looks[key]).find((one) => one !== undefined);
  if (look === undefined || finding.grade === 'not-known') return '';
  const found = lookOf(look.look);
  if (found?.look.answers.find((one) => one.id === look.answer)?.spot !== true) return '';
  // A photograph of the part from that day or later shows it; one from before it was seen does not.
  const day = look.when.slice(0, 10);
  const shown = look.photographs.length > 0 || photographs.some((one) => one.part === found.part.id && one.when.slice(0, 10) >= day);
  if (look.words !== undefined) return shown ? '' : 'There is no photograph of the place.';
  return shown ? 'Where it is was not said.' : 'Where it is was not said, and there is no photograph of it.';
}
