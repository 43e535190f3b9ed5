import type { Span } from './job.ts';

/** What a hammer of a class fetches in good working order, shown running; generic units of about one US dollar. */
export interface SaleClass {
  readonly ramPounds: number;
  readonly inGoodOrder: Span;
  readonly source: string;
}

/** Rough, and of one market: asking prices of rebuilt hammers of 50 and 100 lb; the others are carried on from them. */
export const SALE_CLASSES: readonly SaleClass[] = [
  { ramPounds: 25, inGoodOrder: { least: 2_500, likely: 3_800, most: 6_000 }, source: 'from-memory' },
  { ramPounds: 50, inGoodOrder: { least: 5_000, likely: 6_500, most: 9_000 }, source: 'price-guess' },
  { ramPounds: 100, inGoodOrder: { least: 7_000, likely: 9_500, most: 13_000 }, source: 'price-guess' },
  { ramPounds: 250, inGoodOrder: { least: 8_000, likely: 12_000, most: 20_000 }, source: 'from-memory' },
  { ramPounds: 500, inGoodOrder: { least: 8_000, likely: 14_000, most: 25_000 }, source: 'from-memory' },
];

/** What a buyer takes off for a fault, or adds; shares of what is left after the greater ones. */
export interface PriceChange {
  readonly id: string;
  readonly words: string;
  /** Share of the price, 0 to 1. */
  readonly share: Span;
  readonly adds?: boolean;
  /** Findings that bring it about: any of these criteria at this grade or worse, on a look only with one of these answers. */
  readonly when: readonly { readonly criterion: string; readonly grade: 'watch' | 'limited' | 'stand-down'; readonly answers?: readonly string[] }[];
  readonly source: string;
}

/** Parts that stay behind when a hammer is sold, or are made anew where it goes: what is wrong with them takes nothing off the hammer. */
export const OF_THE_PLACE: readonly string[] = ['foundation', 'hold-down-bolts', 'base', 'isolator', 'converter', 'floor'];

/** A setting that is made in no more than this many hours, with nothing to buy, takes nothing off. */
export const SMALL_SETTING_HOURS = 1.5;

const span = (least: number, likely: number, most: number): Span => ({ least, likely, most });

/** Deductions as buyers make them. The shares marked `common-practice` are usual; those `from-memory` are judged beside them. */
export const PRICE_CHANGES: readonly PriceChange[] = [
  {
    id: 'crack-in-load-path', words: 'crack in the load path', share: span(0.3, 0.45, 0.6), source: 'common-practice',
    when: [
      { criterion: 'frame.crack', grade: 'stand-down', answers: ['present'] }, { criterion: 'ram.crack', grade: 'stand-down', answers: ['present'] },
      { criterion: 'guide.ears', grade: 'stand-down', answers: ['broken'] }, { criterion: 'crank.crack', grade: 'stand-down', answers: ['present'] },
    ],
  },
  {
    id: 'crack-suspected', words: 'crack suspected and not settled', share: span(0.1, 0.25, 0.6), source: 'from-memory',
    when: ['frame.crack', 'ram.crack', 'guide.ears', 'crank.crack'].map((criterion) => ({ criterion, grade: 'stand-down' as const, answers: ['suspected'] })),
  },
  {
    id: 'repaired-casting', words: 'old repair of the frame, declared', share: span(0.1, 0.2, 0.3), source: 'from-memory',
    when: [{ criterion: 'frame.crack', grade: 'limited', answers: ['repaired'] }, { criterion: 'frame.repair', grade: 'watch' }, { criterion: 'guide.ears', grade: 'limited', answers: ['repaired'] }],
  },
  {
    id: 'dovetail-lip', words: 'dovetail or seat wall broken', share: span(0.15, 0.2, 0.3), source: 'common-practice',
    when: [{ criterion: 'seat.ear', grade: 'limited' }, { criterion: 'dovetail.crack', grade: 'stand-down', answers: ['present'] }, { criterion: 'dovetail.chip', grade: 'limited' }],
  },
  {
    id: 'rare-part', words: 'guide or other rare part missing', share: span(0.1, 0.15, 0.2), source: 'common-practice',
    when: [{ criterion: 'sow-block.fitted', grade: 'stand-down' }, { criterion: 'toggles.crack', grade: 'stand-down', answers: ['present'] }, { criterion: 'crosshead.crack', grade: 'stand-down', answers: ['present'] }],
  },
  {
    id: 'bearing-loose', words: 'main bearing loose', share: span(0.08, 0.1, 0.12), source: 'common-practice',
    when: [{ criterion: 'journals.clearance', grade: 'limited' }, { criterion: 'bearings.metal', grade: 'limited' }, { criterion: 'journals.shims-left', grade: 'watch' }],
  },
  {
    id: 'dies-worn-out', words: 'dies worn out', share: span(0.05, 0.07, 0.1), source: 'common-practice',
    when: [
      { criterion: 'stack.loss', grade: 'limited' }, { criterion: 'stack.loss-upper', grade: 'limited' }, { criterion: 'stack.loss-lower', grade: 'limited' }, { criterion: 'stack.loss-helve', grade: 'limited' },
      { criterion: 'dies.upper-face', grade: 'limited' }, { criterion: 'dies.lower-face', grade: 'limited' }, { criterion: 'dies.upper-hollow', grade: 'limited' }, { criterion: 'dies.lower-hollow', grade: 'limited' },
    ],
  },
  {
    id: 'spring-spent', words: 'spring spent', share: span(0.03, 0.05, 0.1), source: 'from-memory',
    when: ['spring.crack', 'spring.set', 'spring.clash', 'spring.travel-left'].map((criterion) => ({ criterion, grade: 'limited' as const })),
  },
  {
    id: 'motor', words: 'motor too small for it, or none that starts it', share: span(0.05, 0.07, 0.1), source: 'common-practice',
    when: [{ criterion: 'motor.share', grade: 'limited' }, { criterion: 'motor.start', grade: 'limited' }],
  },
  { id: 'far-or-heavy', words: 'far away, or hard to lift out', share: span(0.05, 0.1, 0.15), source: 'common-practice', when: [] },
  // Only while its papers are up to date: a hammer whose dated checks are overdue is documented as it once was.
  { id: 'shown-on-hot-steel', words: 'documented, and shown working on hot steel', share: span(0.1, 0.15, 0.2), adds: true, source: 'common-practice', when: [] },
];
