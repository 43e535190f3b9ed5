import { acceptance, expectedBlow, type Acceptance, type AcceptancePoint, type ExpectedBlow, type Picture } from '../../derived/index.ts';
import type { Condition } from '../drawing/hatch.ts';
import type { Block } from '../report/block.ts';
import { waitsForRun } from '../sentences/when-it-may-run.ts';
import { keysWords } from './key-words.ts';

const VERDICT = { accepted: 'Right again', refused: 'Not right yet', 'not-finished': 'Trial not finished' } as const;
const MARK: Readonly<Record<Acceptance['verdict'], Condition>> = { accepted: 'sound', refused: 'stand-down', 'not-finished': 'not-known' };
const STATE: Readonly<Record<AcceptancePoint['state'], string>> = { green: 'Green', amber: 'Amber', red: 'RED', 'not-done': 'Not done' };

/** @param expected what the motion lets expect of a full blow, where it was reckoned */
export const acceptanceOf = (picture: Picture, expected?: ExpectedBlow): Acceptance =>
  acceptance({ known: picture.known, values: picture.values, findings: picture.findings, system: picture.system, seed: picture.provenance.seed, ...(expected === undefined ? {} : { expected }) });

/** What the motion lets expect of a full blow, where a strike test was made: the population takes some tenths of a second. */
export const blowToExpect = (picture: Picture): ExpectedBlow | undefined =>
  Object.keys(picture.known.history).some((key) => key.startsWith('running.test-bar-thickness')) ? expectedBlow(picture.known, picture.values, picture.provenance.seed) : undefined;

/** Whether the last trial accepts the hammer, point by point, red or green with the reason. */
export function acceptanceBlocks(picture: Picture, expected?: ExpectedBlow): readonly Block[] {
  const { verdict, sentence, points, since } = acceptanceOf(picture, expected);
  return [
    { kind: 'heading', level: 2, text: 'Acceptance of the last trial' },
    { kind: 'verdict', words: VERDICT[verdict], sentence: sentence.startsWith(`${VERDICT[verdict]}. `) ? sentence.slice(VERDICT[verdict].length + 2) : sentence, condition: MARK[verdict], sureWords: since === undefined ? 'No job was finished yet, so everything in the log counts.' : `Only what was entered since the last finished job, on ${since.slice(0, 10)}, counts.` },
    { kind: 'table', caption: 'Points of the trial', columns: ['Result', 'Point', 'Why', 'Shown'], rows: points.map((point) => ({
      cells: [STATE[point.state], point.title, `${point.reason}${point.missing.length === 0 ? '' : ` To be entered${waitsForRun(picture, point.missing) ? ' when it may run again' : ''}: ${keysWords(point.missing)}.`}`, point.shown],
    })) },
  ];
}
