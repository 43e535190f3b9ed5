import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { biquad, convolve, filterThrough } from '../../src/methods/signal/index.ts';
import { noiseSource } from './synthesiser/noise-source.ts';
import { roomResponse } from './synthesiser/room.ts';
import { schedule, type Recipe, type Recording } from './synthesiser/index.ts';

/**
 * Real strikes at known times over real backgrounds. The sounds are the one-shots and loops of the npm package
 * supersonic-scsynth-samples (CC0-1.0); it is installed into a temporary folder when the bench runs, and nothing of it
 * is kept in the project. Only sounds of a single impact are taken: a slammed door has several, and no one time.
 */
const PACKAGE = 'supersonic-scsynth-samples@0.84.2';
const RATE = 44_100;
const STRIKES = ['perc_impact1', 'perc_impact2', 'drum_tom_lo_hard', 'drum_tom_mid_hard', 'drum_tom_hi_hard', 'drum_heavy_kick', 'drum_bass_hard', 'drum_snare_hard', 'drum_cowbell', 'bd_haus', 'bd_sone', 'elec_hollow_kick', 'elec_wood', 'tabla_te1', 'tabla_ghe1'];
const BACKGROUNDS = ['loop_3d_printer', 'ambi_haunted_hum', 'vinyl_hiss', 'loop_drone_g_97', 'ambi_drone', 'loop_industrial'];

export interface SemiReal extends Recording {
  readonly name: string;
  readonly level?: number;
  readonly signalToNoise: number;
}

/** Folder with the sounds, or undefined where they cannot be fetched. */
export function fetchSounds(): string | undefined {
  const folder = join(tmpdir(), 'tupwise-bench-sounds');
  const sounds = join(folder, 'node_modules', 'supersonic-scsynth-samples', 'samples');
  try {
    if (!existsSync(sounds)) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, 'package.json'), '{"private":true}');
      execFileSync('npm', ['install', '--ignore-scripts', '--no-audit', '--no-fund', PACKAGE], { cwd: folder, stdio: 'ignore' });
    }
    return existsSync(sounds) ? sounds : undefined;
  } catch {
    return undefined;
  }
}

function readSound(folder: string, name: string): Float64Array {
  const raw = execFileSync('ffmpeg', ['-v', 'error', '-i', join(folder, `${name}.flac`), '-f', 'f32le', '-ac', '1', '-ar', String(RATE), '-'], { maxBuffer: 1 << 28 });
  return Float64Array.from(new Float32Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.byteLength - (raw.byteLength % 4))));
}

/** From the strike's onset on, at most 0.6 s, faded, with energy one. */
function strikeOf(sound: Float64Array): Float64Array {
  let loudest = 0;
  for (const x of sound) loudest = Math.max(loudest, Math.abs(x));
  const first = Math.max(0, sound.findIndex((x) => Math.abs(x) > 0.15 * loudest) - 20);
  const out = sound.slice(first, first + Math.round(0.6 * RATE));
  const fade = Math.min(out.length, 2000);
  for (let i = 0; i < fade; i++) out[out.length - 1 - i]! *= i / fade;
  const energy = out.reduce((sum, x) => sum + x * x, 0) / RATE;
  return out.map((x) => x / Math.sqrt(energy));
}

/** The same thing struck softer: a little lower in pitch, dull, energy one. */
function softer(strike: Float64Array): Float64Array {
  const out = new Float64Array(strike.length);
  for (let i = 0; i < out.length; i++) {
    const at = i * 0.97;
    const below = Math.floor(at);
    out[i] = strike[below]! + (at - below) * ((strike[below + 1] ?? 0) - strike[below]!);
  }
  filterThrough(biquad('low-pass', 3500, RATE), out, out);
  const energy = out.reduce((sum, x) => sum + x * x, 0) / RATE;
  return out.map((x) => x / Math.sqrt(energy));
}

