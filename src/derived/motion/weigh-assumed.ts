import type { BeatClass } from './beat-class.ts';
import { runHammer } from './run-hammer.ts';
import { restGapOf, withSetting } from './setting.ts';
import type { SurveySpec } from './spec-of-survey.ts';
import { spreadOfAssumed, withValue } from './with-doubt.ts';

/** What one assumed value does when it alone is let play within the spread of its class. */
export interface AssumedWeight {
  /** dotted name in the specification */
  readonly name: string;
  /** greatest change of the blow energy, as a share of the blow as reckoned, 0 or more */
  readonly swing: number;
  /** another beat that comes of it; absent where the beat stays */
  readonly becomes?: BeatClass;
}

/** Nineteen hammers in twenty lie within this many standard spreads. */
const WIDE = 2;
/** A changed beat outweighs this share of the blow: it is another hammer to the ear. */
const BEAT_CHANGE = 0.5;

/**
 * Which of the assumed values matters most to what is reckoned, weightiest first: each by itself is put to both ends of its spread.
 * A value that cannot be at one end, since the others then do not go together, is tried at the other only.
 * @param survey what was read and what is assumed
 * @param duration s of each run, 4 unless said
 */
export function weighAssumed(survey: SurveySpec, duration = 4): readonly AssumedWeight[] {
  const options = { relative: 1e-4, duration, sampleEvery: 2e-3, tryEither: false };
  const base = runHammer(survey.spec, options);
  if (base.outcome !== 'ran') return [];
  const gap = restGapOf(survey.spec);
  const weights = survey.assumed.flatMap((name): readonly AssumedWeight[] => {
    let swing = 0;
    let becomes: BeatClass | undefined;
    for (const way of [-1, 1]) {
      const changed = withValue(survey.spec, name, (value) => {
        const there = value + way * WIDE * spreadOfAssumed(name, value);
        return value >= 0 && there < 0 && !name.endsWith('Angle') && !name.endsWith('Offset') ? value * 0.2 : there;
      });
      if (JSON.stringify(changed) === JSON.stringify(survey.spec)) continue;
      // Whatever the hammer's lengths are, it was set up to the gap that it has.
      const moved = name === 'frameHeight' ? changed : withSetting(changed, 'restGap', gap);
      const run = runHammer(moved, options);
      if (run.outcome !== 'ran') continue;
      swing = Math.max(swing, base.blowEnergy > 0 ? Math.abs(run.blowEnergy / base.blowEnergy - 1) : run.blowEnergy > 0 ? 1 : 0);
      if (run.beatClass !== base.beatClass) becomes ??= run.beatClass;
    }
    return swing === 0 && becomes === undefined ? [] : [{ name, swing, ...(becomes === undefined ? {} : { becomes }) }];
  });
  const weight = (one: AssumedWeight): number => one.swing + (one.becomes === undefined ? 0 : BEAT_CHANGE);
  return weights.sort((a, b) => weight(b) - weight(a));
}
