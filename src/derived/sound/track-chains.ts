import { atOnset } from './onset-place.ts';
import type { OnsetBands } from './onset-bands.ts';
import { ownEnergies } from './own-energies.ts';
import { contrastOf } from './contrast.ts';
import { rhythmOf, withoutRhythm } from './rhythm.ts';
import { trackBlows, unevenness, type Track } from './track-blows.ts';

export interface ChainTrack {
  readonly track: Track;
  /** blows heard over strokes expected inside the runs, 0 to 1 */
  readonly fill: number;
  readonly uneven: number;
  /** what the chain gains against what the same events at random times would */
  readonly contrast: number;
  /** its strokes are unlike one another and repeat in a pattern, as those of one hammer do not */
  readonly rhythm: boolean;
}

/** s around a blow of one chain in which another's is not looked for */
const SHADOW = 0.012;
const LEAST_OTHER = 12;
/** Share of the first chain's contrast that another must have to be taken for the main one, however loud. */
const HARDLY_SURE = 0.25;
/** dB; nearer than this, which of two is the hammer is a guess. */
const GUESS = 2;
/** Contrast from which a first chain leaves no doubt; another must be so many times surer. */
const SURE = 8;
const MUCH_SURER = 1.3;
/** Contrast that a chain beside a rhythm must have. */
const CLEAR = 2.2;
/** Share of blows that two chains of different machines may have in common. */
const MOST_SHARED = 0.5;

/** The chain that is taken for the hammer and, where one was found, another that beats beside it. */
export interface Chains {
  readonly main: ChainTrack;
  readonly other?: { readonly chain: ChainTrack; /** of its usual blow against the main one's */ readonly levelDecibels: number };
  /** the two are so nearly alike that which of them is the hammer is a guess */
  readonly guessed: boolean;
}

/**
 * The strongest chain of regular impacts and, with it taken out, the next one that beats on its own.
 * @returns undefined when nothing beats
 * @param range s, shortest and longest period
 * @param seed of the chance that chains are held against
 */
export function trackChains(bands: OnsetBands, range: readonly [number, number], seed: number): Chains | undefined {
  const chainIn = (where: OnsetBands, within = range): ChainTrack | undefined => surest(where, (start) => judged(bands, trackBlows(where, within, start), seed));
  const first = chainIn(bands);
  if (!first) return undefined;
  const pattern = rhythmOf(bands, first.track);
  if (pattern) {
    // One hammer makes no rhythm of unlike strokes; what beats beside it is the hammer sooner.
    const rest = withoutRhythm(bands, pattern);
    const other = rest && chainIn(rest);
    const rhythm = { ...first, rhythm: true };
    return other && standsAlone(first, other) && other.contrast > CLEAR && (rhythmOf(bands, other.track)?.likeness ?? 0) < pattern.likeness ? besides(bands, other, rhythm) : { main: rhythm, guessed: false };
  }
  const second = judged(bands, trackBlows(withoutBlows(bands, first.track), range), seed);
  if (!second || !standsAlone(first, second)) return { main: first, guessed: false };
  const asFound = besides(bands, first, second);
  const ahead = asFound.other.levelDecibels;
  const kept = { ...asFound, guessed: Math.abs(ahead) < GUESS };
  if (!(ahead > 0) || second.contrast < HARDLY_SURE * first.contrast || rhythmOf(bands, second.track)) return kept;
  // The louder chain is the main one; it is followed again without the holes that the first had left in it.
  const near: [number, number] = [0.96 * second.track.period, 1.04 * second.track.period];
  const main = judged(bands, trackBlows(bands, near), seed) ?? second;
  // What it finds then must be new: every other blow of the first chain would pass for a louder one too.
  return shared(main.track.times, first.track.times) > MOST_SHARED || main.fill < second.fill - 0.05 ? kept : { ...besides(bands, main, first), guessed: kept.guessed };
}

