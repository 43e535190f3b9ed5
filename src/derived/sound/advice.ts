/** Something that the recording cannot settle or that spoils it, and what would. */
export interface Advice {
  readonly kind: AdviceKind;
  /** Sentence for a person. */
  readonly words: string;
}

export type AdviceKind =
  | 'no-sound' | 'too-short' | 'few-marks' | 'no-beat' | 'few-strokes' | 'read-in-part' | 'not-numbers' | 'clipped' | 'gain-control'
  | 'is-this-the-hammer' | 'other-rate' | 'other-chain' | 'echo-or-beat' | 'before-or-after' | 'rings-through' | 'weak-blows'
  | 'only-a-limit' | 'possible-second' | 'some-strokes-only' | 'uneven' | 'rate-is-a-rate' | 'not-a-level-meter';

const WORDS: Record<AdviceKind, string> = {
  'no-sound': 'Nothing is to be heard in this recording; check that the microphone is allowed and not covered, and record again.',
  'too-short': 'The recording is too short to hear a beat; let the hammer run for 20 seconds or more and record that.',
  'few-marks': 'Too few marks are left for a beat; it takes four in a row.',
  'no-beat': 'No regular blows were found; hold the phone one to two metres from the dies, away from the motor, and record 20 seconds of steady running.',
  'few-strokes': 'There are fewer than 15 strokes or less than 8 seconds of running; 20 seconds more would settle more.',
  'read-in-part': 'The recording is long; only its first part was read. Cut out the minute that matters if it lies later.',
  'not-numbers': 'Some samples of the recording were no numbers and were read as silence.',
  'clipped': 'The blows are louder than the recorder can take, so their levels are not to be trusted, though the times are; record again from farther away or with less gain.',
  'gain-control': 'The recorder turns its gain up and down by itself, so levels are pressed together; the sign of a level holds, the decibels do not. Switch automatic gain off if the phone allows it.',
  'is-this-the-hammer': 'These are regular impacts; whether they are the hammer cannot be told from sound. Listen to the marked blows: is this the hammer?',
  'other-rate': 'Half or double the rate would explain the blows nearly as well. Count ten blows against a clock, or give the expected rate.',
  'other-chain': 'Something else strikes regularly as well: another machine, a belt joint. Which is the hammer cannot be told from sound; record again with the other one standing, or with the belt off.',
  'echo-or-beat': 'The second sound is the same at every stroke, as the echo of a wall would be. Move the phone two metres aside and record again: the delay of an echo changes, that of a second blow does not.',
  'before-or-after': 'The second sound lies near the middle of the turn, so whether it comes after one blow or before the next cannot be told; both are given.',
  'rings-through': 'The blow rings or rumbles on until the next one and hides what may lie between; go closer, or damp the ringing, and record again.',
  'weak-blows': 'The blows hardly stand above the noise; go closer, and away from the motor.',
  'only-a-limit': 'No second sound was found; a weaker one than the limit given could still be there.',
  'possible-second': 'There may be a second sound, but it is not sure; go closer and record 20 seconds more.',
  'some-strokes-only': 'The second sound comes with some strokes only.',
  'uneven': 'The blows come unevenly, so the rate and what is folded at it are doubtful; record 20 seconds of steady running.',
  'rate-is-a-rate': 'A falling rate is a falling rate: whether the clutch slips, the belt slips or the motor sags needs a run without load beside a run with load.',
  'not-a-level-meter': 'A phone is no sound-level meter: how loud it is at the ear, and how long one may stay, is not told from this recording.',
};

export const advice = (kind: AdviceKind): Advice => ({ kind, words: WORDS[kind] });
