import { placeOf } from '../../hammer/index.ts';
import { placeProblem, toolProblem, wayProblem } from '../against-vocabulary.ts';
import type { AsMadeBody, ReadingBody, SettingBody, WrittenQuantity } from '../entry.ts';
import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import { stamped } from './stamped.ts';
import type { SurveyNode } from './survey-tree.ts';
import type { Span } from './survey-problem.ts';
import { readWrittenField, readWrittenNode } from './read-written.ts';

export type ValueSection = 'readings' | 'settings' | 'as made';

/** Fields of the long form in each section. */
export const VALUE_FIELDS: Readonly<Record<ValueSection, readonly string[]>> = {
  readings: ['value', 'tool', 'way', 'words', 'told by', ...STAMP_FIELDS],
  settings: ['value', 'before', 'words', ...STAMP_FIELDS],
  'as made': ['value', 'from', ...STAMP_FIELDS],
};

/** One named value of a section, with the places where it stands. */
export interface NamedNode {
  readonly name: string;
  readonly key: Span;
  readonly node: SurveyNode;
  readonly path: string;
}

/**
 * Reads one line of readings, settings or as-made values: `part.place: 3 in`, the long form with `value`, or a record of
 * several places on the part, whose shared fields hold for each of them.
 * @param taken names already read in this section of this visit; one place is read once
 */
export function readValue(reading: FileReading, section: ValueSection, visit: Visit, named: NamedNode, taken: Set<string>): void {
  const { problems, family } = reading;
  const [placeId = '', at, ...more] = named.name.split('@');
  const unknown = placeProblem(placeId, more.length > 0 ? undefined : at, family, { wholeToo: at === undefined && spreadOf(named.node, placeId) !== undefined, brief: problems.full });
  if (unknown !== undefined) {
    problems.put(named.path, named.key, { ...unknown, field: named.path });
    return;
  }
  const spread = at === undefined ? spreadOf(named.node, placeId) : undefined;
  if (spread === undefined) {
    readOne(reading, section, visit, { ...named, place: placeId, ...(at === undefined ? {} : { at }) }, taken);
    return;
  }
  const own = new RecordReader(spread.record, named.path, [...spread.places, ...VALUE_FIELDS[section].filter((field) => !['value', 'id'].includes(field))], problems);
  for (const [each, { key, value }] of spread.record.fields) {
    if (spread.places.includes(each)) readOne(reading, section, visit, { name: `${named.name}@${each}`, key, node: value, path: own.pathOf(each), place: placeId, at: each, shared: own }, taken);
  }
}

/** A record whose fields name places on the part, rather than the long form of one value. */
function spreadOf(node: SurveyNode, placeId: string): { readonly record: Extract<SurveyNode, { kind: 'record' }>; readonly places: readonly string[] } | undefined {
  const places = placeOf(placeId)?.place.at ?? [];
  return node.kind === 'record' && places.some((each) => node.fields.has(each)) ? { record: node, places } : undefined;
}

interface OneValue extends NamedNode {
  readonly place: string;
  readonly at?: string;
  readonly shared?: RecordReader;
}

function readOne(reading: FileReading, section: ValueSection, visit: Visit, one: OneValue, taken: Set<string>): void {
  const { problems } = reading;
  if (taken.has(one.name)) {
    problems.add(one.path, one.key, one.name, 'this place is read twice in one visit', 'each place once; the first is used, later ones belong to a later visit');
    return;
  }
  taken.add(one.name);
  const long = one.node.kind === 'record' ? new RecordReader(one.node, one.path, VALUE_FIELDS[section], problems) : undefined;
  const field = (name: string): RecordReader | undefined => (long?.node(name) !== undefined ? long : one.shared?.node(name) !== undefined ? one.shared : undefined);
  const place = placeOf(one.place)?.place;
  if (place === undefined) return;
  const tool = field('tool')?.text('tool', `one of ${place.tools.join(', ')}`);
  const wrongTool = tool === undefined ? undefined : toolProblem(tool);
  if (wrongTool !== undefined) problems.put(`${one.path}.tool`, field('tool')?.spanOf('tool') ?? one.key, { ...wrongTool, field: `${one.path}.tool` });
  const usable = wrongTool === undefined ? tool : undefined;
  const purpose = { place: one.place, ...(usable === undefined ? {} : { tool: usable }) };
  const written = long === undefined ? readWrittenNode(problems, one.path, one.node, purpose) : readWrittenField(long, 'value', purpose);
  if (written === undefined) return;
  const common = { ...stamped(stampReader(long, one.shared), visit), name: section === 'as made' ? `${one.name}#as-made` : one.name, path: one.path, span: one.key };
  const where = { place: one.place, ...(one.at === undefined ? {} : { at: one.at }) };
  if (section === 'as made') {
    const from = field('from')?.text('from');
    addDraft<'as-made'>(reading, { kind: 'as-made', ...common, body: { ...where, ...written, ...(from === undefined ? {} : { from }) } satisfies AsMadeBody });
    return;
  }
  const words = field('words')?.text('words');
  const said = words === undefined ? {} : { words };
  if (section === 'settings') {
    const before = long === undefined ? undefined : beforeOf(long, one.place);
    addDraft<'setting'>(reading, { kind: 'setting', ...common, body: { ...where, ...written, ...said, ...(before === undefined ? {} : { before }) } satisfies SettingBody });
    return;
  }
  const way = field('way')?.text('way', 'how it was measured');
  const wrongWay = way === undefined ? undefined : wayProblem(one.place, way);
  if (wrongWay !== undefined) problems.put(`${one.path}.way`, field('way')?.spanOf('way') ?? one.key, { ...wrongWay, field: `${one.path}.way` });
  const saidBy = field('told by')?.text('told by', 'who said so');
  const body: ReadingBody = {
    ...where, ...written, ...said,
    standing: saidBy === undefined ? 'measured' : 'told',
    ...(usable === undefined ? {} : { tool: usable }),
    ...(way === undefined || wrongWay !== undefined ? {} : { way }),
    ...(saidBy === undefined ? {} : { saidBy }),
  };
  addDraft<'reading'>(reading, { kind: 'reading', ...common, body });
}

/** The record that gives an hour or id: its own before the shared one. */
const stampReader = (long: RecordReader | undefined, shared: RecordReader | undefined): RecordReader | undefined =>
  long !== undefined && STAMP_FIELDS.some((name) => long.node(name) !== undefined) ? long : (shared ?? long);

const beforeOf = (long: RecordReader, place: string): WrittenQuantity | undefined => (long.node('before') === undefined ? undefined : readWrittenField(long, 'before', { place }));
