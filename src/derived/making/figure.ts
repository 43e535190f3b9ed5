import { propagate } from '../../methods/chance/index.ts';
import { formatQuantity, quantity, type Dimension, type Quantity } from '../../methods/quantity/index.ts';
import { placeOf } from '../../hammer/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Value } from '../value.ts';
import type { MakingDimension, NotMade, PartKind, Tolerance, Unknown } from './part-to-make.ts';

/** A figure on its way to a drawing: with its doubt, and what it rests on. */
export interface Figure {
  readonly quantity: Quantity;
  readonly from: readonly string[];
  readonly estimate: boolean;
  readonly sources: readonly string[];
}

export type Values = Readonly<Record<string, Value>>;

/** Reads values for one part and remembers what was not there. */
export class FigureReader {
  readonly #values: Values;
  readonly #missing = new Map<string, Unknown>();

  constructor(values: Values) {
    this.#values = values;
  }

  /** The first of `a|b|c` that is known, or undefined. */
  find(keys: string): Figure | undefined {
    for (const key of keys.split('|')) {
      const value = this.#values[key];
      if (value?.outcome.state === 'known') return { quantity: value.outcome.quantity, from: [key], estimate: value.rests === 'assumed', sources: value.sources };
    }
    return undefined;
  }

  /** As `find`; what is not known is remembered as missing. */
  need(keys: string): Figure | undefined {
    const found = this.find(keys);
    if (found === undefined) for (const unknown of this.unknownOf(keys)) this.#missing.set(unknown.what, unknown);
    return found;
  }

  /** What would have to be measured for a key: its own place, or the places behind a consequence. */
  unknownOf(keys: string): readonly Unknown[] {
    const [first = keys] = keys.split('|');
    const outcome = this.#values[first]?.outcome;
    const behind = outcome?.state === 'not-known' ? outcome.missing : [first];
    return behind.map((key) => unknownPlace(key));
  }

