/**
 * The figures of the reader of recordings, against Debian's aubioonset and our own SuperFlux, on the same files in the
 * same run:  npx tsx bench/sound/run.ts [--seed 90000] [--scale 1] [--semi 96] [--rivals 1] [--pulleys 1]
 * With --pulleys the reader is told the rate that the pulleys give, as the page and the command line tell it where a survey holds it.
 * Seeds 100-311 and 3000-3222 were used to set thresholds and widths; every other seed is fresh.
 */
import { parseArgs } from 'node:util';
import { analyseBeat } from '../../src/derived/sound/index.ts';
import { AUBIO_SETTINGS, aubioOnsets, settingName, type AubioSetting } from './aubio.ts';
import { judge, type Judged } from './judge.ts';
import { mean, percentile, score, type Score } from './score.ts';
import { fetchSounds, semiReal } from './semi-real.ts';
import { superflux } from './superflux.ts';
import { rangeAbout } from '../../src/views/sound/index.ts';
import { recipeSet, synthesise, type Truth } from './synthesiser/index.ts';
import { throughCodec } from './through-codec.ts';

const { values } = parseArgs({ options: { seed: { type: 'string', default: '90000' }, scale: { type: 'string', default: '1' }, semi: { type: 'string', default: '96' }, rivals: { type: 'string', default: '1' }, pulleys: { type: 'string', default: '0' } } });
const seed = Number(values.seed);
const rivals = values.rivals !== '0';
/** Share by which the usual slip leaves a hammer behind its pulleys. */
const SLIP = 0.04;
/** The range to look in for a hammer of so many strokes a minute; the usual one where its pulleys are not told. */
const rangeOf = (strokes: number | undefined): { slowest?: number; fastest?: number } => (values.pulleys === '0' || strokes === undefined ? {} : rangeAbout(strokes / 60 / (1 - SLIP), ''));
const FLUX_THRESHOLDS = [1.5, 3, 6, 12];
/** Files on which the rivals' settings are chosen: every eleventh of the very set that they are scored on, which favours them. */
const EVERY = 11;

interface Sounded {
  readonly samples: Float32Array;
  readonly rate: number;
  readonly truth: Truth;
  readonly about: { group: string; signalToNoise: number; level?: number; seconds: number; strokes?: number };
}

function* synthetic(every: number): Generator<Sounded> {
  for (const [index, recipe] of recipeSet(seed, Number(values.scale)).entries()) {
    if (index % every !== 0) continue;
    const made = synthesise(recipe);
    const opened = recipe.codec ? throughCodec(made.samples, made.rate, recipe.codec) : made;
    yield { samples: opened.samples, rate: opened.rate, truth: made.truth, about: { group: recipe.group, signalToNoise: recipe.signalToNoise, seconds: recipe.seconds, strokes: recipe.strokes, ...(recipe.second && { level: recipe.second.level }) } };
  }
}

function* halfReal(every: number): Generator<Sounded> {
  const folder = fetchSounds();
  if (!folder) {
    console.log('The sounds for the semi-real set could not be fetched; it is left out.');
    return;
  }
  for (const made of semiReal(folder, seed, Number(values.semi), every)) {
    const opened = throughCodec(made.samples, made.rate, 'aac-64k');
    yield { ...opened, truth: made.truth, about: { group: made.level === undefined ? 'single' : `double ${made.level} dB`, signalToNoise: made.signalToNoise, seconds: made.samples.length / made.rate, ...(made.level !== undefined && { level: made.level }) } };
  }
}

function runSet(name: string, sounds: (every: number) => Generator<Sounded>): void {
  const judged: Judged[] = [];
  const scores = new Map<string, Score[]>();
  const keep = (method: string, found: readonly number[], truth: Truth): void => void scores.set(method, [...(scores.get(method) ?? []), score(found, truth.blows)]);
  let [rivalSeconds, rivalSound] = [0, 0];
  let chosen: AubioSetting[] | undefined;
  let threshold = 3;
  if (rivals) {
    const tried = new Map<string, number[]>();
    for (const { samples, rate, truth } of sounds(EVERY)) {
      if (truth.blows.length === 0) continue;
      const found = aubioOnsets(samples, rate, AUBIO_SETTINGS);
      AUBIO_SETTINGS.forEach((s, k) => tried.set(settingName(s), [...(tried.get(settingName(s)) ?? []), score(found.onsets[k]!, truth.blows).f10]));
      for (const t of FLUX_THRESHOLDS) tried.set(`superflux ${t}`, [...(tried.get(`superflux ${t}`) ?? []), score(superflux(samples, rate, t), truth.blows).f10]);
    }
    console.log(`\n${name}: rivals' settings tried, mean F at 10 ms on every ${EVERY}th file`);
    for (const [setting, f] of tried) console.log(`  ${setting.padEnd(34)} ${mean(f).toFixed(3)}`);
    chosen = [...AUBIO_SETTINGS].sort((a, b) => mean(tried.get(settingName(b)) ?? []) - mean(tried.get(settingName(a)) ?? [])).slice(0, 1);
    threshold = [...FLUX_THRESHOLDS].sort((a, b) => mean(tried.get(`superflux ${b}`) ?? []) - mean(tried.get(`superflux ${a}`) ?? []))[0]!;
  }
  for (const { samples, rate, truth, about } of sounds(1)) {
    const before = process.cpuUsage();
    const result = analyseBeat(samples, rate, rangeOf(about.strokes));
    const { user, system } = process.cpuUsage(before);
    judged.push(judge(result, truth, { ...about, cpu: (user + system) / 1e6 }));
    if (truth.blows.length === 0) continue;
    keep('ours', result.state === 'heard' ? result.strokes.map((s) => s.time) : [], truth);
    if (chosen) {
      const found = aubioOnsets(samples, rate, chosen);
      chosen.forEach((s, k) => keep(settingName(s), found.onsets[k]!, truth));
      rivalSeconds += found.seconds;
      rivalSound += about.seconds;
      keep(`superflux ${threshold} (own)`, superflux(samples, rate, threshold), truth);
    }
  }
  report(name, judged, scores);
  if (rivalSound > 0) console.log(`aubio: ${(rivalSound / rivalSeconds).toFixed(0)} times real time, start of the program included`);
}

