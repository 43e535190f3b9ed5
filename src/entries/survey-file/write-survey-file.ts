import { Document, isMap, isScalar, isSeq, visit as walk, type Pair } from 'yaml';
import { isKnownEntry } from '../codec/is-known-entry.ts';
import type { Entry, EntryOf } from '../entry.ts';
import { canonicalJson } from '../hash/canonical-json.ts';
import { orderEntries } from '../order/order-entries.ts';
import { FILE_VERSION, readSurveyFile } from './read-survey-file.ts';
import { hammerBlock } from './write-hammer.ts';
import { visitBlocks } from './write-visits.ts';

/** Sections that stand line by line however short they are. */
const BLOCKS: readonly string[] = ['as made', 'readings', 'looks', 'settings', 'jobs', 'overrides'];

/** Rounds of writing and reading back; each round can only move entries to the part that is kept word for word. */
const MOST_ROUNDS = 8;

/**
 * Writes the log of one hammer as a survey file. Reading the text again gives the same entries, ids included: what the
 * short notation cannot say exactly (a kind from a newer version, a value worked out elsewhere) is kept word for word at
 * the end of the file.
 * @param entries the whole log of one hammer, in any order; not written
 * @throws RangeError where the log has no enrol entry, or entries of several hammers
 */
export function writeSurveyFile(entries: readonly Entry[]): string {
  const ordered = orderEntries(entries);
  const enrol = ordered.find((entry): entry is EntryOf<'enrol'> => isKnownEntry(entry) && entry.kind === 'enrol');
  if (enrol === undefined) throw new RangeError(`a survey file needs the enrol entry of its hammer; one such entry: ${ordered.length} entries without it`);
  const strange = ordered.find((entry) => entry.hammer !== enrol.hammer || (entry.kind === 'enrol' && entry.id !== enrol.id));
  if (strange !== undefined) throw new RangeError(`a survey file holds one hammer; entries of ${enrol.hammer}: ${strange.hammer}`);
  const verbatim = new Set(ordered.filter((entry) => !isKnownEntry(entry)).map((entry) => entry.id));
  let text = '';
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    text = textOf(enrol, ordered, verbatim);
    const back = new Map(readSurveyFile(text).entries.map((entry) => [entry.id, canonicalJson(entry)]));
    const lost = ordered.filter((entry) => back.get(entry.id) !== canonicalJson(entry));
    if (lost.length === 0 || lost.every((entry) => verbatim.has(entry.id))) return text;
    for (const entry of lost) verbatim.add(entry.id);
  }
  return text;
}

function textOf(enrol: EntryOf<'enrol'>, ordered: readonly Entry[], verbatim: ReadonlySet<string>): string {
  const known = ordered.filter(isKnownEntry).filter((entry) => entry.kind !== 'enrol' && !verbatim.has(entry.id));
  const { visits, asMade } = visitBlocks(enrol, known);
  const more = ordered.filter((entry) => verbatim.has(entry.id)).map((entry) => canonicalJson(entry));
  const content = {
    tupwise: Number(FILE_VERSION),
    hammer: hammerBlock(enrol, ordered.filter(isKnownEntry).filter((entry) => entry.kind !== 'enrol' && !verbatim.has(entry.id)), verbatim.has(enrol.id)),
    ...(Object.keys(asMade).length === 0 ? {} : { 'as made': asMade }),
    visits,
    ...(more.length === 0 ? {} : { more }),
  };
  const document = new Document(content, { schema: 'core', aliasDuplicateObjects: false });
  walk(document, {
    // Short records stand on one line, as a person would write them.
    Pair: (_key, pair: Pair) => {
      if (!BLOCKS.includes(String(pair.key)) && isMap(pair.value) && pair.value.items.every((item) => isScalar(item.value))) pair.value.flow = true;
    },
    Seq: (_key, list) => {
      for (const item of list.items) if (isMap(item) && !item.has('date') && item.items.every((inner) => isScalar(inner.value))) item.flow = true;
      if (isSeq(list) && list.items.every((item) => isScalar(item) && typeof item.value === 'string' && item.value.length === 64)) list.flow = true;
    },
  });
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}
