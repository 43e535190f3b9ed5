import type { Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { CONDITION_WORDS } from '../drawing/hatch.ts';
import { atWords, byWeight, partName } from '../sentences/words.ts';
import type { Block } from './block.ts';
import { photographsOf } from './photograph-blocks.ts';

/** Findings, the weightiest first, each with its reading, its reason, its rule and where the rule comes from. */
export function findingBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const told = byWeight(picture.findings).filter((finding) => finding.grade !== 'sound' && finding.grade !== 'not-known' && finding.grade !== 'does-not-apply');
  const sound = picture.findings.filter((finding) => finding.grade === 'sound');
  const open = picture.findings.filter((finding) => finding.grade === 'not-known');
  const photographs = photographsOf(picture);
  const title = (id: string): string => knowledge.sources.find((source) => source.id === id)?.title ?? id;
  return [
    { kind: 'heading', level: 2, text: 'Findings' },
    ...told.flatMap((finding): readonly Block[] => [
      { kind: 'heading', level: 3, text: `${CONDITION_WORDS[finding.grade]}: ${finding.title}${atWords(finding.at)}` },
      { kind: 'facts', rows: [
        ['Part', partName(finding.part)], ['Found', finding.shown], ['Means', finding.reason], ['Rule', `${finding.rule} (${finding.sources.map(title).join('; ')})`], ['How sure', finding.sureWords],
        ...shownBy(photographs.filter((one) => one.part === finding.part || (one.look !== undefined && finding.from.includes(one.look))).map((one) => one.number)),
        ...(finding.limits.length === 0 ? [] : [['Limit', finding.limits.map((limit) => limit.sentence).join(' ')] as const]),
        ...(finding.override === undefined ? [] : [['Owner\'s own limit', `${finding.override.author}: ${finding.override.reason}. The default is: ${finding.override.defaultRule}`] as const]),
        ...(finding.dispute === undefined ? [] : [['Not agreed in the trade', `${finding.dispute.oneSide} Against it: ${finding.dispute.otherSide}`] as const]),
      ] },
    ]),
    { kind: 'heading', level: 2, text: 'Found sound' },
    { kind: 'table', caption: 'Looked at or measured, and within what practice asks', columns: ['What', 'Found', 'How sure'], rows: sound.map((finding) => ({ condition: 'sound' as const, cells: [`${finding.title}${atWords(finding.at)}`, finding.shown, finding.sureWords] })) },
    ...(open.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: 'Not known yet' } as const,
      { kind: 'table', caption: 'Not checked, or not settled; none of it is taken as good', columns: ['What', 'Why not', 'Minutes'], rows: open.map((finding) => ({ condition: 'not-known' as const, cells: [`${finding.title}${atWords(finding.at)}${finding.gate ? ' (safety)' : ''}`, finding.reason, String(finding.minutes)] })) } as const,
    ]),
  ];
}

const shownBy = (numbers: readonly number[]): readonly (readonly [string, string])[] => (numbers.length === 0 ? [] : [['Photographs', numbers.join(', ')]]);
