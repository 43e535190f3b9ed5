import type { Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import type { Block } from './block.ts';

/** The cautions of the work on this worksheet and of running at all, each with its source. */
export function cautionBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const wanted = new Set([...picture.worksheet.jobs.flatMap((job) => job.cautions), ...picture.findings.filter((finding) => finding.grade !== 'sound' && finding.grade !== 'does-not-apply').flatMap((finding) => finding.cautions)]);
  const cautions = knowledge.cautions.filter((caution) => wanted.has(caution.id));
  const title = (id: string): string => knowledge.sources.find((source) => source.id === id)?.title ?? id;
  return [
    { kind: 'heading', level: 2, text: 'Cautions' },
    { kind: 'paragraph', text: 'The usual cautions of the trade. They do not replace local codes, licensed trades or the judgement of somebody who stands beside the machine.' },
    ...cautions.map((caution) => ({ kind: 'caution', text: inSystem(caution.words, picture.system), source: title(caution.source) }) as const),
  ];
}
