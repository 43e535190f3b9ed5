import { placeOf } from '../hammer/index.ts';
import { canRead, readQuantity, TOOLS, type Dimension, type Problem, type ToolName } from '../methods/quantity/index.ts';
import type { WrittenQuantity } from './entry.ts';
import { problemOf, shownValue } from './problem.ts';

export type WrittenReading =
  | { readonly ok: true; readonly written: WrittenQuantity }
  | { readonly ok: false; readonly problem: Problem };

export interface WrittenOptions {
  readonly dimension: Dimension;
  /** Named in a problem. */
  readonly field: string;
  /** Tool that was used. */
  readonly tool?: ToolName;
  /** Tools usual for the place; where none is named, the coarsest of them gives the doubt. */
  readonly usual?: readonly ToolName[];
  /** Least and greatest value that is possible, SI. */
  readonly plausible?: readonly [number, number];
}

const BARE_DECIMAL_INCH = /^[+-]?\.\d{2,5}$/;
const HAS_PLUS_MINUS = /±|\+\s*\/?\s*[-−–]|plus or minus/i;
const HAS_DECIMALS = /\d?[.,]\d/;

/** Half-width of the 95 % interval that a tool gives for a dimension, SI, or undefined where it says nothing of it. */
const figureOf = (tool: ToolName, dimension: Dimension): number | undefined => (TOOLS[tool].expandedUncertainty as Partial<Record<Dimension, number>>)[dimension];

function coarsest(tools: readonly ToolName[], dimension: Dimension): ToolName | undefined {
  return tools
    .filter((tool) => canRead(tool, dimension) && figureOf(tool, dimension) !== undefined)
    .reduce<ToolName | undefined>((best, tool) => (best === undefined || (figureOf(tool, dimension) ?? 0) > (figureOf(best, dimension) ?? 0) ? tool : best), undefined);
}

/**
 * Reads a quantity as a person writes it in the shop.
 * A fraction in lowest terms or a whole number does not say how finely it was read (2 3/4 in off a rule was read to a
 * thirty-second), so there the tool alone gives the doubt; a decimal does say it. A bare decimal that begins with its
 * point, such as `.015`, is inches, as every shop that writes it so means it.
 * @returns the quantity in SI with its doubt, and the text; or the problem with what would be right
 */
export function readWritten(text: string, options: WrittenOptions): WrittenReading {
  const { dimension, field, plausible } = options;
  const tool = options.tool ?? coarsest(options.usual ?? [], dimension);
  const bareInches = dimension === 'length' && BARE_DECIMAL_INCH.test(text.trim());
  const read = readQuantity(text, {
    dimension, field, ...(tool === undefined ? {} : { tool }), ...(bareInches ? { defaultUnit: 'in' as const } : {}),
    ...(plausible === undefined ? {} : { min: plausible[0], max: plausible[1] }),
  });
  if (!read.ok) {
    const { message, expected } = read.problem;
    return { ok: false, problem: { field, value: shownValue(text), expected, message: message.includes('; ') ? message : `${message}; ${expected}: ${shownValue(text)}` } };
  }
  const ofTool = tool === undefined ? undefined : figureOf(tool, dimension);
  const toolAlone = ofTool !== undefined && !HAS_PLUS_MINUS.test(text) && !HAS_DECIMALS.test(text);
  const quantity = toolAlone ? { ...read.quantity, uncertainty: (ofTool / 2) * (read.approximate ? 2 : 1) } : read.quantity;
  return { ok: true, written: { quantity, asWritten: read.asWritten } };
}

/**
 * Reads a quantity for a measuring place: its dimension, its usual tools and its bounds are the place's own.
 * @param place id of a measuring place, without `@`
 * @param tool where one is named
 */
export function readForPlace(place: string, text: string, tool?: ToolName, field = place): WrittenReading {
  const known = placeOf(place)?.place;
  if (known === undefined) return { ok: false, problem: problemOf(field, place, 'no such measuring place is known', 'a place of the vocabulary such as upper-die.height') };
  const read = readWritten(text, { dimension: known.dimension, field, usual: known.tools, plausible: known.plausible, ...(tool === undefined ? {} : { tool }) });
  if (read.ok || !/^it is (less|more) than/.test(read.problem.message)) return read;
  const impossible = problemOf(field, text, `${known.name} is impossible`, read.problem.expected);
  return { ok: false, problem: impossible };
}
