import { propagate } from '../methods/chance/index.ts';
import { withPositiveInterval, type Dimension } from '../methods/quantity/index.ts';
import type { LinkageFamily } from '../hammer/index.ts';
import type { Outcome, Value, ValueStanding } from './value.ts';

/** All values of one hammer while they are worked out, each only once. */
export interface Ledger {
  readonly family: LinkageFamily;
  readonly values: Map<string, Value>;
}

/** How one value is worked out from others. */
export interface Recipe {
  readonly key: string;
  readonly title: string;
  readonly dimension: Dimension;
  /** Formula for a reader with a pencil. */
  readonly formula: string;
  readonly sources: readonly string[];
  /** Keys of the values needed; `a|b` takes the first of them that is known. */
  readonly inputs: readonly string[];
  /** SI in, SI out; a sentence where the numbers lie outside what the formula holds for. */
  readonly work: (...inputs: number[]) => number | string;
  /** Linkage families that it applies to; all where left out. */
  readonly families?: readonly LinkageFamily[];
  readonly whyNot?: string;
  readonly words?: string;
  /** It cannot lie below nothing, though its dimension would let it: a share of a strength, a width. */
  readonly positive?: true;
}

const STRENGTH: readonly ValueStanding[] = ['measured', 'seen', 'worked-out', 'as-made', 'told', 'assumed'];

/** The weakest of several standings: what a value rests on is no better than its worst input. */
export const weakest = (standings: readonly ValueStanding[]): ValueStanding =>
  standings.reduce((worst, one) => (STRENGTH.indexOf(one) > STRENGTH.indexOf(worst) ? one : worst), 'measured');

/** The first of `a|b|c` that is known, or the first of them at all. */
export function firstKnown(ledger: Ledger, keys: string): { readonly key: string; readonly value: Value | undefined } {
  const [first = keys, ...others] = keys.split('|');
  for (const key of [first, ...others]) {
    const value = ledger.values.get(key);
    if (value?.outcome.state === 'known') return { key, value };
  }
  return { key: first, value: ledger.values.get(first) };
}

/** SI value of a key, or undefined where it is not known. */
export function knownNumber(ledger: Ledger, keys: string): number | undefined {
  const { value } = firstKnown(ledger, keys);
  return value?.outcome.state === 'known' ? value.outcome.quantity.value : undefined;
}

/** Puts a value into the ledger. */
export function put(ledger: Ledger, value: Value): Value {
  ledger.values.set(value.key, value);
  return value;
}

/**
 * Works a value out and enters it. The doubt follows the law of propagation (JCGM 100:2008, 5.1.2).
 * What is missing, does not apply or lies outside validity is entered as such; it is never a number.
 */
export function workOut(ledger: Ledger, recipe: Recipe): Value {
  const inputs = recipe.inputs.map((keys) => firstKnown(ledger, keys));
  const from = inputs.map((input) => input.key);
  const present = inputs.flatMap((input) => (input.value === undefined ? [] : [input.value]));
  const newest = present.flatMap((value) => value.when ?? []).sort().at(-1);
  const make = (outcome: Outcome): Value =>
    put(ledger, {
      key: recipe.key, title: recipe.title, outcome, standing: 'worked-out', rests: weakest(present.map((value) => value.rests)),
      from, formula: recipe.formula, sources: recipe.sources, evidence: [],
      ...(newest === undefined ? {} : { when: newest }), ...(recipe.words === undefined ? {} : { words: recipe.words }),
    });
  if (recipe.families !== undefined && !recipe.families.includes(ledger.family)) {
    return make({ state: 'does-not-apply', because: recipe.whyNot ?? 'this linkage family has no such part' });
  }
  const stopped = present.find((value) => value.outcome.state === 'does-not-apply' || value.outcome.state === 'outside-validity');
  if (stopped !== undefined) return make(stopped.outcome);
  const missing = inputs.flatMap((input) => missingOf(input.key, input.value));
  if (missing.length > 0) return make({ state: 'not-known', missing: [...new Set(missing)] });
  const quantities = present.map((value) => (value.outcome.state === 'known' ? value.outcome.quantity : { value: Number.NaN, uncertainty: 0 }));
  const result = attempt(recipe, quantities.map((one) => one.value));
  if (typeof result === 'string') return make({ state: 'outside-validity', because: result });
  if (!Number.isFinite(result)) return make({ state: 'outside-validity', because: `the readings give no finite figure for the ${recipe.title}` });
  const doubt = propagate((numbers) => numberOf(attempt(recipe, numbers)), quantities);
  if (!Number.isFinite(doubt.uncertainty)) return make({ state: 'outside-validity', because: `the doubt of the readings reaches beyond what the sum for the ${recipe.title} holds for` });
  return make({ state: 'known', quantity: withPositiveInterval({ dimension: recipe.dimension, value: result, uncertainty: doubt.uncertainty }, recipe.positive) });
}

/** The handbook methods refuse a number that they do not hold for with a sentence; here that is an answer, not a mistake. */
function attempt(recipe: Recipe, inputs: readonly number[]): number | string {
  try {
    return recipe.work(...inputs);
  } catch (refusal) {
    if (refusal instanceof RangeError) return refusal.message;
    throw refusal;
  }
}

/** A recipe may leave its validity within the readings' doubt; the propagation then uses the other side. */
const numberOf = (result: number | string): number => (typeof result === 'string' ? Number.NaN : result);

/** Readings that would have to be taken for a value: its own key for a reading, the deeper ones for a consequence. */
function missingOf(key: string, value: Value | undefined): readonly string[] {
  if (value === undefined) return [key];
  switch (value.outcome.state) {
    case 'not-known':
      return value.outcome.missing;
    default:
      return [];
  }
}
