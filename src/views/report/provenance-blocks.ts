import type { Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block } from './block.ts';

/** Sources used, and what somebody needs to compute this report again. */
export function provenanceBlocks(picture: Picture, knowledge: Knowledge, program?: string): readonly Block[] {
  const used = new Set([...picture.findings.flatMap((finding) => finding.sources), ...Object.values(picture.values).filter((value) => value.outcome.state === 'known').flatMap((value) => value.sources)]);
  const sources = knowledge.sources.filter((source) => used.has(source.id));
  const { provenance } = picture;
  return [
    { kind: 'heading', level: 2, text: 'Sources' },
    { kind: 'table', caption: 'Where the rules and sums come from, and how far each was read', columns: ['Source', 'Where', 'Standing'], rows: sources.map((source) => ({ cells: [source.title, source.where, source.standing] })), dense: true },
    ...(picture.problems.length === 0 ? [] : [{ kind: 'list', ordered: false, items: picture.problems } as const]),
    { kind: 'facts', rows: [['Log', `${provenance.entries} entries, SHA-256 ${provenance.logHash}`], ['Knowledge', provenance.knowledgeVersion], ...(program === undefined ? [] : [['Program', program] as const]), ['As of', provenance.asOf], ['Seed', String(provenance.seed)]] },
  ];
}
