import type { Picture } from '../../derived/index.ts';
import { needsRun } from '../../hammer/index.ts';

const LATER = 'when it may run again';

/** Whether only a running hammer answers one of these (what it was made with needs none), while something stops this one: nobody is asked to run it. */
export const waitsForRun = ({ duty }: Pick<Picture, 'duty'>, keys: readonly string[]): boolean =>
  duty.verdict === 'stand-down' && keys.some((key) => !key.includes('#') && needsRun(key.split('@')[0] ?? key));

/**
 * What is to be read or looked at, in its words; where only a running hammer answers it and something stops this one, after the word that it waits.
 * @param keys of the readings and looks that the words ask for
 */
export const onceItMayRun = (picture: Pick<Picture, 'duty'>, keys: readonly string[], words: string): string => (waitsForRun(picture, keys) ? `${/^\p{Lu}/u.test(words) ? `W${LATER.slice(1)}` : LATER}: ${words}` : words);
