import type { Picture } from '../../derived/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import type { Block } from './block.ts';
import { reasonWords } from './first-page.ts';

/** Nobody may read a sheet on work as leave to work. */
export function standingBlocks(picture: Picture): readonly Block[] {
  const { duty } = picture;
  if (duty.verdict === 'fit') return [];
  const words = { 'stand-down': `It stands down today: ${duty.reasons.map((reason) => reasonWords(reason.sentence, picture.system)).slice(0, 2).join(' ')} Nothing on this sheet lets it run.`, 'not-known-yet': 'Its verdict is not known yet: nothing on this sheet lets it run.', 'fit-within-limits': `It runs within limits: ${duty.limits.length === 1 ? inSystem(duty.limits[0]?.sentence ?? '', picture.system) : `${firstWords(picture)}the card names ${duty.limits.length}, and they come before every figure here.`}` } as const;
  return [{ kind: 'paragraph', tone: 'next', text: words[duty.verdict] }];
}

/** What must come before the first turn, in every sheet's own first line. */
function firstWords({ duty }: Picture): string {
  const first = duty.limits.find((limit) => limit.kind === 'oil-way-first')?.sentence;
  return first === undefined ? '' : `${first.charAt(0).toLowerCase()}${first.slice(1, -1)}; `;
}
