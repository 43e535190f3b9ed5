import type { Picture } from '../../derived/index.ts';
import { partsFor } from '../../hammer/index.ts';
import { CONDITION_WORDS, type Condition } from '../drawing/hatch.ts';
import { partConditions } from '../elevation/part-condition.ts';
import { partName } from '../sentences/words.ts';
import type { Block } from './block.ts';

const ORDER: readonly Condition[] = ['stand-down', 'limited', 'watch', 'not-known', 'not-checked', 'sound', 'does-not-apply'];

/** The elevation and the item list that its balloons point into. */
export function elevationBlocks(picture: Picture, elevation: string | undefined): readonly Block[] {
  if (elevation === undefined) return [];
  const { identity } = picture.known;
  const conditions = partConditions(picture);
  return [
    { kind: 'heading', level: 2, text: 'Elevation and parts' },
    { kind: 'figure', svg: elevation, words: `Elevation of ${identity.tag}, each part marked with its condition. ${conditionWords(picture)}`, caption: 'Elevation to scale. Outlines not read are assumed from the class. Numbers as in the list of parts.' },
    { kind: 'table', caption: 'List of parts by the worst finding on each; * where something about it is still open', columns: ['Numbers as on the drawing'], rows: ORDER.flatMap((condition) => {
      const parts = partsFor(identity.family).flatMap((part, index) => ((conditions.get(part.id)?.condition ?? 'not-checked') === condition ? [`${index + 1} ${partName(part.id)}${conditions.get(part.id)?.inPart === true ? '*' : ''}`] : []));
      return parts.length === 0 ? [] : [{ condition, cells: [parts.join('; ')] }];
    }) },
  ];
}

/** The drawing for somebody who cannot see it: the parts by condition, the worst first. */
function conditionWords(picture: Picture): string {
  const conditions = partConditions(picture);
  const told = (['stand-down', 'limited', 'watch'] as const).flatMap((condition) => {
    const parts = [...conditions].filter(([, one]) => one.condition === condition).map(([part]) => partName(part));
    return parts.length === 0 ? [] : [`${CONDITION_WORDS[condition]}: ${parts.join(', ')}`];
  });
  return told.length === 0 ? 'No part is marked as limited or worth watching.' : `${told.join('; ')}.`;
}
