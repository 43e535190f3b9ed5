import { fromSi, sizeToSi, toSi } from './convert.ts';
import { DIMENSION_WORDS, type Dimension } from './dimension.ts';
import { doubtOf } from './doubt.ts';
import { plainNumber } from './plain-number.ts';
import { plainText } from './plain-text.ts';
import type { Problem } from './problem.ts';
import type { Quantity } from './quantity.ts';
import { readTerms, type Terms } from './read-terms.ts';
import { TOOLS, canRead, toolHalfWidth, toolsFor, type ToolName } from './tools.ts';
import { UNITS, type UnitName } from './units.ts';

export type Reading =
  | {
    readonly ok: true;
    readonly quantity: Quantity;
    readonly asWritten: string;
    readonly unit: UnitName;
    /** SI size of the last place written: 1/16 in gives 0.0015875. */
    readonly resolution: number;
    /** True where the person wrote `about`, `~` or `?`. */
    readonly approximate: boolean;
  }
  | { readonly ok: false; readonly problem: Problem };

export interface ReadOptions {
  readonly dimension: Dimension;
  /** Named in a problem. */
  readonly field?: string;
  /** Gives the doubt where no ± is written. */
  readonly tool?: ToolName;
  /** Unit of a bare number. */
  readonly defaultUnit?: UnitName;
  /** Least value allowed, SI. */
  readonly min?: number;
  /** Greatest value allowed, SI. */
  readonly max?: number;
}

const LONGEST = 200;
/** Beyond this no quantity of the trade lies, in any SI unit: stiffest, strongest and fastest together. */
const GREATEST = 1e15;

/**
 * Reads a quantity in shop notation. Never throws on text.
 * The doubt: a written ± is the half-width of a 95 % interval; else the tool's, but no better than the last place written allows;
 * else half of the last place as a rectangular limit (JCGM 100:2008, 4.3.7). Inches in fractions are taken as read to a sixteenth,
 * or as the tool reads, since a fraction is written in lowest terms. `about`, `~` and `?` double it.
 * Bounds in brackets, `1.38 in (1.30 to 1.52)`, are the 95 % interval. A whole count is exact unless it is called about.
 * @throws where the default unit does not measure the dimension
 */
export function readQuantity(text: string, options: ReadOptions): Reading {
  const { dimension, tool, defaultUnit, min, max } = options;
  if (defaultUnit !== undefined && !UNITS[defaultUnit].dimensions.includes(dimension)) {
    throw new Error(`The default unit must measure ${dimension}: ${defaultUnit}`);
  }
  const refuse = (message: string, expected: string): Reading =>
    ({ ok: false, problem: { field: options.field ?? dimension, value: shown(text), message, expected } });
  if (text.length > LONGEST) return refuse(`the text is too long for one quantity: ${text.length} characters`, `at most ${LONGEST} characters, such as 4 5/8 in`);
  if (tool !== undefined && !canRead(tool, dimension)) {
    return refuse(`${DIMENSION_WORDS[dimension]} cannot be read with this: ${TOOLS[tool].us}`, `one of: ${[...toolsFor(dimension), 'record'].join(', ')}`);
  }
  const outcome = readTerms(plainText(text), dimension, defaultUnit);
  if (!outcome.ok) return refuse(outcome.message, outcome.expected);
  const { terms } = outcome;
  const unit = UNITS[terms.unit];
  const value = toSi(terms.value, unit);
  if (!(Math.abs(value) <= GREATEST)) return refuse(`the number is beyond anything that is measured here`, 'a number that a tool can read');
  const bound = (limit: number): string => `${plainNumber(fromSi(limit, unit))}${unit.tight || unit.symbol === '' ? '' : ' '}${unit.symbol}`;
  if (min !== undefined && value < min) return refuse('it is less than the least that is allowed', `at least ${bound(min)}`);
  if (max !== undefined && value > max) return refuse('it is more than the greatest that is allowed', `at most ${bound(max)}`);
  const resolution = sizeToSi(terms.place, unit);
  const interval = terms.interval === undefined ? undefined : [toSi(terms.interval[0], unit), toSi(terms.interval[1], unit)] as const;
  return {
    ok: true, asWritten: text.trim(), unit: terms.unit, resolution, approximate: terms.approximate,
    quantity: interval === undefined
      ? { dimension, value, uncertainty: uncertaintyOf(terms, { dimension, value, resolution, tool }) }
      : { dimension, value, uncertainty: (interval[1] - interval[0]) / 4, interval },
  };
}

interface Taken { readonly dimension: Dimension; readonly value: number; readonly resolution: number; readonly tool: ToolName | undefined }

function uncertaintyOf(terms: Terms, { dimension, value, resolution, tool }: Taken): number {
  const ofTool = tool === undefined ? 0 : toolHalfWidth(tool, dimension, value);
  const exactCount = dimension === 'count' && terms.style === 'whole' && ofTool === 0 && !terms.approximate;
  const stated = terms.plusMinus === undefined ? {} : { stated: sizeToSi(terms.plusMinus, UNITS[terms.unit]) };
  return doubtOf({ ...stated, place: exactCount ? 0 : placeRead(terms, dimension, resolution, ofTool), ofTool, approximate: terms.approximate });
}

/** The coarsest division that anybody reads an inch rule to. */
const SIXTEENTH_INCH = 0.0015875;
const DIVIDED_IN_FRACTIONS: readonly UnitName[] = ['in', 'ft', 'yd'];

/**
 * Size of the last place that was really read, SI. Whole inches and fractions are written in lowest terms: 3 in off a rule
 * is 3 0/16 in, so the divisor says nothing of how finely it was read. A named tool then decides alone, else a sixteenth is taken.
 * A decimal is written as far as it was read.
 */
function placeRead(terms: Terms, dimension: Dimension, resolution: number, ofTool: number): number {
  if (dimension !== 'length' || terms.style === 'decimal' || !DIVIDED_IN_FRACTIONS.includes(terms.unit)) return resolution;
  return ofTool > 0 ? 0 : Math.min(resolution, SIXTEENTH_INCH);
}

const shown = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
