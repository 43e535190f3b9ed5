import { suspensionForce } from './suspension/law.ts';

/**
 * How far the ram hangs below the place where the suspension pulls neither way, at rest.
 * @param numbers see `hammerNumbers`
 * @returns m; `undefined` where the suspension cannot carry the ram within its range
 */
export function hangingDepth(numbers: Float64Array): number | undefined {
  const family = numbers[34]!;
  const weight = numbers[1]!;
  let low = 0;
  let high = numbers[26]!;
  if (!(suspensionForce(family, numbers, high) >= weight)) return undefined;
  for (let n = 0; n < 200 && high - low > 1e-15; n++) {
    const middle = 0.5 * (low + high);
    if (suspensionForce(family, numbers, middle) < weight) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high) + numbers[27]!;
}

/** Two ways of getting a hammer going, to see whether it matters. */
export type StartKind = 'fast' | 'slow';

/**
 * The state a run starts from: at top dead centre, the ram hanging still.
 *
 * `fast`: the treadle is stamped with everything at full speed, and the ram is already thrown, as after a hard blow. `slow`: the treadle is
 * eased in, so that crank and motor come up from a third of the speed.
 */
export function startState(numbers: Float64Array, kind: StartKind): Float64Array {
  const hang = hangingDepth(numbers) ?? 0;
  const reach = Math.sqrt(numbers[3]!) - numbers[2]!;
  const full = numbers[36]!;
  const speed = kind === 'fast' ? full : full / 3;
  const top = numbers[4]! - reach - hang;
  // Thrown: rising with half the top speed of the carrier.
  return Float64Array.of(Math.max(top, numbers[28]! + 1e-3), kind === 'fast' ? 0.5 * numbers[2]! * full : 0, 0, speed, speed);
}
