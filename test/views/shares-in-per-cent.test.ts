import { expect, test } from 'vitest';
import { everythingSaid, FIVE } from '../print/every-paper.ts';
import { pictureOf } from '../print/paper-cases.ts';

/** What stands off by the inch of a shaft is the one thing here that is a slope and no share. */
const SLOPES = /clearance|bearing too tight/iu;

test.each(['inch', 'metric'] as const)('a share is said in per cent on every paper, however small it is: %s', (system) => {
  for (const { name, entries } of FIVE) {
    const picture = pictureOf(entries, system);
    const shares = Object.values(picture.values).flatMap((value) => (value.outcome.state === 'known' && value.outcome.quantity.dimension === 'ratio' && Math.abs(value.outcome.quantity.value) < 0.01 && value.outcome.quantity.value !== 0 ? [value.key] : []));
    const sloped = picture.findings.filter((finding) => /thou\/in|mm\/m\b/u.test(finding.shown) && !SLOPES.test(finding.title)).map((finding) => [finding.title, finding.shown]);
    expect({ name, sloped }).toEqual({ name, sloped: [] });
    // Rows of the readings and of what was worked out: where a clearance is not meant, no figure is a slope.
    const slopes = everythingSaid(picture, entries).filter(([where, text]) => /Found sound/u.test(where) && text.split('; ').some((part) => /thou\/in|mm\/m\b/u.test(part) && !SLOPES.test(part)));
    expect({ name, slopes }).toEqual({ name, slopes: [] });
    // A hammer of three phases has an unbalance of less than a hundredth, so that the test has something to look at.
    if (name.startsWith('wrenhollow')) expect(shares).toContain('drive.voltage-unbalance');
  }
});

test('the clearance of a bearing is a slope, in thou to the inch of shaft', () => {
  for (const { name, entries } of FIVE) {
    const shown = pictureOf(entries, 'inch').findings.filter((finding) => finding.criterion === 'journals.clearance' && finding.shown !== '').map((finding) => finding.shown);
    expect({ name, shown: shown.filter((one) => !one.endsWith(' thou/in')) }).toEqual({ name, shown: [] });
  }
});
