import { isKnownEntry, orderEntries, type Entry, type EntryOf, type KnownEntry } from '../../entries/index.ts';
import { placeOf } from '../../hammer/index.ts';
import { valueKey, type Value } from '../value.ts';
import { contradictionsOf, isWorkDone, OPEN_ANSWER } from './contradictions.ts';
import { cornerMeans } from './corner-means.ts';
import { struckOut } from './struck-out.ts';
import type { Known, KnownLook, PastReading, Stamp } from './known.ts';

/** A folded hammer while it is being gathered; written only here. */
interface Gathering {
  identity: EntryOf<'enrol'> | undefined;
  readonly values: Map<string, Value>;
  readonly looks: Map<string, KnownLook>;
  readonly history: Map<string, PastReading[]>;
  readonly statements: Known['statements'][number][];
  readonly photographs: Known['photographs'][number][];
  readonly settings: Known['settings'][number][];
  readonly recordings: Known['recordings'][number][];
  readonly prices: Known['prices'][number][];
  readonly progress: Map<string, Known['progress'][string]>;
  readonly overrides: Known['overrides'][number][];
  readonly toldAgainst: Map<string, KnownLook>;
  /** Entries that were made before the last work was done on the machine. */
  readonly beforeWork: Set<string>;
  hoursRun: number;
  readonly problems: string[];
}

const stampOf = (entry: Entry): Stamp => ({ when: entry.at, by: entry.by, entry: entry.id });

/**
 * Folds a log into the hammer as known today. Any arrival order gives the same result.
 * @param entries the whole log of one hammer; kinds from a newer version are passed over
 * @returns the hammer as known, or undefined where nobody has enrolled it yet
 */
export const foldEntries = (entries: readonly Entry[]): Known | undefined => foldOrdered(orderEntries(entries));

/** The same for a log that `orderEntries` has put in order already. */
export function foldOrdered(entries: readonly Entry[]): Known | undefined {
  const ordered = entries.filter(isKnownEntry);
  const struck = struckOut(ordered);
  const gathering: Gathering = {
    identity: undefined, values: new Map(), looks: new Map(), history: new Map(), statements: [], photographs: [],
    settings: [], recordings: [], prices: [], progress: new Map(), overrides: [], toldAgainst: new Map(), beforeWork: new Set(), hoursRun: 0, problems: [...struck.problems],
  };
  const used = ordered.filter((entry) => !struck.ids.has(entry.id));
  for (const entry of used) gather(gathering, entry);
  if (gathering.identity === undefined) return undefined;
  for (const mean of cornerMeans(gathering.values)) gathering.values.set(mean.key, mean);
  return {
    hammer: gathering.identity.hammer,
    identity: gathering.identity.body,
    values: Object.fromEntries(gathering.values),
    looks: Object.fromEntries(gathering.looks),
    history: Object.fromEntries(gathering.history),
    statements: gathering.statements,
    photographs: gathering.photographs,
    settings: gathering.settings,
    recordings: gathering.recordings,
    prices: gathering.prices,
    progress: Object.fromEntries(gathering.progress),
    overrides: gathering.overrides,
    hoursRun: gathering.hoursRun,
    visits: visitsOf(used),
    contradictions: contradictionsOf(used),
    toldAgainst: Object.fromEntries(gathering.toldAgainst),
    problems: gathering.problems,
  };
}

