import { exponential, normalQuantile, nextUniform, seeded, type Generator } from '../../methods/chance/index.ts';
import { sineCosine } from '../../methods/numerics/index.ts';
import type { MotionRan } from '../../derived/motion/index.ts';
import { FAINT, loopBeats, motionLoop } from '../motion/motion-loop.ts';
import { RINGS, type BeatVoice } from '../motion/beat-sound.ts';

/** One meeting of iron with iron, to be made heard. */
export interface SoundedBeat {
  /** s from the start of the recording */
  readonly time: number;
  readonly kind: BeatVoice;
  /** dB against the loudest, by the speed with which the two met */
  readonly level: number;
}

/**
 * Higher tones than the ear needs to tell the meetings apart, but a microphone hears: every knock of iron has some.
 * Invented like the rest, no source.
 */
const BRIGHT: Readonly<Record<BeatVoice, readonly (readonly [frequency: number, share: number, decay: number])[]>> = {
  die: [[5200, 0.12, 0.01]],
  joint: [[6100, 0.2, 0.02]],
  upper: [[1150, 0.3, 0.025], [2300, 0.2, 0.014], [4300, 0.1, 0.008]],
};

/** Tones of each meeting, scaled so that all are equally strong: then a level is one of energy, as it is where knocks are compared. */
const VOICES = { die: voiceOf('die'), joint: voiceOf('joint'), upper: voiceOf('upper') };

function voiceOf(kind: BeatVoice): { readonly rings: readonly (readonly [frequency: number, share: number, decay: number])[]; readonly click: number } {
  const rings = [...RINGS[kind].rings, ...BRIGHT[kind]];
  const energy = rings.reduce((sum, [, share, decay]) => sum + (share * share * decay) / 4, 0);
  return { rings: rings.map(([frequency, share, decay]) => [frequency, share / Math.sqrt(energy), decay] as const), click: RINGS[kind].click };
}

/** dB that each tone strays from strike to strike, for no two meet at quite the same spot. */
const SPREAD = 2;
const LEAD = 0.25; // s

/** How unevenly a real hammer runs, which the model does not: standard deviations, s. */
export interface Unevenness {
  readonly blow: number;
  readonly second: number;
}

/**
 * The beats of a run's last turns, round and round, with the unevenness of a hammer laid on them.
 * @param seconds length wanted
 * @param seed a whole number from 0 up; the same gives the same beats
 */
export function beatsOfRun(run: MotionRan, seconds: number, seed: number, { blow, second }: Unevenness = { blow: 0.001, second: 0.001 }): readonly SoundedBeat[] {
  const loop = motionLoop(run);
  const chance = seeded(seed, 'unevenness');
  const beats = loopBeats(run, loop).filter(({ beat }) => beat.level >= FAINT);
  const made: SoundedBeat[] = [];
  // The loop is cut at samples of its trace; the turns themselves are known closer.
  const turnSeconds = run.rate > 0 ? loop.turns / run.rate : loop.seconds;
  for (let start = LEAD; start < seconds - turnSeconds - LEAD; start += turnSeconds) {
    let strayed = 0;
    for (const { after, beat } of beats) {
      if (beat.blow) strayed = blow * normal(chance);
      made.push({ time: start + after + strayed + (beat.blow ? 0 : second * normal(chance)), kind: beat.kind, level: beat.level + 0.8 * normal(chance) });
    }
  }
  return made.sort((a, b) => a.time - b.time);
}

/**
 * What a list of beats sounds like close by, without room or noise: every meeting rung with its own mixture of tones.
 * @param seconds length, above 0
 * @param rate samples a second, 8000 to 96000
 * @param seed a whole number from 0 up; the same gives the same samples
 * @returns samples between -1 and 1
 */
export function soundOfBeats(beats: readonly SoundedBeat[], seconds: number, rate: number, seed: number): Float32Array<ArrayBuffer> {
  if (!(rate >= 8000 && rate <= 96000)) throw new Error(`a sound has 8000 to 96000 samples a second: ${rate}`);
  const samples = new Float32Array(Math.ceil(seconds * rate));
  const chance = seeded(seed, 'strikes');
  for (const beat of beats) strike(samples, rate, beat, chance);
  let peak = 0;
  for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
  if (peak > 0) for (let i = 0; i < samples.length; i += 1) samples[i] = (samples[i]! * 0.8) / peak;
  return samples;
}

function strike(samples: Float32Array, rate: number, { time, kind, level }: SoundedBeat, chance: Generator): void {
  const start = Math.ceil(time * rate);
  if (start < 0 || start >= samples.length) return;
  const late = start / rate - time;
  const loud = exponential((level * Math.LN10) / 20);
  const { rings, click } = VOICES[kind];
  const total = rings.reduce((sum, [, share]) => sum + share, 0);
  const step = new Float64Array(2);
  for (const [frequency, share, decay] of rings) {
    const own = loud * share * exponential((SPREAD * normal(chance) * Math.LN10) / 20);
    sineCosine(2 * Math.PI * frequency * late, step);
    let [sine, cosine] = [own * step[0]!, own * step[1]!];
    sineCosine((2 * Math.PI * frequency) / rate, step);
    const fade = exponential(-1 / (decay * rate));
    const length = Math.min(samples.length - start, Math.ceil(decay * rate * 7));
    for (let i = 0; i < length; i += 1) {
      samples[start + i]! += sine;
      const next = (sine * step[1]! + cosine * step[0]!) * fade;
      cosine = (cosine * step[1]! - sine * step[0]!) * fade;
      sine = next;
    }
  }
  const length = Math.min(samples.length - start, Math.round(rate * 0.004));
  for (let i = 0; i < length; i += 1) samples[start + i]! += loud * total * click * (nextUniform(chance) - 0.5) * (1 - i / length);
}

const normal = (chance: Generator): number => normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, nextUniform(chance))));
