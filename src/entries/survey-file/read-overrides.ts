import type { OverrideBody, WrittenQuantity } from '../entry.ts';
import { readWritten } from '../written.ts';
import type { Dimension } from '../../methods/quantity/index.ts';
import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import type { NamedNode } from './read-values.ts';
import { stamped } from './stamped.ts';
import { nodeWords } from './survey-tree.ts';

export const OVERRIDE_FIELDS: readonly string[] = ['from', 'grade', 'author', 'reason', ...STAMP_FIELDS];
export const OVERRIDE_GRADES = ['watch', 'limited', 'stand-down'] as const;

/** Dimensions that a limit may have, the likeliest first: the unit written decides, and a bare number is a share. */
const LIMIT_DIMENSIONS: readonly Dimension[] = ['length', 'ratio', 'rotation', 'power', 'temperature', 'time', 'mass', 'force', 'pressure', 'velocity', 'energy', 'voltage', 'current', 'level', 'angle', 'count'];

const DOTTED = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;

/** Reads one owner's own limit: `criterion` or `criterion@point`, with author and reason, and the step where there is one. */
export function readOverride(reading: FileReading, visit: Visit, named: NamedNode): void {
  const { problems } = reading;
  const [criterion = '', at, ...more] = named.name.split('@');
  if (!DOTTED.test(criterion) || more.length > 0) {
    problems.add(named.path, named.key, named.name, 'this is no name of a criterion', 'dotted trade words such as guide.play');
    return;
  }
  if (named.node.kind !== 'record') {
    problems.add(named.path, named.node.span, nodeWords(named.node), 'an owner\'s own limit is a record', 'reason, author, and from with grade');
    return;
  }
  const reader = new RecordReader(named.node, named.path, OVERRIDE_FIELDS, problems);
  const reason = reader.need('reason', 'why the owner judges differently');
  const author = reader.text('author') ?? visit.by;
  const grade = reader.word('grade', OVERRIDE_GRADES);
  const from = reader.node('from') === undefined ? undefined : readLimit(reader);
  if (reader.node('from') !== undefined && reader.node('grade') === undefined) reader.missing('grade', `one of ${OVERRIDE_GRADES.join(', ')}, which holds from that value on`);
  if (reader.node('grade') !== undefined && reader.node('from') === undefined) reader.missing('from', 'the value from which the grade holds, such as 0.040 in');
  if (reason === undefined || (reader.node('from') !== undefined) !== (from !== undefined && grade !== undefined)) return;
  const body: OverrideBody = {
    criterion, ...(at === undefined ? {} : { at }),
    ...(from === undefined || grade === undefined ? {} : { step: { ...from, grade } }),
    author, reason,
  };
  addDraft<'override'>(reading, { kind: 'override', ...stamped(reader, visit), name: named.name, path: named.path, span: named.key, body });
}

function readLimit(reader: RecordReader): WrittenQuantity | undefined {
  const text = reader.text('from', 'a value in shop notation such as 0.040 in');
  if (text === undefined) return undefined;
  const path = reader.pathOf('from');
  for (const dimension of LIMIT_DIMENSIONS) {
    const read = readWritten(text, { dimension, field: path });
    // A limit is a step of a rule and so has no doubt of its own.
    if (read.ok) return { asWritten: read.written.asWritten, quantity: { ...read.written.quantity, uncertainty: 0 } };
  }
  reader.refuse('from', text, 'a value in shop notation such as 0.040 in or 15 %');
  return undefined;
}