function gather(into: Gathering, entry: KnownEntry): void {
  const stamp = stampOf(entry);
  switch (entry.kind) {
    case 'enrol':
      into.identity = entry;
      return;
    case 'as-made': {
      const key = `${valueKey(entry.body.place, entry.body.at)}#as-made`;
      into.values.set(key, {
        key, title: `${titleOf(entry.body.place)}, as made`, outcome: { state: 'known', quantity: entry.body.quantity },
        standing: 'as-made', rests: 'as-made', from: [], sources: [], evidence: [entry.id], asWritten: entry.body.asWritten,
        when: entry.at, ...(entry.body.from === undefined ? {} : { words: entry.body.from }),
      });
      return;
    }
    case 'reading': {
      const { body } = entry;
      putReading(into, entry, valueKey(body.place, body.at), body.place, body.standing, [body.way === undefined ? undefined : wayWords(body.place, body.way), body.words]);
      return;
    }
    case 'setting': {
      const { body } = entry;
      putReading(into, entry, valueKey(body.place, body.at), body.place, 'measured', ['as set', body.words]);
      into.settings.push({
        place: body.place, asWritten: body.asWritten, ...stamp,
        ...(body.at === undefined ? {} : { at: body.at }),
        ...(body.before === undefined ? {} : { before: body.before.asWritten }),
        ...(body.words === undefined ? {} : { words: body.words }),
      });
      return;
    }
    case 'sighting': {
      const { body } = entry;
      const key = valueKey(body.look, body.at);
      const look: KnownLook = {
        key, look: body.look, answer: body.answer, standing: body.standing, photographs: body.photographs ?? [], ...stamp,
        ...(body.at === undefined ? {} : { at: body.at }), ...(body.words === undefined ? {} : { words: body.words }),
      };
      const held = into.looks.get(key);
      into.toldAgainst.delete(key);
      if (body.standing === 'told' && held !== undefined && held.standing === 'seen' && held.answer !== OPEN_ANSWER && !into.beforeWork.has(held.entry)) {
        if (held.answer !== look.answer) into.toldAgainst.set(key, look);
      } else {
        into.looks.set(key, look);
      }
      return;
    }
    case 'statement':
      into.statements.push({ ...entry.body, ...stamp });
      return;
    case 'photograph':
      into.photographs.push({ ...entry.body, when: entry.at, entry: entry.id });
      return;
    case 'recording':
      into.recordings.push({ ...entry.body, ...stamp });
      return;
    case 'price':
      into.prices.push({ ...entry.body, ...stamp });
      return;
    case 'job-progress':
      if (isWorkDone(entry)) for (const one of [...into.looks.values(), ...into.values.values()]) ('entry' in one ? [one.entry] : one.evidence).forEach((id) => into.beforeWork.add(id));
      into.progress.set(entry.body.job, { ...entry.body, ...stamp });
      return;
    case 'hours':
      into.hoursRun += entry.body.quantity.value;
      return;
    case 'override':
      into.overrides.push({ ...entry.body, ...stamp });
      return;
    case 'correction':
      return;
  }
}

function putReading(into: Gathering, entry: EntryOf<'reading'> | EntryOf<'setting'>, key: string, place: string, standing: 'told' | 'measured', words: readonly (string | undefined)[]): void {
  const { quantity, asWritten } = entry.body;
  const held = into.values.get(key);
  // What was measured is not replaced by what somebody tells, unless work was done since.
  if (standing === 'told' && held?.standing === 'measured' && !held.evidence.some((id) => into.beforeWork.has(id))) return;
  const said = words.filter((word) => word !== undefined).join('; ');
  into.values.set(key, {
    key, title: titleOf(place), outcome: { state: 'known', quantity }, standing, rests: standing, from: [], sources: [],
    evidence: [entry.id], asWritten, when: entry.at, ...(said === '' ? {} : { words: said }),
    ...('way' in entry.body && entry.body.way !== undefined ? { way: entry.body.way } : {}),
  });
  const past = into.history.get(key) ?? [];
  past.push({ when: entry.at, by: entry.by, value: quantity.value, uncertainty: quantity.uncertainty, asWritten, entry: entry.id });
  into.history.set(key, past);
}

/** Title of a measuring place; an unknown place keeps its id, since a newer version may know it. */
const titleOf = (place: string): string => placeOf(place)?.place.name ?? place;

const wayWords = (place: string, way: string): string | undefined => placeOf(place)?.place.ways?.find((one) => one.id === way)?.words;

function visitsOf(entries: readonly KnownEntry[]): Known['visits'] {
  const byDate = new Map<string, { by: Set<string>; entries: number }>();
  for (const entry of entries) {
    const date = entry.at.slice(0, 10);
    const visit = byDate.get(date) ?? { by: new Set(), entries: 0 };
    visit.by.add(entry.by);
    visit.entries += 1;
    byDate.set(date, visit);
  }
  return [...byDate].map(([date, visit]) => ({ date, by: [...visit.by].sort(), entries: visit.entries }));
}
