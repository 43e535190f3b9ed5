import { aWeightedMeanSquare } from '../../methods/signal/index.ts';
import { allowedTime, NIOSH, OSHA } from '../../methods/power/index.ts';
import type { BeatResult, Estimate } from './beat-result.ts';

/** How the level at the ear came about. */
export type LevelSource =
  /** read off a sound-level meter, dB(A) slow; its standard uncertainty in dB */
  | { readonly by: 'sound-level meter'; readonly level: number; readonly uncertainty?: number }
  /** a recording beside one of a calibrator's tone, by the same phone, app and gain */
  | { readonly by: 'calibrated recording'; readonly samples: Float32Array; readonly rate: number; readonly tone: Float32Array; readonly toneRate: number; readonly toneLevel: number; readonly beat?: BeatResult }
  /** only a phone's recording */
  | { readonly by: 'phone' };

export type NoiseAtEar =
  | { readonly state: 'known'; readonly level: Estimate; readonly allowed: readonly { readonly rule: string; readonly source: string; readonly seconds: Estimate }[]; readonly words: string }
  | { readonly state: 'not known'; readonly words: string };

/** dB, standard uncertainties: a hand-held meter of class 2 in use, and a phone's microphone beside a calibrator (from memory). */
const METER = 1.5;
const CALIBRATED_PHONE = 2.5;

/** How long one may stay, from a calibrated level only; a day's time, s, with the ends of the level's 95 % interval. */
export function noiseAtEar(source: LevelSource): NoiseAtEar {
  if (source.by === 'phone')
    return { state: 'not known', words: 'A phone is no sound-level meter: its gain is not known and it presses loud sounds together. Measure the level at the ear with a meter, or record a calibrator with the same phone, app and gain.' };
  let level: number;
  let spread: number;
  if (source.by === 'sound-level meter') {
    [level, spread] = [source.level, source.uncertainty ?? METER];
  } else {
    const facts = source.beat?.recording;
    if (facts && (facts.clippedBursts >= 5 || facts.gainControl)) return { state: 'not known', words: 'The recording is clipped, or the recorder turned its gain, so its level says nothing. Record again with fixed and lower gain, and the calibrator with it.' };
    const [heard, tone] = [aWeightedMeanSquare(source.samples, source.rate), aWeightedMeanSquare(source.tone, source.toneRate)];
    if (!(heard > 0 && tone > 0)) return { state: 'not known', words: 'One of the two recordings is silent; record the hammer and the calibrator again.' };
    [level, spread] = [source.toneLevel + 10 * Math.log10(heard / tone), CALIBRATED_PHONE];
  }
  if (!(level > 20 && level < 150)) return { state: 'not known', words: `A level at the ear lies between 20 and 150 dB(A): ${level.toFixed(0)}.` };
  const half = 1.96 * spread;
  const allowed = [OSHA, NIOSH].map((rule) => ({ rule: rule.id, source: rule.source, seconds: { value: allowedTime(level, rule), low: allowedTime(level + half, rule), high: allowedTime(level - half, rule) } }));
  return { state: 'known', level: { value: level, low: level - half, high: level + half }, allowed, words: 'Blows are peaks: below these times hearing protection is still wise, and a single peak above 140 dB(C) is never allowed.' };
}
