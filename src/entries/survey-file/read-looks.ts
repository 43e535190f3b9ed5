import { lookOf } from '../../hammer/index.ts';
import { answerProblem, lookProblem } from '../against-vocabulary.ts';
import type { SightingBody } from '../entry.ts';
import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import type { NamedNode } from './read-values.ts';
import { stamped } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';

export const LOOK_FIELDS: readonly string[] = ['answer', 'words', 'told by', 'photographs', ...STAMP_FIELDS];
const SHARED_FIELDS: readonly string[] = ['words', 'told by', 'photographs', 'time'];

/**
 * Reads one line of looks: `frame.crack: none`, the long form with `answer`, or a record of several places on the part.
 * @param taken names already read in this visit
 */
export function readLook(reading: FileReading, visit: Visit, named: NamedNode, taken: Set<string>): void {
  const { problems, family } = reading;
  const [lookId = '', at, ...more] = named.name.split('@');
  const places = lookOf(lookId)?.look.at ?? [];
  const spread = at === undefined && named.node.kind === 'record' && places.some((each) => named.node.kind === 'record' && named.node.fields.has(each)) ? named.node : undefined;
  const unknown = lookProblem(lookId, more.length > 0 ? undefined : at, family, { wholeToo: spread !== undefined, brief: problems.full });
  if (unknown !== undefined) {
    problems.put(named.path, named.key, { ...unknown, field: named.path });
    return;
  }
  if (spread === undefined) {
    readOneLook(reading, visit, { ...named, look: lookId, ...(at === undefined ? {} : { at }) }, taken);
    return;
  }
  const own = new RecordReader(spread, named.path, [...places, ...SHARED_FIELDS], problems);
  for (const [each, { key, value }] of spread.fields) {
    if (places.includes(each)) readOneLook(reading, visit, { name: `${named.name}@${each}`, key, node: value, path: own.pathOf(each), look: lookId, at: each, shared: own }, taken);
  }
}

interface OneLook extends NamedNode {
  readonly look: string;
  readonly at?: string;
  readonly shared?: RecordReader;
}

function readOneLook(reading: FileReading, visit: Visit, one: OneLook, taken: Set<string>): void {
  const { problems } = reading;
  if (taken.has(one.name)) {
    problems.add(one.path, one.key, one.name, 'this look is answered twice in one visit', 'each look once; the first is used');
    return;
  }
  taken.add(one.name);
  const long = one.node.kind === 'record' ? new RecordReader(one.node, one.path, LOOK_FIELDS, problems) : undefined;
  const answer = long === undefined ? answerText(reading, one) : long.need('answer', answersWords(one.look));
  if (answer === undefined) return;
  const wrong = answerProblem(one.look, answer);
  if (wrong !== undefined) {
    problems.put(one.path, one.node.kind === 'text' ? one.node.span : (long?.spanOf('answer') ?? one.key), { ...wrong, field: one.path });
    return;
  }
  const field = (name: string): RecordReader | undefined => (long?.node(name) !== undefined ? long : one.shared?.node(name) !== undefined ? one.shared : undefined);
  const words = field('words')?.text('words');
  const saidBy = field('told by')?.text('told by', 'who said so');
  const photographs = hashes(field('photographs'));
  const body: SightingBody = {
    look: one.look,
    ...(one.at === undefined ? {} : { at: one.at }),
    answer,
    standing: saidBy === undefined ? 'seen' : 'told',
    ...(saidBy === undefined ? {} : { saidBy }),
    ...(words === undefined ? {} : { words }),
    ...(photographs.length === 0 ? {} : { photographs }),
  };
  addDraft<'sighting'>(reading, { kind: 'sighting', ...stamped(long ?? one.shared, visit), name: one.name, path: one.path, span: one.key, body });
}

const answersWords = (look: string): string => `one of ${lookOf(look)?.look.answers.map((answer) => answer.id).join(', ') ?? ''}`;

function answerText(reading: FileReading, one: OneLook): string | undefined {
  if (one.node.kind === 'text' && one.node.text.trim() !== '') return one.node.text.trim();
  reading.problems.add(one.path, one.node.span, one.node.kind === 'text' ? undefined : nodeWords(one.node), 'no answer is written', answersWords(one.look));
  return undefined;
}

/** SHA-256 of photographs; what is none is listed. */
function hashes(reader: RecordReader | undefined): readonly string[] {
  if (reader === undefined) return [];
  const right = (node: SurveyNode): boolean => node.kind === 'text' && /^[0-9a-f]{64}$/.test(node.text);
  return reader.list('photographs').flatMap(({ node, path }) => {
    if (right(node)) return [nodeWords(node)];
    reader.problems.add(path, node.span, nodeWords(node), 'a photograph is named by its SHA-256', '64 lower-case hexadecimal figures');
    return [];
  });
}
