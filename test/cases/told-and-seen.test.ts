import { expect, test } from 'vitest';
import { judgementText } from '../../src/cli/judge.ts';
import { picture, type Picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportTree } from '../../src/views/index.ts';
import { LogOf } from './log-of.ts';

/** Half an inch, and 2 15/16 in, in metres: 25.4 mm to the inch exactly (BIPM, The International System of Units, 9th edition, appendix on the foot and pound). */
const inches = (count: number): { dimension: 'length'; value: number; uncertainty: number } => ({ dimension: 'length', value: count * 0.0254, uncertainty: 0.0004 });

const told = (log: LogOf, look: string, answer: string): void => void log.put('sighting', { look, answer, standing: 'told', saidBy: 'the last owner' });
const toldReading = (log: LogOf, place: string, count: number): void => void log.put('reading', { place, quantity: inches(count), asWritten: `${count} in`, standing: 'told', saidBy: 'the last owner' });

function pictured(log: LogOf): Picture {
  const found = picture(log.entries, knowledge, '2026-11-26T00:00:00Z', 1);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
}
const finding = (of: Picture, criterion: string) => of.findings.find((one) => one.criterion === criterion);
const said = (of: Picture): string => JSON.stringify(reportTree(of, knowledge).blocks);

test('told before it was seen: the seen one is used, and both are said under the finding, in the report and by judge', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  told(log, 'frame.crack', 'none');
  log.look('frame.crack', 'present');
  const seen = pictured(log);
  const words = 'told “looked at clean, none found” by the last owner on 2026-05-12, seen “a crack is there” on 2026-05-12: the seen one is used';
  expect(finding(seen, 'frame.crack')).toMatchObject({ grade: 'stand-down', sureWords: 'seen' });
  expect(finding(seen, 'frame.crack')?.atOdds?.toLowerCase()).toBe(`${words}.`);
  expect(said(seen)).toContain('Told one way, found another');
  expect(said(seen).toLowerCase()).toContain(words);
  expect(judgementText(seen)).toContain(words);
});

test('told after it was seen clears nothing: what was seen stays', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').look('frame.crack', 'present');
  told(log, 'frame.crack', 'none');
  expect(finding(pictured(log), 'frame.crack')).toMatchObject({ grade: 'stand-down', sureWords: 'seen' });
});

test('told after it was seen, and worse: it counts until somebody looks again', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').look('frame.crack', 'none');
  told(log, 'frame.crack', 'present');
  const parted = finding(pictured(log), 'frame.crack');
  expect(parted).toMatchObject({ grade: 'stand-down', sureWords: 'told, not seen' });
  expect(parted?.atOdds).toContain('what was told is worse and counts until somebody looks again');
  expect(finding(pictured(log.look('frame.crack', 'none')), 'frame.crack')).toMatchObject({ grade: 'sound', sureWords: 'seen' });
});

test('told readings stand back behind measured ones, whichever came first, and within their doubt nothing is at odds', () => {
  for (const first of ['told', 'measured']) {
    const log = new LogOf('50 lb', 'coil-and-toggle');
    if (first === 'told') toldReading(log, 'upper-die.height', 3.5);
    log.read('upper-die.height', '2 15/16 in');
    if (first !== 'told') toldReading(log, 'upper-die.height', 3.5);
    const found = pictured(log);
    expect(found.values['upper-die.height']).toMatchObject({ standing: 'measured', asWritten: '2 15/16 in' });
    expect(found.known.contradictions).toMatchObject([{ key: 'upper-die.height', used: { words: '2 15/16 in' }, other: { words: '3.5 in' } }]);
  }
  const near = new LogOf('50 lb', 'coil-and-toggle').read('upper-die.height', '2 15/16 in');
  toldReading(near, 'upper-die.height', 2.94);
  expect(pictured(near).known.contradictions).toEqual([]);
});

test('one place measured twice in a day with two answers is at odds; other ways, other days, work and settings between them are not', () => {
  const twice = new LogOf('50 lb', 'coil-and-toggle').read('ram-guide.play-side@top', '10 thou').read('ram-guide.play-side@top', '40 thou');
  expect(pictured(twice).problems.join(' ')).toContain('measured twice on 2026-05-12, 10 thou and 40 thou: the later one is used, measure again');
  const mended = new LogOf('50 lb', 'coil-and-toggle').look('keys.secure', 'loose');
  mended.put('job-progress', { job: 'keys.fit-new', state: 'done' });
  told(mended, 'keys.secure', 'tight');
  expect(pictured(mended).known.contradictions).toEqual([]);
  expect(pictured(mended).known.looks['keys.secure']?.standing).toBe('told');
  const set = new LogOf('50 lb', 'coil-and-toggle').read('upper-die.rest-gap', '1 in');
  set.put('setting', { place: 'upper-die.rest-gap', quantity: inches(0.5), asWritten: '1/2 in' });
  expect(pictured(set.read('upper-die.rest-gap', '1/2 in')).known.contradictions).toEqual([]);
});
