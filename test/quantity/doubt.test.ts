import { describe, expect, test } from 'vitest';
import { TOOLS, canRead, readQuantity, type ReadOptions, type ToolName } from '../../src/methods/quantity/index.ts';
import { PARTS } from '../../src/hammer/index.ts';

const INCH = 0.0254;
const doubt = (text: string, options: Partial<ReadOptions> = {}): number => {
  const reading = readQuantity(text, { dimension: 'length', ...options });
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.message}`);
  return reading.quantity.uncertainty;
};

describe('the doubt of a reading', () => {
  test('written ± is the half-width of 95 %: twice the standard uncertainty', () => {
    expect(doubt('2 15/16 ± 1/32 in')).toBeCloseTo(INCH / 64, 15);
    expect(doubt('2 15/16 in +/- 1/32')).toBeCloseTo(INCH / 64, 15);
    expect(doubt('2 15/16 in ± 1/32"')).toBeCloseTo(INCH / 64, 15);
    expect(doubt('47.5 mm ± 0.2')).toBeCloseTo(1e-4, 15);
    expect(doubt('3 in ± 10 thou')).toBeCloseTo(0.005 * INCH, 15);
    expect(doubt('60 °C ± 2', { dimension: 'temperature' })).toBeCloseTo(1, 12);
    expect(doubt('140 °F ± 9 °F', { dimension: 'temperature' })).toBeCloseTo(2.5, 12);
    expect(doubt('60 psi ± 5 %', { dimension: 'pressure' })).toBeCloseTo((0.025 * 60 * 4.4482216152605) / INCH ** 2, 8);
    // Behind a share the same sign counts points, not a share of the share.
    expect(doubt('85 % ± 5 %', { dimension: 'ratio' })).toBeCloseTo(0.025, 15);
    expect(doubt('3 in ± 0')).toBe(0);
    expect(doubt('3 ± 1/16 in')).toBeCloseTo(INCH / 32, 15);
  });

  test('without ± or tool half of the last place is a rectangular limit (JCGM 100:2008, 4.3.7)', () => {
    expect(doubt('47.5 mm')).toBeCloseTo(0.00005 / Math.sqrt(3), 15);
    expect(doubt('4 19/32 in')).toBeCloseTo(INCH / 64 / Math.sqrt(3), 15);
  });

  test('the tool gives the doubt, but no better than what was written', () => {
    expect(doubt('4 19/32 in', { tool: 'rule' })).toBeCloseTo(INCH / 64, 15);
    expect(doubt('4.5 in', { tool: 'micrometer' })).toBeCloseTo((0.05 * INCH) / Math.sqrt(3), 15);
    expect(doubt('2.0005 in', { tool: 'micrometer' })).toBeCloseTo((0.0005 * INCH) / 2, 15);
    expect(doubt('400 kg', { dimension: 'mass', tool: 'tape' })).toBeCloseTo(20, 12);
    expect(doubt('10.0 A', { dimension: 'current', tool: 'clamp-meter' })).toBeCloseTo(0.15, 12);
    expect(doubt('2 15/16 ± 1/16 in', { tool: 'rule' })).toBeCloseTo(INCH / 32, 15);
  });

  test('inches in lowest terms say nothing of how finely they were read: a sixteenth is taken, or what the tool reads', () => {
    for (const text of ['3 in', '4 1/2 in', '4 5/8 in', "5'", '14"']) expect(doubt(text), text).toBeCloseTo(INCH / 32 / Math.sqrt(3), 15);
    expect(doubt('3 in', { tool: 'rule' })).toBeCloseTo(INCH / 64, 15);
    expect(doubt('1 1/2 in', { tool: 'micrometer' })).toBeCloseTo((0.0005 * INCH) / 2, 15);
    expect(doubt('76 mm')).toBeCloseTo(0.0005 / Math.sqrt(3), 15);
  });

  test('about doubles it, however it is said', () => {
    const plain = doubt('3 in');
    for (const text of ['about 3 in', '~3 in', '≈ 3 in', '3 in?', '3 in ??', 'approx. 3 in', 'circa 3 in']) expect(doubt(text), text).toBeCloseTo(2 * plain, 15);
    expect(doubt('about 3 in ± 1/8')).toBeCloseTo(INCH / 8, 15);
    const reading = readQuantity('~3 in', { dimension: 'length' });
    expect(reading.ok && reading.approximate).toBe(true);
  });

  test('a whole count is exact, unless it is about', () => {
    expect(doubt('8', { dimension: 'count' })).toBe(0);
    expect(doubt('8', { dimension: 'count', tool: 'eye' })).toBe(0);
    expect(doubt('8', { dimension: 'count', tool: 'counted-blows' })).toBe(0.5);
    expect(doubt('~8', { dimension: 'count' })).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(doubt('8 1/2', { dimension: 'count' })).toBeCloseTo(0.25 / Math.sqrt(3), 12);
  });

  test('bounds in brackets are kept', () => {
    const reading = readQuantity('1.38 in (1.30 to 1.52)', { dimension: 'length' });
    expect(reading.ok && reading.quantity.interval).toEqual([0.03302, 0.038608]);
    expect(reading.ok && reading.quantity.uncertainty).toBeCloseTo(0.055 * INCH, 12);
    for (const text of ['1.38 in (1.40 to 1.52)', '1.38 in (1.52 to 1.30)', '1.38 ± 0.1 in (1.3 to 1.5)', '1.38 in (x to 2)']) expect(readQuantity(text, { dimension: 'length' }).ok, text).toBe(false);
  });
});

describe('the tools', () => {
  test('are refused for what they cannot read, naming those that can', () => {
    const reading = readQuantity('4 lb', { dimension: 'mass', tool: 'feeler', field: 'ram.mass' });
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem.expected).toContain('spring-scale');
  });

  test('can read what every measuring place asks of them', () => {
    const wrong = PARTS.flatMap((part) => part.places).flatMap((place) =>
      place.tools.filter((name) => !(name in TOOLS) || !canRead(name as ToolName, place.dimension)).map((name) => `${place.id}: ${name} cannot read ${place.dimension}`));
    expect(PARTS.length).toBeGreaterThan(10);
    expect(wrong).toEqual([]);
  });

  test('carry figures that are finite, not negative and no better than a quarter of their division', () => {
    for (const [name, tool] of Object.entries(TOOLS)) {
      expect(tool.source.length, name).toBeGreaterThan(5);
      for (const figure of Object.values(tool.expandedUncertainty)) {
        expect(Number.isFinite(figure) && figure >= 0, name).toBe(true);
      }
      const length = tool.expandedUncertainty.length;
      if (length !== undefined && tool.division !== undefined && name !== 'level') expect(length, name).toBeGreaterThanOrEqual(tool.division / 4);
    }
  });
});
