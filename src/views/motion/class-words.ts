import type { BeatClass, SecondSound } from '../../derived/motion/index.ts';

/** One sort of beat as it is named, lettered and hatched; never told by colour alone. */
export interface BeatWords {
  readonly words: string;
  /** stands in the map's fields and beside the legend */
  readonly letter: string;
  readonly hatch: 'plain' | 'dots' | 'single' | 'back' | 'cross' | 'rings' | 'level' | 'upright' | 'solid' | 'void';
  readonly ink: 'ink' | 'chalk' | 'pencil';
}

export const BEAT_WORDS: Readonly<Record<BeatClass, BeatWords>> = {
  clean: { words: 'one clean blow a turn', letter: 'C', hatch: 'plain', ink: 'ink' },
  'die-re-strike': { words: 'the dies strike twice', letter: 'R', hatch: 'single', ink: 'pencil' },
  'joint-knock': { words: 'the linkage knocks on its guide', letter: 'J', hatch: 'back', ink: 'chalk' },
  'upper-stop-knock': { words: 'the ram knocks on what carries it', letter: 'U', hatch: 'cross', ink: 'chalk' },
  gallop: { words: 'gallop: a hard blow and a soft one by turns', letter: 'G', hatch: 'level', ink: 'pencil' },
  irregular: { words: 'no two blows alike', letter: 'I', hatch: 'dots', ink: 'ink' },
  misses: { words: 'some turns bring no blow', letter: 'M', hatch: 'upright', ink: 'ink' },
  'no-blow': { words: 'the dies do not reach the work', letter: 'N', hatch: 'rings', ink: 'pencil' },
  'linkage-takes-the-blow': { words: 'the guide takes the blow in place of the work', letter: 'L', hatch: 'solid', ink: 'chalk' },
  stalled: { words: 'the drive cannot turn it', letter: 'S', hatch: 'solid', ink: 'ink' },
  refused: { words: 'cannot be built like that', letter: 'x', hatch: 'void', ink: 'ink' },
  'not-computed': { words: 'not worked out', letter: '?', hatch: 'void', ink: 'ink' },
};

interface SoundWords {
  /** What meets what. */
  readonly name: string;
  readonly cause: string;
  readonly worse: string;
}

export const SOUND_WORDS: Readonly<Record<SecondSound['kind'], SoundWords>> = {
  'die-re-strike': { name: 'the dies strike the work a second time', cause: 'a rod too long, a gap too small, or work too thick for the setting', worse: 'slower' },
  'joint-knock': { name: 'the linkage knocks on its guide', cause: 'too much throw, or a slow tread over a thick piece', worse: 'slower' },
  'upper-stop-knock': { name: 'the ram knocks on what carries it', cause: 'a weak or sagged spring, or too much speed', worse: 'faster' },
};
