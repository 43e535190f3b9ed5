/**
 * Fits the weights by which a second sound is judged (src/derived/sound/second-chance.ts), on made-up and semi-real
 * recordings:  npx tsx bench/sound/fit-second.ts [--seed 5000] [--scale 9] [--semi 144]
 * The seeds from 5000 on belong to fitting; figures are reported on others.
 */
import { parseArgs } from 'node:util';
import { foldTurns, meanLogs, meansLike, reachOf } from '../../src/derived/sound/fold.ts';
import { likelyPlaces } from '../../src/derived/sound/likely-places.ts';
import { onsetBands } from '../../src/derived/sound/onset-bands.ts';
import { prepareSound } from '../../src/derived/sound/prepared-sound.ts';
import { longestOf, splitRuns, steadyTimesOf } from '../../src/derived/sound/runs.ts';
import { evidenceOf, FEATURES } from '../../src/derived/sound/second-evidence.ts';
import { nearestOf } from '../../src/derived/sound/second-sound.ts';
import { steadyRate } from '../../src/derived/sound/steady-rate.ts';
import { withoutTails } from '../../src/derived/sound/tail-prediction.ts';
import { trackChains } from '../../src/derived/sound/track-chains.ts';
import { turnSpreads } from '../../src/derived/sound/turn-spreads.ts';
import { fitLogistic } from './logistic-fit.ts';
import { fetchSounds, semiReal } from './semi-real.ts';
import { recipeSet, synthesise, type Truth } from './synthesiser/index.ts';
import { throughCodec } from './through-codec.ts';

const { values } = parseArgs({ options: { seed: { type: 'string', default: '5000' }, scale: { type: 'string', default: '9' }, semi: { type: 'string', default: '144' } } });
const RIDGE = 1e-3;
/** s; a place is the second sound within this */
const PLACE = 0.008;

const rows: (readonly number[])[] = [];
const truths: boolean[] = [];

/** The likely places of one recording with what they are; a second sound counted from the next blow is neither. */
function add(samples: Float32Array, rate: number, truth: Truth): void {
  const sound = prepareSound(samples, rate, {});
  const main = trackChains(onsetBands(sound), [60 / 520, 60 / 70], 1)?.main;
  if (main === undefined) return;
  const { track } = main;
  const runs = splitRuns(track.times, track.saliences, track.periodAt, track.events, track.usual, sound.facts.secondsRead);
  const longest = longestOf(runs);
  const steady = longest && steadyRate(longest);
  if (!steady) return;
  const times = steadyTimesOf(runs);
  const { dry } = withoutTails(sound.samples, sound.rate, times, track.period);
  const fold = foldTurns(dry, sound.rate, sound.hop, times, reachOf(track.period));
  if (!fold) return;
  const half = (first: number): Float64Array => meanLogs(fold, Array.from({ length: Math.floor((fold.blows - first + 1) / 2) }, (_, i) => 2 * i + first));
  const nearest = nearestOf(steady.jitter, track.period);
  const evidence = evidenceOf({ shape: fold, dry: fold.means, halves: [half(0), half(1)], wet: meansLike(fold, sound.samples, sound.rate, sound.hop, times), errors: turnSpreads(fold) }, nearest);
  const late = offsetOf(times, truth.blows);
  const places = truth.delay === undefined ? [] : [truth.delay - late, ...(Math.abs(late) > 0.02 ? [-late] : [])];
  for (const { place, features } of likelyPlaces(evidence, nearest, track.period)) {
    const delay = (place - evidence.origin) * fold.step;
    const is = places.some((one) => Math.abs(delay - one) < PLACE);
    if (!is && places.some((one) => Math.abs(Math.abs(delay - one) - track.period) < PLACE)) continue;
    rows.push(features);
    truths.push(is);
  }
}

/** s, median of found less true. */
function offsetOf(times: readonly number[], blows: ArrayLike<number>): number {
  const off = times.map((time) => {
    let best = Infinity;
    for (let i = 0; i < blows.length; i++) if (Math.abs(time - blows[i]!) < Math.abs(best)) best = time - blows[i]!;
    return best;
  });
  return off.sort((a, b) => a - b)[Math.floor(off.length / 2)] ?? 0;
}

for (const recipe of recipeSet(Number(values.seed), Number(values.scale))) {
  if (recipe.group === 'belt only') continue;
  const made = synthesise(recipe);
  const opened = recipe.codec ? throughCodec(made.samples, made.rate, recipe.codec) : made;
  add(opened.samples, opened.rate, made.truth);
}
const folder = fetchSounds();
if (folder !== undefined)
  for (const made of semiReal(folder, Number(values.seed), Number(values.semi))) {
    const opened = throughCodec(made.samples, made.rate, 'aac-64k');
    add(opened.samples, opened.rate, made.truth);
  }
const { constant, coefficients } = fitLogistic(rows, truths, RIDGE);
console.log(`${rows.length} places, ${truths.filter(Boolean).length} second sounds`);
console.log(`{ ${FEATURES.map((name, i) => `${name}: ${coefficients[i]!.toFixed(3)}`).join(', ')} }, constant ${constant.toFixed(3)}`);
