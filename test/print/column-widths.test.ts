import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnWidths } from '../../src/print/pdf/column-widths.ts';

/** Letters that go into a line over the whole width, as counted on a printed sheet of dates. */
const LINE = 90;

test('no word of up to twenty letters is wider than its column, however long its neighbours are', () => {
  fc.assert(fc.property(fc.array(fc.tuple(fc.integer({ min: 13, max: 20 }), fc.integer({ min: 0, max: 20 })), { minLength: 2, maxLength: 5 }), (columns) => {
    const row = columns.map(([word, more]) => ['x'.repeat(word), ...Array.from({ length: more }, () => 'a few words more')].join(' '));
    const shares = columnWidths(columns.map(() => 'What'), [row]);
    const total = shares.reduce((sum, share) => sum + share, 0);
    // Where every column must be widened for its word, they share what there is.
    if (columns.reduce((sum, [word]) => sum + word + 2, 0) > LINE / 2) return;
    columns.forEach(([word], index) => expect((shares[index]! / total) * LINE).toBeGreaterThan(word * 0.75));
  }));
});

test('a day stands in its column beside long reasons', () => {
  const shares = columnWidths(['What', 'When', 'Why then', 'What to do'], [['Dress the dies', 'overdue, 2026-03-14', 'Every 6 months; last on 2025-09-14. '.repeat(3), 'Faces flat and edges round again; measure the heights before and after. '.repeat(3)]]);
  expect((shares[1]! / shares.reduce((sum, share) => sum + share, 0)) * LINE).toBeGreaterThan('2026-03-14'.length);
});
