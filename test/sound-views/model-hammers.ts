import { runHammer, restGapOf, usualHammer, withSetting, type BeatClass, type MotionRan, type MotionSpec } from '../../src/derived/motion/index.ts';
import { beatsOfRun, soundOfBeats } from '../../src/views/sound/index.ts';
import { synthesise, type Material } from '../../bench/sound/synthesiser/index.ts';
import { throughRoom } from '../../bench/sound/through-room.ts';

const usual = usualHammer(25).spec;
const atSpeed = (spec: MotionSpec, factor: number): MotionSpec => ({ ...spec, driveSpeed: spec.driveSpeed * factor });
const weakened = (spec: MotionSpec, factor: number): MotionSpec => {
  if (spec.suspension.kind !== 'coil-toggle') throw new Error('the usual hammer has a coil spring');
  return { ...spec, upperStop: spec.upperStop / 2, suspension: { ...spec.suspension, preCompression: spec.suspension.preCompression * factor } };
};

/** Hammers of the model that make each kind of beat, and one in good order. */
export const HAMMERS: readonly { readonly name: string; readonly beatClass: BeatClass; readonly spec: MotionSpec }[] = [
  { name: 'in good order', beatClass: 'clean', spec: usual },
  { name: 'gap closed, work thick, slow', beatClass: 'die-re-strike', spec: atSpeed({ ...withSetting(usual, 'restGap', restGapOf(usual) - 0.012), workThickness: 0.036 }, 0.8) },
  { name: 'slow over a thick block', beatClass: 'joint-knock', spec: atSpeed({ ...usual, workThickness: 0.036 }, 0.8) },
  { name: 'weak spring, fast, little room over the ram', beatClass: 'upper-stop-knock', spec: atSpeed(weakened(usual, 0.7), 1.1) },
  { name: 'cold dies and speed', beatClass: 'gallop', spec: atSpeed({ ...usual, workThickness: 0, contact: { kind: 'fixed', restitution: 0.6 } }, 1.2) },
];

export function ran(spec: MotionSpec): MotionRan {
  const result = runHammer(spec, { duration: 8, traceSeconds: (5 * 2 * Math.PI) / spec.driveSpeed });
  if (result.outcome !== 'ran') throw new Error(JSON.stringify(result));
  return result;
}

/** A phone's recording of a model hammer in a workshop: the program's own sound, a room with 0.6 s of reverberation, hum and pink noise. */
export function recordingOf(run: MotionRan, { seconds = 30, rate = 44_100, signalToNoise = 15, seed = 1 } = {}): Float32Array {
  const beats = beatsOfRun(run, seconds, seed);
  const blows = beats.filter((beat) => beat.kind === 'die' && beat.level > -5).map((beat) => beat.time);
  return throughRoom(soundOfBeats(beats, seconds, rate, seed), rate, blows, { seed, room: { decay: 0.6, direct: 3 }, signalToNoise, hum: 0.5 });
}

/** The same beats struck by the bench's synthesiser: its voices for blow and second sound, its room and noise. */
export function recordingBySynthesiser(run: MotionRan, { seconds = 30, signalToNoise = 15, seed = 3, material = 'steel' as Material } = {}): Float32Array {
  const struck = beatsOfRun(run, seconds, seed).map(({ time, level, kind }) => ({ time, level, role: kind === 'die' && level > -5 ? ('blow' as const) : ('second' as const) }));
  return synthesise({
    name: '', group: '', seed: 9, seconds, rate: 44_100, strokes: 1, jitter: 0, drift: 0, wander: 0, misses: 0, material, runs: [],
    room: { decay: 0.6, direct: 3 }, signalToNoise, hum: 0.5,
  }, struck).samples;
}
