import type { Picture } from '../../derived/index.ts';
import { noiseAtEar, type NoiseAtEar } from '../../derived/sound/index.ts';
import { shownTime } from './shown.ts';

const RULES: Readonly<Record<string, string>> = { niosh: 'by the recommended limit', osha: 'by the United States rule' };

/** How long an unprotected ear may stay beside it: from the level that a meter read, or the reason why not. */
export function noiseSentences(picture: Picture): readonly string[] {
  const outcome = picture.values['running.noise']?.outcome;
  return sentencesOfNoise(noiseAtEar(outcome?.state === 'known' ? { by: 'sound-level meter', level: outcome.quantity.value, uncertainty: outcome.quantity.uncertainty } : { by: 'phone' }));
}

/** @param how the level came about, in words */
export function sentencesOfNoise(noise: NoiseAtEar, how = 'read by a meter'): readonly string[] {
  if (noise.state === 'not known') return [noise.words];
  const times = noise.allowed.map(({ rule, seconds }) => `${spoken(seconds.value)} a day ${RULES[rule] ?? rule} (${spoken(seconds.low)} to ${spoken(seconds.high)})`);
  return [`At ${Math.round(noise.level.value)} dB(A) at the ear, ${how}: without protection ${times.join('; ')}.`, noise.words];
}

/** A working day is the most that is said. */
function spoken(seconds: number): string {
  if (seconds >= 28_800) return 'a whole shift';
  const minutes = Math.round(seconds / 60);
  return seconds < 120 ? shownTime(seconds) : minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
