import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { cautionsFor, knowledge } from '../../knowledge/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import { shownValue } from '../sentences/words.ts';
import { tableSize } from './size-words.ts';
import type { Paragraph } from './text-column.ts';

const HEAD = 'strong';

/** Everything behind a part's figures: warnings first, what must still be measured, why each size, disputes, cautions, sources. */
export function accountParagraphs(picture: Picture, part: PartToMake): readonly Paragraph[] {
  const cautions = cautionsFor(part.cautions, picture.known.identity.family).flatMap((id) => knowledge.cautions.find((one) => one.id === id) ?? []);
  const sources = part.sources.flatMap((id) => knowledge.sources.find((one) => one.id === id) ?? []);
  const say = (words: string): string => inSystem(words, picture.system);
  return [
    ...section('Before cutting', [...part.warnings, 'Put a rule to the old part and to its place and compare every size with this sheet. Where they differ, the machine is right.'], 'limit-note'),
    ...section('Not known; to be measured', part.unknowns.map((one) => say(`${capital(one.what)}. ${one.how}`))),
    ...section('Where each size comes from', part.dimensions.map((one) => `${capital(one.title)}, ${tableSize(one, picture.system)}: ${one.why}.${one.from.length === 0 ? '' : ` From ${one.from.map((key) => `${say(titleOf(picture, key))} (${shownValue(picture, key)})`).join('; ')}.`}`)),
    ...part.disputes.flatMap((one) => section(`Where the trade does not agree: ${one.about.toLowerCase()}`, [`Taken here: ${one[one.taken]} Why: ${one.because.replace(/\.$/, '')}.`, `The other side: ${one[one.taken === 'oneSide' ? 'otherSide' : 'oneSide']}`])),
    ...section('At the machine', cautions.map((one) => inSystem(one.words, picture.system))),
    ...section('Sources', sources.map((one) => `${say(`${one.title}${one.where === '' ? '' : `: ${one.where}`}`)} (${one.standing}).`)),
    { words: `Log ${picture.provenance.logHash}, ${picture.provenance.entries} entries up to ${picture.provenance.asOf}, knowledge ${picture.provenance.knowledgeVersion}.`, size: 2 },
  ];
}

const section = (title: string, lines: readonly string[], className?: string): readonly Paragraph[] =>
  lines.length === 0 ? [] : [{ words: title, className: className ?? HEAD, size: 3.2 }, ...lines.map((words) => ({ words }))];

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function titleOf(picture: Picture, key: string): string {
  const value = picture.values[key];
  const at = key.split('#')[0]?.split('@')[1];
  return `${value?.title ?? key}${at === undefined || value?.title.includes(at) === true ? '' : `, ${at.replaceAll('-', ' ')}`}`;
}