function report(name: string, judged: readonly Judged[], scores: ReadonlyMap<string, readonly Score[]>): void {
  console.log(`\n=== ${name}: ${judged.length} recordings, seed ${seed}${values.pulleys === '0' ? '' : ', told the rate by pulleys'} ===`);
  console.log('blows, constant offset taken out for all'.padEnd(44), 'F 10 ms', 'F 25 ms', 'precision', 'recall 25');
  for (const [method, rows] of scores) console.log(`  ${method}`.padEnd(44), mean(rows.map((r) => r.f10)).toFixed(3).padStart(7), mean(rows.map((r) => r.f25)).toFixed(3).padStart(7), mean(rows.map((r) => r.precision)).toFixed(3).padStart(9), mean(rows.map((r) => r.recall25)).toFixed(3).padStart(9));
  const withBlows = judged.filter((j) => j.group !== 'belt only');
  console.log('ours by group'.padEnd(34), ' n  F10   F25   worst F25  trusted');
  for (const group of new Set(withBlows.map((j) => j.group))) {
    const rows = withBlows.filter((j) => j.group === group);
    console.log(`  ${group}`.padEnd(34), String(rows.length).padStart(2), mean(rows.map((r) => r.blows.f10)).toFixed(3), mean(rows.map((r) => r.blows.f25)).toFixed(3), Math.min(...rows.map((r) => r.blows.f25)).toFixed(3).padStart(8), rows.filter((r) => r.trusted).length);
  }
  const [fine, poor] = [withBlows.filter((j) => j.blows.f25 >= 0.9), withBlows.filter((j) => j.blows.f25 < 0.9)];
  console.log(`self-check against F 25 >= 0.9: called good ${fine.filter((j) => j.trusted).length} of ${fine.length} that reach it, and ${poor.filter((j) => j.trusted).length} of ${poor.length} that do not; "cannot tell" ${withBlows.filter((j) => !j.heard).length}, which count as F 0`);
  const doubles = withBlows.filter((j) => j.level !== undefined);
  console.log('second sounds'.padEnd(34), ' n  double at its place, possible, wrong place, missed');
  for (const level of [...new Set(doubles.map((j) => j.level!))].sort((a, b) => b - a))
    for (const [words, pick] of [['SNR >= 12', (j: Judged) => j.signalToNoise >= 12], ['SNR < 12', (j: Judged) => j.signalToNoise < 12]] as const) {
      const rows = doubles.filter((j) => j.level === level && pick(j));
      const count = (kind: Judged['second']): number => rows.filter((r) => r.second === kind).length;
      if (rows.length) console.log(`  ${level} dB, ${words}`.padEnd(34), String(rows.length).padStart(2), `${count('right')} (${((100 * count('right')) / rows.length).toFixed(0)} %)`, count('possible, right place'), count('wrong place'), count('missed'));
    }
  const singles = withBlows.filter((j) => j.level === undefined);
  const falseOnes = singles.filter((j) => j.second === 'false').length;
  console.log(`false doubles on single-beat recordings: ${falseOnes} of ${singles.length} (${((100 * falseOnes) / Math.max(1, singles.length)).toFixed(1)} %); called possible: ${singles.filter((j) => j.second === 'possible, none there').length}`);
  const limit = judged.flatMap((j) => (j.limit === undefined ? [] : [j.limit]));
  console.log(`true level above the stated limit of detection: ${limit.length}; noticed: ${limit.filter(Boolean).length} (${((100 * limit.filter(Boolean).length) / Math.max(1, limit.length)).toFixed(0)} %)`);
  const errors = (pick: (j: Judged) => { error: number; covered: boolean } | undefined, scale: number, unit: string, words: string): void => {
    const rows = judged.flatMap((j) => pick(j) ?? []);
    if (rows.length === 0) return;
    const size = rows.map((r) => Math.abs(r.error) * scale);
    console.log(`  ${words}`.padEnd(34), `n ${rows.length}, median ${percentile(rows.map((r) => r.error * scale), 0.5).toPrecision(2)}, median size ${percentile(size, 0.5).toPrecision(3)}, 90 % ${percentile(size, 0.9).toPrecision(3)}, worst ${percentile(size, 1).toPrecision(3)} ${unit}; interval holds the truth in ${((100 * rows.filter((r) => r.covered).length) / rows.length).toFixed(1)} %`);
  };
  console.log('errors and stated 95 % intervals');
  errors((j) => j.rate, 1e6, 'ppm', 'rate');
  errors((j) => j.drift, 60 * 100, '% a minute', 'drift');
  errors((j) => j.delay, 1000, 'ms', 'delay');
  errors((j) => j.levelError, 1, 'dB', 'level');
  const [cpu, sound] = [judged.reduce((s, j) => s + j.cpu, 0), judged.reduce((s, j) => s + j.seconds, 0)];
  console.log(`speed: ${(sound / cpu).toFixed(0)} times real time (processor time of all threads)`);
}

if (Number(values.scale) > 0) runSet('held-out synthetic', synthetic);
if (Number(values.semi) > 0) runSet('semi-real (CC0 one-shots, AAC 64 kbit/s)', halfReal);
