import { placeWords, type Finding, type Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { CONDITION_WORDS } from '../drawing/hatch.ts';
import { inSystem, ownUnitsFirst } from '../sentences/in-system.ts';
import { byWeight, partName } from '../sentences/words.ts';
import type { Block } from './block.ts';
import { photographsOf, type NumberedPhotograph } from './photograph-blocks.ts';

/** Findings, the weightiest first, each with its reading, its reason, its rule and where the rule comes from. */
export function findingBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const told = byWeight(picture.findings).filter((finding) => finding.grade !== 'sound' && finding.grade !== 'not-known' && finding.grade !== 'does-not-apply');
  const sound = picture.findings.filter((finding) => finding.grade === 'sound');
  const open = picture.findings.filter((finding) => finding.grade === 'not-known');
  const photographs = photographsOf(picture);
  const heavy = told.filter((finding) => !isLight(finding));
  const watched = told.filter(isLight);
  const title = (id: string): string => knowledge.sources.find((source) => source.id === id)?.title ?? id;
  const say = (text: string): string => inSystem(text, picture.system);
  const shown = (text: string): string => ownUnitsFirst(text, picture.system);
  return [
    { kind: 'heading', level: 2, text: 'Findings' },
    ...(heavy.length === 0 && told.length > 0 ? [{ kind: 'paragraph', text: 'Nothing was found that limits or stops the hammer.' } as const] : []),
    ...(told.length === 0 ? [{ kind: 'paragraph', text: 'Nothing was found that limits or stops the hammer, or wants watching.' } as const] : []),
    ...heavy.flatMap((finding): readonly Block[] => [
      { kind: 'heading', level: 3, text: `${CONDITION_WORDS[finding.grade]}: ${finding.title}${placeWords(finding)}` },
      { kind: 'facts', rows: [
        ['Part', partName(finding.part)], ['Found', shown(finding.shown)], ...(finding.atOdds === undefined ? [] : [['At odds', finding.atOdds] as const]), ['Means', say(finding.reason)], ['Rule', `${say(finding.rule)} (${finding.sources.map(title).join('; ')})`], ['How sure', finding.sureWords],
        ...(seenOn(photographs, finding) === '' ? [] : [['Photographs', numbersOf(photographs, finding).join(', ')] as const]),
        ...(finding.limits.length === 0 ? [] : [['Limit', say(finding.limits.map((limit) => limit.sentence).join(' '))] as const]),
        ...(finding.override === undefined ? [] : [['Owner\'s own limit', `${finding.override.author}: ${finding.override.reason}. The default is: ${say(finding.override.defaultRule)}`] as const]),
        ...(finding.dispute === undefined ? [] : [['Not agreed in the trade', say(`${finding.dispute.oneSide} Against it: ${finding.dispute.otherSide}`)] as const]),
      ] },
    ]),
    ...(watched.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: 'Worth watching' } as const,
      { kind: 'table', caption: 'No limit now; look again at the next survey', columns: ['What, and what was found', 'Means, and by which rule'], rows: alike(watched, (finding) => `${say(finding.reason)}${oddsOf(finding)}${finding.dispute === undefined ? '' : ` ${say(`Not agreed in the trade: ${finding.dispute.oneSide} Against it: ${finding.dispute.otherSide}`)}`} Rule: ${say(finding.rule)} (${finding.sources.map(title).join('; ')}).`).map(([means, mine]) => ({ cells: [
        mine.map((finding) => `${finding.title}${placeWords(finding)}${seenOn(photographs, finding)}: ${shown(finding.shown)}${finding.sureWords === 'seen' || finding.sureWords === 'sure' ? '' : ` (${finding.sureWords})`}`).join('; '), means,
      ] })) } as const,
    ]),
    ...(sound.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: 'Found sound' } as const,
      { kind: 'table', caption: 'Looked at or measured, and within what practice asks', columns: ['Part', 'What, and what was found'], rows: byPart(sound, (finding) => `${finding.title}${placeWords(finding)}: ${shown(finding.shown)}${finding.sureWords === 'seen' || finding.sureWords === 'sure' ? '' : ` (${finding.sureWords})`}${oddsOf(finding)}`).map(([part, words]) => ({ cells: [part, words] })), dense: true } as const,
    ]),
    ...(open.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: 'Not known yet' } as const,
      { kind: 'table', caption: 'Not checked, or not settled; none of it is taken as good', columns: ['Part', 'What', 'Minutes'], rows: byPart(open, (finding) => `${finding.title}${placeWords(finding)}${finding.gate ? ' (safety)' : ''}${UNTOUCHED.includes(finding.reason) ? '' : `: ${finding.reason}`}${oddsOf(finding)}`).map(([part, words, findings]) => ({ cells: [part, words, String(findings.reduce((sum, finding) => sum + finding.minutes, 0))] })), dense: true } as const,
    ]),
  ];
}

/** Two answers about it that cannot both be right, behind its own words. */
const oddsOf = ({ atOdds }: Finding): string => (atOdds === undefined ? '' : ` At odds: ${atOdds}`);

/** Findings that mean the same by the same rule share a row: the same words three times over make nobody wiser. */
function alike(findings: readonly Finding[], words: (finding: Finding) => string): readonly (readonly [words: string, findings: readonly Finding[]])[] {
  const rows = new Map<string, Finding[]>();
  for (const finding of findings) rows.set(words(finding), [...(rows.get(words(finding)) ?? []), finding]);
  return [...rows];
}

/** Reasons that say no more than that nobody has been there. */
const UNTOUCHED: readonly string[] = ['Not measured.', 'Nobody has looked yet.', 'Whether it applies is not known yet.'];

/** One row for each part, so that a survey of two hundred findings stays readable. */
function byPart(findings: readonly Finding[], words: (finding: Finding) => string): readonly (readonly [part: string, words: string, findings: readonly Finding[]])[] {
  const parts = new Map<string, Finding[]>();
  for (const finding of findings) parts.set(finding.part, [...(parts.get(finding.part) ?? []), finding]);
  return [...parts].map(([part, mine]) => [partName(part), mine.map(words).join('; '), mine]);
}

/** A finding that asks for nothing today and is told in one line; an owner's own limit is always told in full. */
const isLight = (finding: Finding): boolean => finding.grade === 'watch' && finding.limits.length === 0 && finding.override === undefined;

const numbersOf = (photographs: readonly NumberedPhotograph[], finding: Finding): readonly number[] =>
  photographs.filter((one) => (one.look === undefined ? one.part === finding.part : finding.from.includes(one.look))).map((one) => one.number);

function seenOn(photographs: readonly NumberedPhotograph[], finding: Finding): string {
  const numbers = numbersOf(photographs, finding);
  return numbers.length === 0 ? '' : ` (photograph ${numbers.join(', ')})`;
}
