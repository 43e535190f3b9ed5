import { partOf, PARTS } from '../../hammer/index.ts';
import type { StatementBody } from '../entry.ts';
import { namesAllowed } from '../names-allowed.ts';
import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import { stamped } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';

export const TOLD_FIELDS: readonly string[] = ['words', 'by', 'part', ...STAMP_FIELDS];

/** Reads one statement: the bare words, or words with who said them and the part they are about. */
export function readTold(reading: FileReading, visit: Visit, node: SurveyNode, path: string): void {
  const { problems } = reading;
  if (node.kind === 'text' && node.text.trim() !== '') {
    addDraft<'statement'>(reading, { kind: 'statement', ...stamped(undefined, visit), path, span: node.span, body: { words: node.text.trim() } });
    return;
  }
  if (node.kind !== 'record') {
    problems.add(path, node.span, nodeWords(node), 'nothing was said here', 'words, and by whom');
    return;
  }
  const reader = new RecordReader(node, path, TOLD_FIELDS, problems);
  const words = reader.need('words', 'what was said');
  const part = readPart(reader);
  const saidBy = reader.text('by', 'who said so');
  if (words === undefined) return;
  const body: StatementBody = { words, ...(saidBy === undefined ? {} : { saidBy }), ...(part === undefined ? {} : { part }) };
  addDraft<'statement'>(reading, { kind: 'statement', ...stamped(reader, visit), path, span: node.span, body });
}

/** Reads an optional part; a part that does not exist is listed and left out, the words are kept. */
export function readPart(reader: RecordReader): string | undefined {
  const part = reader.text('part', 'a part such as frame');
  if (part === undefined || partOf(part) !== undefined) return part;
  reader.refuse('part', part, namesAllowed(part, PARTS.map((each) => each.id), reader.problems.full));
  return undefined;
}