/** One recording: every strike filtered and levelled a little differently, in a room, over a background. */
export function* semiReal(folder: string, seed: number, count: number, every = 1): Generator<SemiReal> {
  const strikes = STRIKES.map((name) => strikeOf(readSound(folder, name)));
  const backgrounds = BACKGROUNDS.map((name) => readSound(folder, name));
  for (let i = 0; i < count; i += every) {
    const draw = noiseSource(seed + i * 31 + 5);
    const level = [undefined, -6, undefined, -10, -15, -20][i % 6];
    const signalToNoise = i % 2 === Math.floor(i / 6) % 2 ? 20 : 8;
    const seconds = draw.between(25, 45);
    const strokes = draw.between(120, 420);
    const recipe: Recipe = {
      name: '', group: '', seed: seed + i, seconds, rate: RATE, strokes, jitter: draw.oneOf([0.001, 0.002, 0.004]), drift: draw.oneOf([0, draw.between(-0.06, 0.06)]), wander: 0.003, misses: draw.oneOf([0, 0.03]),
      material: 'steel', runs: [{ start: 0.5, stop: seconds - 0.7, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: draw.between(0.3, 1), direct: draw.between(0, 8) }, signalToNoise, hum: 0,
    };
    const row = new Float64Array(Math.round(seconds * RATE));
    const strike = strikes[i % strikes.length]!;
    const soft = softer(strike);
    const period = 60 / strokes;
    const delay = draw.uniform() < 0.25 ? -draw.between(0.031, 0.06) : draw.between(0.032, Math.min(0.14, 0.38 * period));
    const jitter = draw.oneOf([0.0005, 0.001, 0.002]);
    const planned = schedule(recipe, noiseSource(recipe.seed));
    const blows: number[] = [];
    const seconds2: { blow: number; time: number }[] = [];
    const add = (what: Float64Array, time: number, height: number): void => {
      // Each strike a little duller or brighter: a first difference mixed in.
      const tilt = draw.between(-0.35, 0.35);
      const at = Math.round(time * RATE);
      let before = 0;
      for (let k = 0; k < what.length && at + k < row.length; k++) {
        row[at + k]! += height * (what[k]! + tilt * (what[k]! - before));
        before = what[k]!;
      }
    };
    for (const stroke of planned) {
      if (stroke.missed) continue;
      const height = 10 ** (stroke.level / 20);
      add(strike, stroke.time, height);
      blows.push(stroke.time);
      if (level === undefined) continue;
      const time = stroke.time + delay + jitter * draw.normal();
      if (time < 0) continue;
      add(soft, time, height * 10 ** ((level + 0.8 * draw.normal()) / 20));
      seconds2.push({ blow: blows.length - 1, time });
    }
    const wet = convolve(row, roomResponse(recipe.room, RATE, draw));
    const background = backgrounds[Math.floor(i / 2) % backgrounds.length]!;
    let power = 0;
    for (const x of background) power += (x * x) / background.length;
    const height = Math.sqrt(1 / 0.05 / power) * 10 ** (-signalToNoise / 20);
    const from = Math.floor(draw.uniform() * background.length);
    let loudest = 0;
    for (let k = 0; k < wet.length; k++) {
      wet[k]! += height * background[(from + k) % background.length]!;
      loudest = Math.max(loudest, Math.abs(wet[k]!));
    }
    yield {
      name: `semi-real ${seed + i} ${STRIKES[i % STRIKES.length]}`, signalToNoise, ...(level !== undefined && { level }), rate: RATE, samples: Float32Array.from(wet, (x) => (0.8 * x) / loudest),
      truth: {
        impacts: [], blows: Float64Array.from(blows), missed: Float64Array.from(planned.filter((s) => s.missed), (s) => s.time), seconds: seconds2, planned: [planned.map((s) => s.planned)], runs: [],
        ...(level !== undefined && { level, delay: seconds2.reduce((sum, s) => sum + (s.time - blows[s.blow]!) / seconds2.length, 0) }),
      },
    };
  }
}
