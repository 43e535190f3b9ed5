import type { Dimension } from '../../methods/quantity/index.ts';
import { firstKnown, put, weakest, type Ledger } from '../ledger.ts';
import type { Outcome, Value } from '../value.ts';
import type { Ranged } from './ensemble.ts';

/** A value that came out of an ensemble, and what it stands on. */
export interface ChanceRecipe {
  readonly key: string;
  readonly title: string;
  readonly dimension: Dimension;
  readonly formula: string;
  readonly sources: readonly string[];
  /** keys as in a recipe; `a|b` takes the first that is known */
  readonly inputs: readonly string[];
  readonly words?: string;
  readonly warning?: string;
}

/** Estimates of several keys, or the keys that are missing. */
export type Estimates<Name extends string> =
  | { readonly ok: true; readonly of: Readonly<Record<Name, { readonly value: number; readonly uncertainty: number }>> }
  | { readonly ok: false; readonly outcome: Exclude<Outcome, { state: 'known' }> };

/**
 * Takes what an ensemble needs from the ledger.
 * @param keys name of each unknown and its keys, `a|b` for the first that is known
 */
export function estimatesOf<Name extends string>(ledger: Ledger, keys: Readonly<Record<Name, string>>): Estimates<Name> {
  const missing: string[] = [];
  const found: Partial<Record<Name, { value: number; uncertainty: number }>> = {};
  for (const name of Object.keys(keys) as Name[]) {
    const { key, value } = firstKnown(ledger, keys[name]);
    const outcome = value?.outcome ?? { state: 'not-known' as const, missing: [key] };
    if (outcome.state === 'known') found[name] = outcome.quantity;
    else if (outcome.state === 'not-known') missing.push(...outcome.missing);
    else return { ok: false, outcome };
  }
  if (missing.length > 0) return { ok: false, outcome: { state: 'not-known', missing: [...new Set(missing)] } };
  return { ok: true, of: found as Record<Name, { value: number; uncertainty: number }> };
}

/** Enters a figure with its interval; the interval need not lie evenly about it. */
export function putRanged(ledger: Ledger, recipe: ChanceRecipe, result: Ranged | Exclude<Outcome, { state: 'known' }>): Value {
  const inputs = recipe.inputs.map((keys) => firstKnown(ledger, keys));
  const present = inputs.flatMap((input) => input.value ?? []);
  const newest = present.flatMap((value) => value.when ?? []).sort().at(-1);
  const outside = result.state === 'known' && result.outside >= 0.02 ? `In ${Math.round(100 * result.outside)} of a hundred draws the formulas do not hold; they are left out.` : undefined;
  const warning = [recipe.warning, outside].filter((one) => one !== undefined).join(' ');
  return put(ledger, {
    key: recipe.key, title: recipe.title, standing: 'worked-out', rests: weakest(present.map((value) => value.rests)), from: inputs.map((input) => input.key), formula: recipe.formula, sources: recipe.sources, evidence: [],
    outcome: result.state === 'known' ? { state: 'known', quantity: { dimension: recipe.dimension, value: result.value, uncertainty: result.uncertainty, interval: [result.low, result.high] } } : result,
    ...(newest === undefined ? {} : { when: newest }), ...(recipe.words === undefined ? {} : { words: recipe.words }), ...(warning === '' ? {} : { warning }),
  });
}
