import { CORNERS, lookOf, partOf, PARTS, partsFor, placeOf, type LinkageFamily } from '../hammer/index.ts';
import { formatQuantity, TOOLS, type Problem, type Quantity, type ToolName } from '../methods/quantity/index.ts';
import type { KnownEntry } from './entry.ts';
import { namesAllowed } from './names-allowed.ts';
import { problemOf } from './problem.ts';

const PLACE_IDS: readonly string[] = PARTS.flatMap((part) => part.places.map((place) => place.id));
const LOOK_IDS: readonly string[] = PARTS.flatMap((part) => part.looks.map((look) => look.id));

/** How strictly a name is looked at. */
export interface NameOptions {
  /** The part as a whole will do although the place is read at several points, since the points follow. */
  readonly wholeToo?: boolean;
  /** Spend no time on a suggestion. */
  readonly brief?: boolean;
}

/**
 * What is wrong with the name of a measuring place and the point on it.
 * @returns undefined where nothing is wrong
 */
export const placeProblem = (place: string, at: string | undefined, family: LinkageFamily | undefined, options: NameOptions = {}): Problem | undefined =>
  nameProblem({ id: place, at, points: placeOf(place)?.place.at, known: PLACE_IDS, what: 'measuring place', ofFamily: family === undefined || partsFor(family).some((part) => part.places.some((each) => each.id === place)), family, ...options });

/** What is wrong with the name of a look and the point on it. */
export const lookProblem = (look: string, at: string | undefined, family: LinkageFamily | undefined, options: NameOptions = {}): Problem | undefined =>
  nameProblem({ id: look, at, points: lookOf(look)?.look.at, known: LOOK_IDS, what: 'look', ofFamily: family === undefined || partsFor(family).some((part) => part.looks.some((each) => each.id === look)), family, ...options });

interface Name extends NameOptions {
  readonly id: string;
  readonly at: string | undefined;
  readonly points: readonly string[] | undefined;
  readonly known: readonly string[];
  readonly what: string;
  readonly ofFamily: boolean;
  readonly family: LinkageFamily | undefined;
}

function nameProblem(name: Name): Problem | undefined {
  const { id, at, points, family } = name;
  if (points === undefined) return problemOf(id, id, `no such ${name.what} is known`, namesAllowed(id, name.known, name.brief));
  if (!name.ofFamily) return problemOf(id, id, `a hammer of the family ${family ?? ''} has no such ${name.what}`, 'only what this family has');
  if (at === undefined) {
    // Four corners may be given as one reading: a die is often measured once, in the middle.
    const whole = points.length === 0 || name.wholeToo === true || points === CORNERS;
    return whole ? undefined : problemOf(id, id, 'it is not said where on the part', `one of ${points.map((point) => `${id}@${point}`).join(', ')}`);
  }
  if (points.includes(at)) return undefined;
  return problemOf(id, at, points.length === 0 ? 'this is read once for the whole part' : 'no such point is known on the part', points.length === 0 ? `${id} without @` : namesAllowed(at, points, name.brief));
}

/** What is wrong with the name of a tool. */
export const toolProblem = (tool: string): Problem | undefined =>
  (Object.hasOwn(TOOLS, tool) ? undefined : problemOf('tool', tool, 'no such tool is known', namesAllowed(tool, Object.keys(TOOLS))));

export const isToolName = (tool: string): tool is ToolName => Object.hasOwn(TOOLS, tool);

/** What is wrong with the way of measuring a place. */
export function wayProblem(place: string, way: string): Problem | undefined {
  const ways = placeOf(place)?.place.ways?.map((each) => each.id) ?? [];
  if (ways.includes(way)) return undefined;
  return problemOf('way', way, ways.length === 0 ? `${place} is measured in one way only` : 'no such way of measuring is known', ways.length === 0 ? 'no way' : `one of ${ways.join(', ')}`);
}

/** What is wrong with the answer to a look. */
export function answerProblem(look: string, answer: string): Problem | undefined {
  const answers = lookOf(look)?.look.answers.map((each) => each.id) ?? [];
  if (answers.includes(answer)) return undefined;
  return problemOf(look, answer, 'no such answer is known', `one of ${answers.join(', ')}`);
}

/** What is wrong with a quantity as a value of a place: its dimension, or that it lies outside what is possible. */
export function quantityProblem(place: string, quantity: Quantity, asWritten: string): Problem | undefined {
  const known = placeOf(place)?.place;
  if (known === undefined) return undefined;
  if (known.dimension !== quantity.dimension) return problemOf(place, asWritten, `${known.name} cannot be a ${quantity.dimension}`, `a ${known.dimension}`);
  const [least, most] = known.plausible;
  const shown = (value: number): string => formatQuantity({ dimension: known.dimension, value, uncertainty: 0 });
  if (quantity.value < least || quantity.value > most) return problemOf(place, asWritten, `${known.name} is impossible`, `from ${shown(least)} to ${shown(most)}`);
  return undefined;
}

/**
 * Holds an entry against the vocabulary: names that do not exist, points, ways, tools and answers that do not belong, values
 * that cannot be. For the doors, where a person is there to put it right; a log from a newer version may hold more.
 * @param family of the hammer, where it is known
 * @returns every problem, or an empty list
 */
export function vocabularyProblems(entry: KnownEntry, family?: LinkageFamily): readonly Problem[] {
  const found: (Problem | undefined)[] = [];
  switch (entry.kind) {
    case 'reading':
      if (entry.body.tool !== undefined) found.push(toolProblem(entry.body.tool));
      if (entry.body.way !== undefined) found.push(wayProblem(entry.body.place, entry.body.way));
      found.push(...valueProblems(entry, family));
      break;
    case 'as-made':
    case 'setting':
      found.push(...valueProblems(entry, family));
      break;
    case 'sighting': {
      const { look, at, answer } = entry.body;
      const name = lookProblem(look, at, family);
      found.push(name, name === undefined ? answerProblem(look, answer) : undefined);
      break;
    }
    case 'statement':
    case 'photograph': {
      const { part } = entry.body;
      if (part !== undefined && partOf(part) === undefined) found.push(problemOf('part', part, 'no such part is known', namesAllowed(part, PARTS.map((each) => each.id))));
      break;
    }
    default:
  }
  return found.filter((problem) => problem !== undefined);
}

function valueProblems(entry: Extract<KnownEntry, { kind: 'reading' | 'as-made' | 'setting' }>, family: LinkageFamily | undefined): readonly (Problem | undefined)[] {
  const { place, at, quantity, asWritten } = entry.body;
  return [placeProblem(place, at, family), quantityProblem(place, quantity, asWritten)];
}
