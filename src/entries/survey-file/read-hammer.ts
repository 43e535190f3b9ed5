import { LINKAGE_FAMILIES } from '../../hammer/index.ts';
import type { EnrolBody } from '../entry.ts';
import { RecordReader } from './record-reader.ts';
import { readId } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';
import type { SurveyProblems } from './survey-problem.ts';
import { readWrittenField } from './read-written.ts';

export const HAMMER_FIELDS: readonly string[] = ['tag', 'name', 'family', 'class', 'maker', 'serial', 'year', 'place', 'words', 'invented', 'id', 'enrolled'];
export const ENROLLED_FIELDS: readonly string[] = ['date', 'time', 'zone', 'by'];

export interface HammerRead {
  readonly body: EnrolBody;
  readonly reader: RecordReader;
  readonly id?: string;
}

/**
 * Reads the block that says which hammer it is.
 * @returns the body of the enrol entry, or undefined where tag, family or class cannot be used: without them nothing can be kept
 */
export function readHammer(node: SurveyNode, problems: SurveyProblems): HammerRead | undefined {
  if (node.kind !== 'record') {
    problems.add('hammer', node.span, nodeWords(node), 'hammer is no record', 'tag, family and class of the hammer');
    return undefined;
  }
  const reader = new RecordReader(node, 'hammer', HAMMER_FIELDS, problems);
  const tag = reader.need('tag', 'the owner\'s tag, such as HB-65');
  reader.need('family', `one of ${LINKAGE_FAMILIES.join(', ')}`);
  const family = reader.word('family', LINKAGE_FAMILIES);
  const ramClass = reader.node('class') === undefined ? (reader.missing('class', 'the weight class of the ram, such as 65 lb'), undefined) : readWrittenField(reader, 'class', { dimension: 'mass' });
  const invented = reader.word('invented', ['true', 'false']);
  const id = readId(reader);
  const optional = Object.fromEntries((['name', 'maker', 'serial', 'place', 'year', 'words'] as const).flatMap((name) => {
    const text = reader.text(name);
    return text === undefined ? [] : [[name, text]];
  }));
  if (ramClass !== undefined && ramClass.quantity.value <= 0) {
    reader.refuse('class', ramClass.asWritten, 'a weight above zero, such as 65 lb');
    return undefined;
  }
  if (tag === undefined || family === undefined || ramClass === undefined) return undefined;
  const body: EnrolBody = { tag, family, ramClass, ...optional, ...(invented === undefined ? {} : { invented: invented === 'true' }) };
  return { body, reader, ...(id === undefined ? {} : { id }) };
}
