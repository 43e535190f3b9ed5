import type { MotionRan } from '../../derived/motion/index.ts';
import { BEAT_WORDS } from '../../views/motion/index.ts';

/** What a proposal is worth against the hammer as found. */
export interface Worth {
  readonly kind: 'helps' | 'no-help' | 'worse';
  readonly words: string;
}

/** dB that an ear tells from as it was, and the share of the blow that a smith does. */
const HEARD = 1.5;
const FELT = 0.05;

const loudest = (run: MotionRan): number | undefined => (run.secondSounds.length === 0 ? undefined : Math.max(...run.secondSounds.map((one) => one.level)));

/** Whether a change of settings helps, in one sentence: the beat first, then the blow. */
export function worthOf(found: MotionRan, tried: MotionRan): Worth {
  const blow = blowWords(found, tried);
  const other = tried.canDoEither?.beatClass;
  const either = other === undefined || other === tried.beatClass ? '' : ` By how it is started it may do something else: ${BEAT_WORDS[other].words}.`;
  const said = (kind: Worth['kind'], words: string): Worth => ({ kind, words: `${words}${blow}.${either}` });
  const [before, after] = [BEAT_WORDS[found.beatClass].words, BEAT_WORDS[tried.beatClass].words];
  if (found.beatClass === 'clean') return tried.beatClass === 'clean' ? said(weaker(found, tried) ? 'worse' : 'no-help', 'Clean before and after') : said('worse', `Worse: clean before, and now ${after}`);
  if (tried.beatClass === 'clean') return said(either === '' ? 'helps' : 'no-help', either === '' ? `It helps: one clean blow a turn, no longer ${before}` : 'It helps only in part: one clean blow a turn where it is let in as tried here');
  if (tried.beatClass !== found.beatClass) return said('no-help', `No help: instead of ${before}, now ${after}`);
  const [was, is] = [loudest(found), loudest(tried)];
  const louder = was === undefined || is === undefined ? 0 : is - was;
  if (louder < -HEARD) return said('helps', `It helps a little and does not cure: still ${before}, ${Math.round(-louder)} dB fainter against the blow`);
  if (louder > HEARD) return said('worse', `Worse: still ${before}, ${Math.round(louder)} dB louder against the blow`);
  return said('no-help', `No help: still ${before}`);
}

const weaker = (found: MotionRan, tried: MotionRan): boolean => tried.blowEnergy < found.blowEnergy * (1 - FELT);

function blowWords(found: MotionRan, tried: MotionRan): string {
  if (!(found.blowEnergy > 0) || !(tried.blowEnergy > 0)) return '';
  const more = tried.blowEnergy / found.blowEnergy - 1;
  return Math.abs(more) < FELT ? '; the blow is about as strong' : `; the blow is ${Math.round(Math.abs(more) * 100)} % ${more > 0 ? 'stronger' : 'weaker'}`;
}