  get missing(): readonly Unknown[] {
    return [...this.#missing.values()];
  }

  notKnown(kind: PartKind, title: string): NotMade {
    return { state: 'not-known', kind, title, missing: this.missing };
  }
}

/** What to measure at a measuring place, in its own words. */
export function unknownPlace(key: string): Unknown {
  const [id = key, made] = key.split('#');
  const [placeId = id, at] = id.split('@');
  const place = placeOf(placeId)?.place;
  const where = at === undefined ? '' : `, ${at.replaceAll('-', ' ')}`;
  const name = place === undefined ? placeId : place.name;
  return made === undefined
    ? { key, what: `${name}${where}`, how: place?.how ?? 'measure it on the machine' }
    : { key, what: `${name}${where}, as made`, how: 'From a maker’s paper, an unworn place, or another hammer of the same pattern.' };
}

/** Works a figure out from others; its doubt follows the law of propagation (JCGM 100:2008, 5.1.2). */
export function reckon(dimension: Dimension, figures: readonly Figure[], work: (...numbers: number[]) => number): Figure {
  const quantities = figures.map((one) => one.quantity);
  const value = work(...quantities.map((one) => one.value));
  const doubt = propagate((numbers) => attempt(work, numbers), quantities);
  return {
    // A doubt without bounds is shown as large as the figure itself, so that nobody cuts by it.
    quantity: quantity(value, dimension, Number.isFinite(doubt.uncertainty) ? doubt.uncertainty : Math.abs(value)),
    from: [...new Set(figures.flatMap((one) => one.from))], estimate: figures.some((one) => one.estimate), sources: [...new Set(figures.flatMap((one) => one.sources))],
  };
}

/** The handbook methods refuse numbers that they do not hold for; within the doubt that leaves one side to reckon with. */
function attempt(work: (...numbers: number[]) => number, numbers: readonly number[]): number {
  try {
    return work(...numbers);
  } catch (refusal) {
    if (refusal instanceof RangeError) return Number.NaN;
    throw refusal;
  }
}

/** A figure that is chosen and not measured: no doubt of its own. */
export const chosen = (value: number, dimension: Dimension, source: string, from: readonly string[] = []): Figure => ({ quantity: quantity(value, dimension), from, estimate: false, sources: [source] });

export const plusMinus = (half: number): Tolerance => ({ plus: half, minus: half });

/** A dimension of a part from a figure. */
export const sized = (name: string, title: string, figure: Figure, tolerance: Tolerance, why: string, fit?: string): MakingDimension => ({
  name, title, quantity: figure.quantity, tolerance, why, from: figure.from, estimate: figure.estimate, ...(fit === undefined ? {} : { fit }),
});

/** True where the readings leave more doubt in a length or an angle than half of its tolerance; sizes that only follow, or are fitted in place, do not count. */
export function isLoose({ quantity, tolerance, fitted }: MakingDimension): boolean {
  const room = (tolerance.plus + tolerance.minus) / 2;
  return fitted !== true && (quantity.dimension === 'length' || quantity.dimension === 'angle') && room > 0 && 2 * quantity.uncertainty > room * 1.0001;
}

const TENTH_THOU = 0.0254e-4;
const TENTH_DEGREE = Math.PI / 1800;

/** How well a size is known and how finely it is cut, for the lines under `check before cutting`. */
export function looseWords({ title, quantity, tolerance }: MakingDimension, system: PrintSystem): string {
  if (quantity.dimension === 'angle') {
    const degrees = (angle: number): string => formatQuantity({ dimension: 'angle', value: Math.ceil(angle / TENTH_DEGREE - 1e-6) * TENTH_DEGREE, uncertainty: 0 }, { unit: 'deg', resolution: TENTH_DEGREE, doubt: false });
    return `${title}: known to ± ${degrees(2 * quantity.uncertainty)}, cut to ± ${degrees((tolerance.plus + tolerance.minus) / 2)}`;
  }
  const print = (length: number, step: number): string => formatQuantity({ dimension: 'length', value: Math.ceil(length / step - 1e-6) * step, uncertainty: 0 }, { unit: system === 'inch' ? 'in' : 'mm', resolution: step, doubt: false });
  const coarse = system === 'inch' ? 10 * TENTH_THOU : 1e-5;
  const room = (tolerance.plus + tolerance.minus) / 2;
  const halfRoom = print(room, room < 10 * coarse ? (system === 'inch' ? TENTH_THOU : 1e-6) : coarse);
  return `${title}: known to ± ${print(2 * quantity.uncertainty, coarse)}, cut to ± ${halfRoom}`;
}

/** What is left on, where it is no metal; nothing can be left on a spring. */
const INSTEAD_OF_METAL: Readonly<Partial<Record<PartKind, string>>> = {
  'ram-prop': 'first, or saw it long and trim it in its place', 'sole-timbers': 'first, or saw them long and trim them in their place', belt: 'first, or leave it long and cut it in its place',
  'coil-spring': 'before it is ordered', 'bow-strap': 'first, or leave it long and make the second hole in its place', 'helve-cushion': 'first, or leave it full and trim it in its place', 'guide-shims': 'first, or leave them long and trim them in their place',
};

/** Says where the readings leave more doubt than the tolerance allows. */
export function doubtWarnings(dimensions: readonly MakingDimension[], system: PrintSystem = 'inch', kind?: PartKind): readonly string[] {
  const loose = dimensions.filter(isLoose);
  if (loose.length === 0) return [];
  return [`${LOUD}, doubt wider than the tolerance. ${loose.map((one) => looseWords(one, system)).join('; ')}. Measure finer ${(kind === undefined ? undefined : INSTEAD_OF_METAL[kind]) ?? 'first, or leave metal on and fit'}.`];
}

/** How the warning of a doubtful size begins. */
export const LOUD = 'CHECK BEFORE CUTTING';

/** Says which figures rest on defaults and not on this hammer. */
export function estimateWarnings(dimensions: readonly MakingDimension[]): readonly string[] {
  const guessed = dimensions.filter((one) => one.estimate);
  return guessed.length === 0 ? [] : [`Estimates, from practice, not from this hammer: ${guessed.map((one) => one.title).join('; ')}.`];
}
