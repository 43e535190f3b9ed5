import { expect, test } from 'vitest';
import { progressRefused } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf } from './worn-hammer.ts';

const loose = (): LogOf => gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('upper-die.rest-gap', '3/4 in').look('keys.secure', 'loose');
const trial = (log: LogOf, state: 'planned' | 'done' = 'done', minute?: number): LogOf => { log.put('job-progress', { job: 'trial.run', state }, minute); return log; };

test('a trial entered as done on a hammer that stands down is kept, said and not counted', () => {
  const log = trial(loose());
  const found = pictureOf(log);
  expect(log.entries.at(-1)).toMatchObject({ kind: 'job-progress', body: { job: 'trial.run', state: 'done' } });
  expect(found.provenance.entries).toBe(log.entries.length);
  expect(found.worksheet.jobs.find((job) => job.job === 'trial.run')?.state).toBe('open');
  const said = '"Run the trial" was entered as done on 2026-05-12 by A. Quill, and the hammer stood down: hold of dies and keys. It stays in the log and is not counted; cure that first, then run it and enter it again.';
  expect(found.problems).toContain(said);
  expect(found.worksheet.problems).toContain(said);
});

test('what was planned before still counts, and so does a trial after the cure; one before it never does', () => {
  const planned = trial(trial(loose(), 'planned'));
  expect(pictureOf(planned).worksheet.jobs.find((job) => job.job === 'trial.run')?.state).toBe('planned');
  const cured = trial(loose(), 'done');
  cured.put('job-progress', { job: 'keys.renew', state: 'done' });
  cured.look('keys.secure', 'tight');
  expect(pictureOf(cured).duty.verdict).not.toBe('stand-down');
  // Tried while it stood down: not made good by a later cure.
  expect(pictureOf(cured).known.progress['trial.run']).toBeUndefined();
  expect(pictureOf(trial(cured)).known.progress['trial.run']?.state).toBe('done');
  expect(pictureOf(trial(cured)).problems.join()).not.toContain('stood down');
});

test('whoever enters it is told beforehand; planning it, and work with spanners, are not refused', () => {
  const { findings } = pictureOf(loose());
  expect(progressRefused(findings, 'trial.run', 'done', knowledge)).toBe('"Run the trial" cannot be done while something stops this hammer: Hold of dies and keys. A die that cannot be made tight leaves the hammer. Cure that first; then it is run, and entered.');
  expect(progressRefused(findings, 'trial.find-second-sound', 'started', knowledge)).toContain('cannot be started');
  expect(progressRefused(findings, 'trial.run', 'planned', knowledge)).toBeUndefined();
  expect(progressRefused(findings, 'keys.renew', 'done', knowledge)).toBeUndefined();
  const sound = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')));
  expect(progressRefused(sound.findings, 'trial.run', 'done', knowledge)).toBeUndefined();
});
