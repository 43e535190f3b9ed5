import { exponential, nextUniform, seeded } from '../../methods/chance/index.ts';
import { sineCosine } from '../../methods/numerics/index.ts';
import type { MotionRan, SecondSound } from '../../derived/motion/index.ts';
import { FAINT, loopBeats, motionLoop } from './motion-loop.ts';

/** What met: the dies, linkage and guide, or the ram and what carries it. */
export type BeatVoice = MotionRan['beats'][number]['kind'];
type BeatKind = BeatVoice;

/** One way in which iron rings: Hz, share of the strike, s until it has fallen to a third. */
type Ring = readonly [frequency: number, share: number, decay: number];

/** How each meeting rings; invented so that the ear can tell them apart, no source: dies bright, linkage clear and thin, carrier dull and low. */
export const RINGS: Readonly<Record<BeatKind, { readonly rings: readonly Ring[]; readonly click: number }>> = {
  die: { rings: [[118, 1, 0.055], [410, 0.5, 0.04], [1260, 0.34, 0.03], [2870, 0.2, 0.016]], click: 0.3 },
  joint: { rings: [[640, 0.7, 0.05], [1730, 0.8, 0.06], [3980, 0.4, 0.03]], click: 0.2 },
  upper: { rings: [[92, 1, 0.07], [236, 0.7, 0.05], [520, 0.2, 0.03]], click: 0.08 },
};

/**
 * What a run would sound like: every beat of its last turns rung at its moment and level, round and round.
 * @param rate samples a second, 8000 to 96000
 * @param rounds how many times the loop is played
 * @param stretch 1 at the hammer's own speed; more sets the beats further apart and leaves their ring as it is
 * @returns samples between -1 and 1
 */
export function beatSound(run: MotionRan, rate: number, rounds: number, stretch = 1): Float32Array<ArrayBuffer> {
  const loop = motionLoop(run);
  const beats = loopBeats(run, loop).flatMap(({ after, beat }) => (beat.level >= FAINT ? [{ after: after * stretch, kind: beat.kind, level: beat.level }] : []));
  return ring(beats, loop.seconds * stretch, rate, rounds);
}

/** The part that each second sound comes from. */
const FROM: Readonly<Record<SecondSound['kind'], BeatKind>> = { 'die-re-strike': 'die', 'joint-knock': 'joint', 'upper-stop-knock': 'upper' };

/** What one second sound is like beside its blow, six times over at 300 a minute: for an ear that has not met it yet. */
export function exampleSound(sound: Pick<SecondSound, 'kind' | 'delay' | 'level'>, rate: number): Float32Array<ArrayBuffer> {
  const first = Math.max(0, -sound.delay);
  return ring([{ after: first, kind: 'die', level: 0 }, { after: first + sound.delay, kind: FROM[sound.kind], level: sound.level }], 0.2, rate, 6);
}

function ring(beats: readonly { readonly after: number; readonly kind: BeatKind; readonly level: number }[], seconds: number, rate: number, rounds: number): Float32Array<ArrayBuffer> {
  if (!(rate >= 8000 && rate <= 96000)) throw new Error(`a sound has 8000 to 96000 samples a second: ${rate}`);
  const samples = new Float32Array(Math.ceil(Math.min(30, seconds * rounds + 0.4) * rate));
  const noise = seeded(7, 'click');
  for (let round = 0; round < rounds; round += 1)
    for (const { after, kind, level } of beats) strike(samples, Math.round((round * seconds + after) * rate), rate, kind, 0.8 * exponential((level * Math.LN10) / 20), () => nextUniform(noise) - 0.5);
  let peak = 0;
  for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
  if (peak > 0.95) for (let i = 0; i < samples.length; i += 1) samples[i] = (samples[i]! * 0.95) / peak;
  return samples;
}

function strike(samples: Float32Array, start: number, rate: number, kind: BeatKind, loud: number, noise: () => number): void {
  const { rings, click } = RINGS[kind];
  const total = rings.reduce((sum, [, share]) => sum + share, 0);
  const step = new Float64Array(2);
  for (const [frequency, share, decay] of rings) {
    // A damped ring by one turning pointer: each sample turns it by the same angle and shortens it by the same share.
    sineCosine((2 * Math.PI * frequency) / rate, step);
    const fade = exponential(-1 / (decay * rate));
    let sine = 0;
    let cosine = (loud * share) / total;
    const length = Math.min(samples.length - start, Math.ceil(decay * rate * 7));
    for (let i = 0; i < length; i += 1) {
      samples[start + i]! += sine;
      const next = (sine * step[1]! + cosine * step[0]!) * fade;
      cosine = (cosine * step[1]! - sine * step[0]!) * fade;
      sine = next;
    }
  }
  const clickLength = Math.min(samples.length - start, Math.round(rate * 0.004));
  for (let i = 0; i < clickLength; i += 1) samples[start + i]! += loud * click * noise() * (1 - i / clickLength);
}
