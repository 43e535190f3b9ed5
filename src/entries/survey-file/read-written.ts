import { isToolName } from '../against-vocabulary.ts';
import type { WrittenQuantity } from '../entry.ts';
import { readForPlace, readWritten, type WrittenReading } from '../written.ts';
import type { Dimension } from '../../methods/quantity/index.ts';
import type { RecordReader } from './record-reader.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';
import type { Span, SurveyProblems } from './survey-problem.ts';

/** What a quantity is for: a measuring place with its own bounds, or a bare dimension. */
export type Purpose = { readonly place: string; readonly tool?: string } | { readonly dimension: Dimension };

function readAs(purpose: Purpose, text: string, path: string): WrittenReading {
  if ('dimension' in purpose) return readWritten(text, { dimension: purpose.dimension, field: path });
  const { place, tool } = purpose;
  return readForPlace(place, text, tool !== undefined && isToolName(tool) ? tool : undefined, path);
}

/** Reads a quantity from a node, or lists what is wrong with it. */
export function readWrittenNode(problems: SurveyProblems, path: string, node: SurveyNode, purpose: Purpose, span: Span = node.span): WrittenQuantity | undefined {
  if (node.kind !== 'text' || node.text.trim() === '') {
    problems.add(path, span, node.kind === 'text' ? undefined : nodeWords(node), 'no value is written', 'a value in shop notation such as 2 3/4 in or 12 thou');
    return undefined;
  }
  const read = readAs(purpose, node.text, path);
  if (read.ok) return read.written;
  problems.put(path, span, read.problem);
  return undefined;
}

/** Reads a quantity from a named field; a missing one is listed. */
export function readWrittenField(reader: RecordReader, name: string, purpose: Purpose): WrittenQuantity | undefined {
  const node = reader.node(name);
  if (node !== undefined) return readWrittenNode(reader.problems, reader.pathOf(name), node, purpose);
  reader.missing(name, 'a value in shop notation such as 2 3/4 in or 12 thou');
  return undefined;
}
