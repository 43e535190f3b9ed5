import { PARTS, type Look, type MeasuringPlace, type Part } from '../../hammer/index.ts';
import { TOOLS } from '../../methods/quantity/index.ts';

/** A piece of JSON Schema. */
export type Schema = Readonly<Record<string, unknown>>;

export const TEXT: Schema = { type: ['string', 'number'] };
export const WORDS: Schema = { type: 'string', minLength: 1 };

/** Points at a definition of the schema. */
export const defined = (name: string): Schema => ({ $ref: `#/definitions/${name}` });

/** A record with these fields and no others. */
export const record = (properties: Readonly<Record<string, Schema>>, required: readonly string[] = [], description?: string): Schema => ({
  type: 'object', additionalProperties: false, properties, ...(required.length === 0 ? {} : { required }), ...(description === undefined ? {} : { description }),
});

/** Hour and id that any record may carry. */
export const STAMP: Readonly<Record<string, Schema>> = { time: defined('time'), id: defined('id') };

const SAID: Readonly<Record<string, Schema>> = { words: WORDS, 'told by': defined('told-by') };
const READING = { tool: defined('tool'), ...SAID };
const LOOK = { ...SAID, photographs: defined('photographs') };

/** Definitions that the properties below point at. */
export const DEFINITIONS: Readonly<Record<string, Schema>> = {
  time: { type: 'string', pattern: '^\\d{1,2}:\\d{2}(:\\d{2}(\\.\\d+)?)?$', description: 'Hour of this record, such as 09:30.' },
  id: { type: 'string', pattern: '^[0-7][0-9A-HJKMNP-TV-Z]{25}$', description: 'Id of the entry; leave it out unless it must stay the same.' },
  tool: { enum: Object.keys(TOOLS), description: 'Tool that was used; it gives the doubt where no ± is written.' },
  'told-by': { ...WORDS, description: 'Who said so; it then counts as told, not as seen or measured.' },
  photographs: { type: 'array', items: { type: 'string', pattern: '^[0-9a-f]{64}$' }, description: 'SHA-256 of photographs that show it.' },
  reading: { anyOf: [TEXT, record({ value: TEXT, ...READING, ...STAMP }, ['value'])] },
  'as-made-value': { anyOf: [TEXT, record({ value: TEXT, from: WORDS, ...STAMP }, ['value'])] },
  setting: { anyOf: [TEXT, record({ value: TEXT, before: TEXT, words: WORDS, ...STAMP }, ['value'])] },
};

/** Sections whose names are measuring places, with the fields that several points on a part may share. */
const SECTIONS = {
  reading: { ...READING, time: defined('time') },
  'as-made-value': { from: WORDS, time: defined('time') },
  setting: { words: WORDS, time: defined('time') },
} as const;

const UNIT_EXAMPLES: Readonly<Record<string, string>> = {
  length: '2 3/4 in, 12 thou or 47.5 mm ± 0.2', mass: '65 lb', ratio: '15 %', count: '9', power: '2 hp', rotation: '320 rpm', voltage: '230 V', current: '6.5 A', temperature: '140 °F', time: '12 s', level: '96 dB', angle: '7 deg',
};

const placeWords = (part: Part, place: MeasuringPlace): string =>
  `${place.name} (${part.name.us}). ${place.how} Worth having: ${place.accuracy}. Tools: ${place.tools.join(', ')}. Write it as ${UNIT_EXAMPLES[place.dimension] ?? 'a number with its unit'}.`;

/**
 * Properties of a section of values: one for each measuring place, and one for each of its points.
 * @param kind which section
 * @param which places to take
 */
export function placeProperties(kind: keyof typeof SECTIONS, which: (place: MeasuringPlace) => boolean = () => true): Readonly<Record<string, Schema>> {
  const properties: Record<string, Schema> = {};
  for (const part of PARTS) {
    for (const place of part.places.filter(which)) {
      const one = kind === 'reading' && place.ways !== undefined ? withWay(place) : defined(kind);
      const points = Object.fromEntries(place.at.map((point) => [point, one]));
      const way = kind === 'reading' && place.ways !== undefined ? { way: wayOf(place) } : {};
      const spread = { ...record({ ...points, ...SECTIONS[kind], ...way }), minProperties: 1 };
      properties[place.id] = { description: kind === 'reading' ? placeWords(part, place) : `${place.name} (${part.name.us})`, anyOf: place.at.length === 0 ? [one] : [one, spread] };
      for (const point of place.at) properties[`${place.id}@${point}`] = { description: `${place.name}, ${point}`, anyOf: [one] };
    }
  }
  return properties;
}

const wayOf = (place: MeasuringPlace): Schema => ({ enum: place.ways?.map((way) => way.id) ?? [], description: place.ways?.map((way) => `${way.id}: ${way.words}`).join('; ') ?? '' });

const withWay = (place: MeasuringPlace): Schema => ({ anyOf: [TEXT, record({ value: TEXT, way: wayOf(place), ...READING, ...STAMP }, ['value'])] });

/** Properties of the looks: one for each look, and one for each of its points. */
export function lookProperties(): Readonly<Record<string, Schema>> {
  const properties: Record<string, Schema> = {};
  for (const look of PARTS.flatMap((part) => part.looks)) {
    const one = answerOf(look);
    const spread = { ...record({ ...Object.fromEntries(look.at.map((point) => [point, one])), ...LOOK, time: defined('time') }), minProperties: 1 };
    properties[look.id] = { description: `${look.question} ${look.how} ${look.answers.map((answer) => `${answer.id}: ${answer.words}`).join('; ')}.`, anyOf: look.at.length === 0 ? [one] : [one, spread] };
    for (const point of look.at) properties[`${look.id}@${point}`] = { description: `${look.question} (${point})`, anyOf: [one] };
  }
  return properties;
}

const answerOf = (look: Look): Schema => {
  const answer: Schema = { enum: look.answers.map((each) => each.id) };
  return { anyOf: [answer, record({ answer, ...LOOK, ...STAMP }, ['answer'])] };
};
