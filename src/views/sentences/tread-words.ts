import type { Limit } from '../../derived/index.ts';

/** A share of the full tread as somebody says it. */
const SHARES: Readonly<Record<string, string>> = { '25': 'a quarter', '50': 'half', '75': 'three quarters' };

/**
 * How a limit on the tread is measured at the hammer: nobody reads per cent off a treadle. Common practice, no source.
 * @returns undefined where no limit bounds the tread
 */
export function treadWords(limits: readonly Limit[]): string | undefined {
  const sentence = limits.find((limit) => limit.kind === 'greatest-tread')?.sentence;
  const share = /(\d+) %/.exec(sentence ?? '')?.[1];
  if (share === undefined) return undefined;
  return `To measure the tread, power locked off: chalk the treadle’s height with no foot on it and pressed right down, and fix a wood block under it that stops it ${SHARES[share] ?? `${share} %`}${share === '50' ? ' way' : ' of the way'} down.`;
}
