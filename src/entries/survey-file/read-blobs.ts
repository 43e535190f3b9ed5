import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import { readPart } from './read-told.ts';
import { stamped } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';

export const PHOTOGRAPH_FIELDS: readonly string[] = ['sha256', 'type', 'words', 'part', ...STAMP_FIELDS];
export const RECORDING_FIELDS: readonly string[] = ['sha256', 'type', 'words', 'run', ...STAMP_FIELDS];
export const RUNS = ['idle', 'light', 'full', 'release', 'work'] as const;

/** Reads one photograph: its SHA-256, its type, and words for a reader who cannot see it. */
export function readPhotograph(reading: FileReading, visit: Visit, node: SurveyNode, path: string): void {
  const reader = blobReader(reading, node, path, PHOTOGRAPH_FIELDS);
  if (reader === undefined) return;
  const blob = readBlob(reader, /^image\//, 'an image type such as image/jpeg');
  const words = reader.need('words', 'what the photograph shows');
  const part = readPart(reader);
  if (blob === undefined || words === undefined) return;
  addDraft<'photograph'>(reading, { kind: 'photograph', ...stamped(reader, visit), path, span: node.span, body: { ...blob, words, ...(part === undefined ? {} : { part }) } });
}

/** Reads one sound recording. */
export function readRecording(reading: FileReading, visit: Visit, node: SurveyNode, path: string): void {
  const reader = blobReader(reading, node, path, RECORDING_FIELDS);
  if (reader === undefined) return;
  const blob = readBlob(reader, /^(audio|video)\//, 'a sound type such as audio/wav');
  const words = reader.text('words');
  const run = reader.word('run', RUNS);
  if (blob === undefined) return;
  addDraft<'recording'>(reading, { kind: 'recording', ...stamped(reader, visit), path, span: node.span, body: { ...blob, ...(words === undefined ? {} : { words }), ...(run === undefined ? {} : { run }) } });
}

function blobReader(reading: FileReading, node: SurveyNode, path: string, fields: readonly string[]): RecordReader | undefined {
  if (node.kind === 'record') return new RecordReader(node, path, fields, reading.problems);
  reading.problems.add(path, node.span, nodeWords(node), 'this is no record', 'sha256, type and words');
  return undefined;
}

function readBlob(reader: RecordReader, types: RegExp, expected: string): { readonly sha256: string; readonly mediaType: string } | undefined {
  const sha256 = reader.need('sha256', '64 lower-case hexadecimal figures');
  const mediaType = reader.need('type', expected);
  if (sha256 !== undefined && !/^[0-9a-f]{64}$/.test(sha256)) {
    reader.refuse('sha256', sha256, '64 lower-case hexadecimal figures');
    return undefined;
  }
  if (mediaType !== undefined && !(types.test(mediaType) && /^[a-z]+\/[a-z0-9.+-]+$/.test(mediaType))) {
    reader.refuse('type', mediaType, expected);
    return undefined;
  }
  return sha256 === undefined || mediaType === undefined ? undefined : { sha256, mediaType };
}
