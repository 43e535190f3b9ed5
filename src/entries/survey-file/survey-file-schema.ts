import { LINKAGE_FAMILIES, PARTS } from '../../hammer/index.ts';
import { RUNS } from './read-blobs.ts';
import { OVERRIDE_GRADES } from './read-overrides.ts';
import { PRICE_UNITS } from '../entry.ts';
import { JOB_STATES, PRICE_SOURCES } from './read-work.ts';
import { defined, DEFINITIONS, lookProperties, placeProperties, record, STAMP, TEXT, WORDS, type Schema } from './schema-values.ts';

const DATE: Schema = { type: 'string', pattern: '^\\d{4}-\\d{1,2}-\\d{1,2}$', description: 'The day, such as 2026-04-11.' };
const ZONE: Schema = { type: 'string', pattern: '^(Z|[+-]\\d{2}:\\d{2})$', description: 'Hours from UTC, such as -05:00; UTC where it is left out.' };
const NAME = '^[a-z0-9]+(-[a-z0-9]+)*(\\.[a-z0-9]+(-[a-z0-9]+)*)*(@[a-z0-9-]+)?$';
const SHA256: Schema = { type: 'string', pattern: '^[0-9a-f]{64}$' };
const PART: Schema = { enum: PARTS.map((part) => part.id), description: 'Part that it is about.' };

/** A list, or one item by itself. */
const list = (items: Schema, description: string): Schema => ({ description, anyOf: [{ type: 'array', items }, items, { type: 'null' }] });

/** A section of named records; left blank it counts as absent. */
const section = (properties: Readonly<Record<string, Schema>>, description: string): Schema => ({ ...record(properties), type: ['object', 'null'], description });

/** A section whose names the vocabulary does not hold. */
const named = (value: Schema, description: string): Schema => ({ type: ['object', 'null'], patternProperties: { [NAME]: value }, additionalProperties: false, description });

const hammer = (): Schema => record({
  tag: { ...TEXT, description: 'The owner\'s tag.' },
  name: WORDS,
  family: { enum: LINKAGE_FAMILIES },
  class: { ...TEXT, description: 'Weight class of the ram, such as 65 lb.' },
  maker: WORDS, serial: TEXT, year: TEXT, place: WORDS, words: WORDS,
  invented: { type: 'boolean', description: 'True for a hammer of an invented scenario; every paper then says so.' },
  enrolled: record({ date: DATE, time: defined('time'), zone: ZONE, by: WORDS }, ['date', 'by'], 'When and by whom it was enrolled, where that was not at the first visit.'),
  id: defined('id'),
}, ['tag', 'family', 'class'], 'Which hammer it is.');

const visitProperties = (): Readonly<Record<string, Schema>> => ({
  date: DATE, time: defined('time'), zone: ZONE, by: { ...WORDS, description: 'Who made the visit.' },
  'as made': defined('as-made'),
  readings: section(placeProperties('reading'), 'What was measured, in shop notation.'),
  looks: section(lookProperties(), 'What was looked at, felt or heard, and the answer.'),
  settings: section(placeProperties('setting'), 'What was adjusted: the value set, and the value before.'),
  told: list({ anyOf: [WORDS, record({ words: WORDS, by: WORDS, part: PART, ...STAMP }, ['words'])] }, 'What somebody said: told, not seen.'),
  photographs: list(record({ sha256: SHA256, type: { type: 'string', pattern: '^image/' }, words: WORDS, part: PART, ...STAMP }, ['sha256', 'type', 'words']), 'Photographs by their SHA-256.'),
  recordings: list(record({ sha256: SHA256, type: { type: 'string', pattern: '^(audio|video)/' }, words: WORDS, run: { enum: RUNS }, ...STAMP }, ['sha256', 'type']), 'Sound recordings by their SHA-256.'),
  hours: { description: 'Running time since the last such line, such as 6 h.', anyOf: [TEXT, record({ value: TEXT, ...STAMP }, ['value'])] },
  jobs: named({ anyOf: [{ enum: JOB_STATES }, record({ state: { enum: JOB_STATES }, hours: TEXT, words: WORDS, ...STAMP }, ['state'])] }, 'How far each job has come.'),
  prices: list(record({ of: { type: 'string', pattern: NAME }, price: { ...TEXT, examples: ['120 USD', '120'] }, source: { enum: PRICE_SOURCES }, quantity: { type: ['number', 'string'] }, unit: { enum: PRICE_UNITS }, on: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$' }, 'told by': WORDS, 'lead days': { type: ['number', 'string'] }, words: WORDS, ...STAMP }, ['of', 'price']), 'Prices paid, quoted, heard or listed; money.eur for what one EUR costs in other money.'),
  overrides: named(record({ from: TEXT, grade: { enum: OVERRIDE_GRADES }, author: WORDS, reason: WORDS, ...STAMP }, ['reason']), 'The owner\'s own limits, by criterion.'),
  corrections: list(record({ visit: { type: 'string' }, of: WORDS, entry: defined('id'), why: WORDS, ...STAMP }, ['why']), 'Entries that were wrong: the day of the visit, the name in it, and why.'),
});

/**
 * The JSON Schema (draft 7) of a survey file, made from the vocabulary, so that an editor completes parts, places, looks and
 * answers and shows how each is taken. The reader itself says more: it also reads the quantities.
 */
export function surveyFileSchema(): Schema {
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Survey file of one hammer',
    description: 'What was measured, seen, heard, set and done on one hammer, visit by visit, in shop notation.',
    ...record({
      tupwise: { const: 1, description: 'Version of the file.' },
      hammer: hammer(),
      'as made': defined('as-made'),
      visits: { type: 'array', items: record(visitProperties(), ['date', 'by']), minItems: 1 },
      more: { type: 'array', items: { type: 'string' }, description: 'Entries kept word for word; written by the program.' },
    }, ['tupwise', 'hammer', 'visits']),
    definitions: { ...DEFINITIONS, 'as-made': section(placeProperties('as-made-value', (place) => place.asMade === true), 'Values as made that are known.') },
  };
}
