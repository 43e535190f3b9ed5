import type { Limit } from './limit.ts';

type OilWays = NonNullable<Limit['oilWays']>;

/**
 * The limit of an oil way that is shut: what runs dry is not run at all, and not with the oil can beside it.
 * @param name of the oil way on this hammer; none where only the share of shut ones is known @param finding its key
 */
export function oilWayFirst(name: string | undefined, finding: string): Limit {
  const oilWays = { named: name === undefined ? [] : [name], every: name === undefined };
  return { kind: 'oil-way-first', oilWays, sentence: sayOilWays(oilWays), because: [finding] };
}

/** Two such limits as one that names every oil way of both. */
export function bothOilWays(one: Limit, other: Limit): Limit {
  const parts = [one, other].map(({ oilWays }) => oilWays ?? { named: [], every: true });
  const oilWays = { named: [...new Set(parts.flatMap(({ named }) => named))], every: parts.some(({ every }) => every) };
  return { ...one, oilWays, sentence: sayOilWays(oilWays), because: [...new Set([...one.because, ...other.because])] };
}

function sayOilWays({ named, every }: OilWays): string {
  const names = listed(named.map((one) => `the ${one}`));
  if (every) return `Not before every oil way is open${names === '' ? '' : `, ${named.length === 1 ? 'that' : 'those'} of ${names} among them`}.`;
  return named.length === 1 ? `Not before the oil way of ${names} is open.` : `Not before the oil ways of ${names} are open.`;
}

const listed = (names: readonly string[]): string => (names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`);
