import type { AnswersOf } from '../hammer/index.ts';

/** What is said wherever a paper sends a hand to a facing that holds, or may hold, asbestos; undefined where it does not, or where nobody looked. */
export function asbestosWords(looks: AnswersOf): string | undefined {
  switch (looks['clutch-facing.asbestos']?.answer) {
    case 'perhaps':
      return 'May hold asbestos: no oil, no brush, no air and no hand there before it is tested.';
    case 'yes':
      return 'Holds asbestos: no oil, no brush, no air and no hand there; only whoever local rules allow takes it off.';
    default:
      return undefined;
  }
}
