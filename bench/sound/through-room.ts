import { convolve } from '../../src/methods/signal/index.ts';
import { background } from './synthesiser/background.ts';
import { damage } from './synthesiser/damage.ts';
import { noiseSource } from './synthesiser/noise-source.ts';
import { roomResponse } from './synthesiser/room.ts';
import type { Recipe } from './synthesiser/index.ts';

/** What a phone gets of a sound that is played in a noisy room. */
export interface NoisyRoom extends Pick<Recipe, 'room' | 'signalToNoise' | 'hum' | 'automaticGain' | 'lowCut' | 'clip'> {
  readonly seed: number;
}

/**
 * A dry sound through the room, the workshop's noise and the phone.
 * @param dry one channel
 * @param rate samples a second
 * @param strikes times of the blows, s, from which the ratio of blow to noise is set as elsewhere here: mean square over 50 ms
 */
export function throughRoom(dry: Float32Array, rate: number, strikes: readonly number[], room: NoisyRoom): Float32Array {
  const chance = noiseSource(room.seed);
  const wet = convolve(Float64Array.from(dry), roomResponse(room.room, rate, chance));
  let energy = 0;
  for (const time of strikes) for (let i = Math.round(time * rate); i < Math.min(dry.length, (time + 0.05) * rate); i++) energy += dry[i]! ** 2;
  const power = energy / (strikes.length * 0.05 * rate);
  const noise = background(wet.length, rate, room.hum, chance);
  const height = Math.sqrt(power) * 10 ** (-room.signalToNoise / 20);
  for (let i = 0; i < wet.length; i++) wet[i]! += height * noise[i]!;
  return damage(wet.subarray(0, dry.length), { ...room, rate } as Recipe);
}
