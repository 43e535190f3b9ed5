import { describe, expect, it } from 'vitest';
import { picture, type Finding } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from './log-of.ts';

/**
 * A spring whose stress at solid lies between what the two published tables allow. By pencil: wire 1/2 in = 12.7 mm, mean diameter
 * 3 in, so C = 6, Wahl's factor 23/20 + 0.615/6 = 1.2525; F = G d⁴ s / (8 D³ n), hence tau = K G d s / (pi D² n).
 */
const stressOf = (travel: number, active: number): number => (1.2525 * 79.5e9 * 0.0127 * travel) / (Math.PI * 0.0762 ** 2 * active);
/** 0.56 of the tensile strength of oil-tempered wire: 1610/d^0.193 by early editions of Shigley, 1855/d^0.187 by Table 10-4 of the 7th and later (from memory). */
const OLDER = (0.56 * 1610e6) / 12.7 ** 0.193;
const NEWER = (0.56 * 1855e6) / 12.7 ** 0.187;

const springOf = (wire: string, inside: string, coils: string, free: string): LogOf =>
  new LogOf('50 lb', 'coil-and-toggle').read('coil-spring.wire', wire).read('coil-spring.inside-diameter', inside).read('coil-spring.coils', coils).read('coil-spring.free-length', free).look('coil-spring.ends', 'closed-and-ground');
function findingOf(log: LogOf): Finding {
  const made = picture(log.entries, knowledge, '2026-05-13T00:00:00Z', 1);
  const finding = made?.findings.find((one) => one.criterion === 'spring.stress-solid');
  if (finding === undefined) throw new Error('the stress at solid is judged');
  return finding;
}

describe('what spring wire stands, by two tables that do not agree', () => {
  it('is shown by both, with what each says, where one calls it good and the other too much', () => {
    // Eight coils, two of them dead; solid 4 in; free 6.1 in leaves 2.1 in of travel.
    const stress = stressOf(2.1 * 0.0254, 6);
    expect(stress / OLDER).toBeGreaterThan(1);
    expect(stress / NEWER).toBeLessThan(1);
    const finding = findingOf(springOf('1/2 in', '2 1/2 in', '8', '6.1 in'));
    expect(finding.grade).toBe('watch');
    const [older, newer] = [...finding.shown.matchAll(/([\d.]+) ± [\d.]+ % by the (older|newer) table/g)].map((one) => Number(one[1]) / 100);
    expect(older).toBeCloseTo(stress / OLDER, 2);
    expect(newer).toBeCloseTo(stress / NEWER, 2);
    expect(finding.reason).toContain('Good by the newer table, too much by the older table.');
    expect(finding.dispute?.oneSide).toMatch(/^By the older table it is .*: worth watching\. The older is taken, since it allows less/);
    expect(finding.dispute?.otherSide).toMatch(/^By the newer table it is .*: sound\. Who goes by the newer table sets a limit of their own at (\d+) %\.$/);
    // The same limit on the scale of the older table: the ratio of the two strengths.
    expect(Number(/at (\d+) %/.exec(finding.dispute?.otherSide ?? '')?.[1])).toBe(Math.round((100 * NEWER) / OLDER));
  });

  it('lets the owner choose the other side', () => {
    const log = springOf('1/2 in', '2 1/2 in', '8', '6.1 in');
    log.put('override', { criterion: 'spring.stress-solid', step: { grade: 'watch', quantity: { dimension: 'ratio', value: NEWER / OLDER, uncertainty: 0 }, asWritten: '117 %' }, author: 'A. Quill', reason: 'the wire was bought to the newer table' });
    const finding = findingOf(log);
    expect(finding.grade).toBe('sound');
    expect(finding.reason).not.toMatch(/too much by/);
  });

  it('says nothing of a parting where both agree, and still shows both', () => {
    const finding = findingOf(springOf('1/2 in', '2 1/2 in', '8', '5 in'));
    expect(finding.grade).toBe('sound');
    expect(finding.reason).not.toContain('table');
    expect(finding.shown).toMatch(/by the older table; .* by the newer table/);
  });

  it('says where the newer table is not printed for the wire', () => {
    const finding = findingOf(springOf('9/16 in', '2 1/2 in', '8', '7 1/4 in'));
    expect(finding.shown).not.toContain('newer');
    expect(finding.dispute?.otherSide).toBe('The newer table is not printed for wire this thick.');
  });
});