function besides(bands: OnsetBands, main: ChainTrack, chain: ChainTrack): Chains & { other: object } {
  const [own, its] = ownEnergies(bands.bright, bands.frameRate, [main.track.times, chain.track.times]);
  // Where nothing of a machine is left, it is taken as 30 dB fainter.
  const least = 1e-3 * (own! + its!) + 1e-30;
  return { main, other: { chain, levelDecibels: 10 * Math.log10(Math.max(least, its!) / Math.max(least, own!)) }, guessed: false };
}

/** The chain that stands best against chance: found from all bands alike or, where that leaves doubt, from the low or the high ones alone. */
function surest(bands: OnsetBands, chainFrom: (start?: readonly number[]) => ChainTrack | undefined): ChainTrack | undefined {
  const first = chainFrom();
  if (first && first.contrast >= SURE) return first;
  const count = bands.rises.length;
  const starts = [bands.rises.map((_, b) => (b < 2 ? 1 / Math.min(2, count) : 0)), bands.rises.map((_, b) => (b >= count / 2 ? 1 / Math.floor(count / 2) : 0))];
  return starts.reduce<ChainTrack | undefined>((best, start) => {
    const chain = chainFrom(start);
    return chain && chain.fill > 0.7 && chain.contrast > MUCH_SURER * (best?.contrast ?? 0) ? chain : best;
  }, first);
}

function judged(bands: OnsetBands, found: Track | undefined, seed: number): ChainTrack | undefined {
  if (!found) return undefined;
  const track = atOnset(bands, found);
  const { fill } = fillOf(track.times, track.periodAt);
  return { track, fill, uneven: unevenness(track.times, track.periodAt), contrast: contrastOf(track, seed), rhythm: false };
}

/** Share of strokes inside the runs that were heard. */
export function fillOf(times: readonly number[], periodAt: (time: number) => number): { fill: number; missed: number } {
  let missed = 0;
  for (let i = 1; i < times.length; i++) {
    const turns = (times[i]! - times[i - 1]!) / periodAt(times[i]!);
    if (turns < 4.5) missed += Math.max(0, Math.round(turns) - 1);
  }
  return { fill: times.length / Math.max(1, times.length + missed), missed };
}

/** Share of times that lie within 12 ms of another row's; both in order. */
function shared(times: readonly number[], others: readonly number[]): number {
  let [j, count] = [0, 0];
  for (const time of times) {
    while (j < others.length && others[j]! < time - SHADOW) j++;
    if (j < others.length && others[j]! <= time + SHADOW) count++;
  }
  return count / Math.max(1, times.length);
}

function withoutBlows(bands: OnsetBands, track: Track): OnsetBands {
  const reach = Math.round(SHADOW * bands.frameRate);
  const rises = bands.rises.map((row) => {
    const copy = row.slice();
    for (const time of track.times) {
      const centre = Math.round(time * bands.frameRate);
      copy.fill(0, Math.max(0, centre - reach), Math.max(0, centre + reach + 1));
    }
    return copy;
  });
  return { ...bands, rises };
}

/** Beats on its own: enough blows, few holes, even, and not bound to the first chain's turn, as a second sound is. */
function standsAlone(first: ChainTrack, second: ChainTrack): boolean {
  const { track } = second;
  if (track.times.length < LEAST_OTHER || second.fill < 0.7 || second.uneven > 0.05) return false;
  return lockedTo(first.track, track.times) < 0.5;
}

/** How far times keep to fixed places in a chain's turn: length of their mean vector on the circle, 0 to 1, the greatest over one to three places. */
export function lockedTo(chain: Track, times: readonly number[]): number {
  let most = 0;
  for (const fold of [1, 2, 3]) {
    let [x, y, count] = [0, 0, 0];
    let i = 0;
    for (const time of times) {
      while (i + 1 < chain.times.length && chain.times[i + 1]! <= time) i++;
      const start = chain.times[i];
      if (start === undefined || start > time) continue;
      const turn = ((time - start) / chain.periodAt(time)) * fold * 2 * Math.PI;
      x += Math.cos(turn);
      y += Math.sin(turn);
      count++;
    }
    if (count > 0) most = Math.max(most, Math.hypot(x, y) / count);
  }
  return most;
}
