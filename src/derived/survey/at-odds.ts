import { formatQuantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Value } from '../value.ts';
import { contradictedName, contradictionWords } from './contradictions.ts';
import type { Known } from './known.ts';

type Values = Readonly<Record<string, Value>>;

/** Two readings of which one cannot be right beside the other. */
interface Pair {
  readonly less: string;
  readonly more: string;
  /** The first may be this many times the second before it is at odds. */
  readonly times: number;
  readonly because: string;
}

const PAIRS: readonly Pair[] = [
  { less: 'coil-spring.installed-length', more: 'coil-spring.free-length', times: 1, because: 'a spring in the machine is never longer than it is free' },
  { less: 'coil-spring.shortest-length', more: 'coil-spring.installed-length', times: 1, because: 'running, the spring is never longer at its shortest than as set' },
  { less: 'coil-spring.free-length', more: 'coil-spring.free-length#as-made', times: 1.02, because: 'a spring does not grow' },
  { less: 'lower-die.width', more: 'seat.width', times: 1, because: 'a die cannot be wider than its seat' },
  { less: 'lower-die.length', more: 'seat.length', times: 1.5, because: 'a die that long does not bear on its seat' },
  { less: 'upper-die.height', more: 'upper-die.height#as-made', times: 1.02, because: 'a die does not grow' },
  { less: 'main-bearings.clearance@front', more: 'main-shaft.diameter@front', times: 0.03, because: 'a shaft with so much room would not turn' },
  { less: 'main-bearings.clearance@rear', more: 'main-shaft.diameter@rear', times: 0.03, because: 'a shaft with so much room would not turn' },
  { less: 'motor.pulley', more: 'pulley.diameter', times: 1, because: 'the motor has the small pulley, the hammer the large one' },
  { less: 'seat.sunk', more: 'lower-die.height', times: 1, because: 'a die cannot sink deeper than it is high' },
  { less: 'upper-die.width', more: 'ram.dovetail-width', times: 1, because: 'a die cannot be wider than the dovetail that holds it' },
  { less: 'connecting-rod.eye-width', more: 'crank.pin-length', times: 1, because: 'the rod goes on its pin' },
  { less: 'crank.pin-thread', more: 'crank.pin-shank', times: 1.02, because: 'the thread goes through the plate' },
  { less: 'bow-spring.leaf-thickness', more: 'bow-spring.leaf-width', times: 1, because: 'a leaf lies flat in its pack' },
  { less: 'guide-shims.hole-diameter', more: 'guide-shims.width', times: 1, because: 'a bolt hole lies within its shim' },
];

const number = (values: Values, key: string): number | undefined => {
  const outcome = values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity.value : undefined;
};

const written = (values: Values, key: string): string => {
  const value = values[key];
  if (value?.outcome.state !== 'known') return key;
  return value.asWritten ?? formatQuantity(value.outcome.quantity, { doubt: false });
};

/**
 * Readings that cannot all be true together, each as a sentence with both readings in it. They are kept, since nobody knows
 * which one is wrong; whatever rests on them is to be read again.
 */
export function readingsAtOdds(known: Known, system: PrintSystem = 'inch'): readonly string[] {
  const { values } = known;
  const pairs = PAIRS.flatMap(({ less, more, times, because }) => {
    const a = number(values, less);
    const b = number(values, more);
    if (a === undefined || b === undefined || a <= b * times * (1 + 1e-9)) return [];
    return [`Two readings are at odds, measure both again: ${values[less]?.title ?? less} ${written(values, less)}, ${values[more]?.title ?? more} ${written(values, more)}; ${because}.`];
  });
  const parted = known.contradictions.map((one) => `${capital(contradictedName(one.key))} ${contradictionWords(one, system)}.`);
  return [...parted, ...pairs, ...massAtOdds(known), ...journalsAtOdds(values)];
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** Ram, upper die and links weigh somewhat more than the nominal class, never many times as much. */
function massAtOdds(known: Known): readonly string[] {
  const mass = number(known.values, 'ram.mass');
  const nominal = known.identity.ramClass.quantity.value;
  if (mass === undefined || (mass > nominal * 0.6 && mass < nominal * 1.8)) return [];
  return [`Two readings are at odds, weigh again: ram mass ${written(known.values, 'ram.mass')} in a hammer of the ${known.identity.ramClass.asWritten} class.`];
}

/** One shaft has about one diameter. */
function journalsAtOdds(values: Values): readonly string[] {
  const front = number(values, 'main-shaft.diameter@front');
  const rear = number(values, 'main-shaft.diameter@rear');
  if (front === undefined || rear === undefined || Math.abs(front - rear) < 0.1 * Math.max(front, rear)) return [];
  return [`The journals differ by more than a tenth, which a stepped shaft may do and a misreading does: front ${written(values, 'main-shaft.diameter@front')}, rear ${written(values, 'main-shaft.diameter@rear')}.`];
}
