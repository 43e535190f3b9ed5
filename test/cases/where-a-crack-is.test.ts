import { expect, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from './log-of.ts';

const SHA = 'a'.repeat(64);
const reason = (log: LogOf): string | undefined => picture(log.entries, knowledge, '2026-11-26T00:00:00Z', 1)?.findings.find((one) => one.criterion === 'frame.crack')?.reason;
const seen = (more: object, answer = 'present'): LogOf => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  log.put('sighting', { look: 'frame.crack', answer, standing: 'seen', ...more });
  return log;
};

test('a finding of a crack says what nobody said of it, and nothing more once both are there', () => {
  expect(reason(seen({}))).toMatch(/Where it is was not said, and there is no photograph of it\.$/);
  expect(reason(seen({ words: 'left side of the throat, 3 in long' }))).toMatch(/There is no photograph of the place\.$/);
  expect(reason(seen({ photographs: [SHA] }))).toMatch(/Where it is was not said\.$/);
  expect(reason(seen({ words: 'left side of the throat', photographs: [SHA] }))).not.toMatch(/photograph|not said/);
  expect(reason(seen({}, 'none'))).not.toMatch(/photograph|not said/);
});

test('a photograph of the part counts from the day on which the crack was seen', () => {
  const log = seen({ words: 'left side of the throat' });
  log.put('photograph', { sha256: SHA, mediaType: 'image/jpeg', words: 'the throat', part: 'frame' });
  expect(reason(log)).not.toMatch(/photograph/);
});
