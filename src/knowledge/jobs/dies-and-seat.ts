import { EVERY } from '../families.ts';
import type { Job } from '../job.ts';

/** A key is driven, and a new one filed, last: to the die that stays, in a seat that is not touched again. */
const DIES_BEFORE_KEYS: Job['after'] = [
  { job: 'dies.new-upper', because: 'a key is filed to its own die: the new die comes first', atSameEnd: true },
  { job: 'dies.new-lower', because: 'a key is filed to its own die: the new die comes first', atSameEnd: true },
  { job: 'dies.grind-pair', because: 'the dies come out to be ground or dressed, and are keyed once, when they come back', onlyInOrder: true },
  { job: 'dies.dress', because: 'the dies come out to be ground or dressed, and are keyed once, when they come back', onlyInOrder: true },
];

/** A die is cut to the seat and the flanks that stay. */
const SEAT_BEFORE_DIE: Job['after'] = [
  { job: 'dovetail.file-flanks', because: 'the foot of the die is cut to the finished flanks', atSameEnd: true },
  { job: 'dovetail.machine-flanks', because: 'the foot of the die is cut to the finished flanks', atSameEnd: true },
];

/** Jobs for dies, keys and seat. */
export const DIES_AND_SEAT_JOBS: readonly Job[] = [
  {
    id: 'seat.file', title: 'File and scrape the seat floor', part: 'seat', families: EVERY, stage: 2, end: 'lower',
    after: [{ job: 'keys.draw', because: 'the old key leaves the seat before a wheel or a file goes into it', atSameEnd: true }],
    hours: { least: 3, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'seat.mill', title: 'Mill the seat true', part: 'seat', families: EVERY, stage: 2, end: 'lower',
    after: [{ job: 'keys.draw', because: 'the old key leaves the seat before a wheel or a file goes into it', atSameEnd: true }],
    replaces: [{ job: 'seat.file', on: ['seat'] }, { job: 'seat.grind-with-plate-jig', on: ['seat'] }],
    hours: { least: 12, likely: 20, most: 30 }, skill: 4, helpers: 2,
    parts: [],
    outside: { words: 'seat milled, or cut and fitted with a sow block', price: { least: 500, likely: 1000, most: 1800 }, source: 'price-guess' },
    cautions: ['isolate', 'top-heavy'], source: 'page-seat',
  },
  {
    id: 'seat.grind-with-plate-jig', title: 'Grind the seat with a guided plate', part: 'seat', families: EVERY, stage: 2, end: 'lower',
    after: [{ job: 'keys.draw', because: 'the old key leaves the seat before a wheel or a file goes into it', atSameEnd: true }],
    replaces: [{ job: 'seat.file', on: ['seat'] }],
    hours: { least: 8, likely: 10, most: 12 }, skill: 3, helpers: 0,
    parts: [
      { id: 'abrasive-discs', words: 'abrasive discs', quantity: 6, priceEach: { least: 3, likely: 5, most: 8 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'eyes'], source: 'page-seat',
  },
  {
    id: 'seat.fit-filler-plate', title: 'Make and fit a filler plate', part: 'filler-plate', families: EVERY, stage: 2, end: 'lower',
    after: [
      { job: 'seat.file', because: 'the plate must lie on a flat floor' },
      { job: 'seat.mill', because: 'the plate is made to the finished floor' },
      { job: 'seat.grind-with-plate-jig', because: 'the plate must lie on a flat floor' },
      { job: 'rod.make-room', because: 'with the rod as it stands the dies would meet before the bottom, the first time it is barred over' },
    ],
    closedBy: ['rod.set-gap'],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'filler-plate', words: 'tough steel plate, ground both sides, and dowels', quantity: 1, priceEach: { least: 20, likely: 45, most: 90 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'drift'], source: 'owners-practice',
  },
  {
    id: 'seat.mend-ear', title: 'Make good a broken seat wall', part: 'seat', families: EVERY, stage: 3, end: 'lower',
    after: [],
    hours: { least: 8, likely: 16, most: 30 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'machine shop', price: { least: 400, likely: 900, most: 1800 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'cracked-casting'], source: 'page-seat',
  },
  {
    id: 'dovetail.file-flanks', title: 'File the flanks straight', part: 'dovetail', families: EVERY, stage: 2,
    after: [{ job: 'keys.draw', because: 'the old key leaves the seat before a wheel or a file goes into it', atSameEnd: true }, 
      { job: 'seat.file', because: 'the flanks are filed to a finished floor' },
    ],
    hours: { least: 2, likely: 3, most: 5 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'dry-dovetail'], source: 'page-keys',
  },
  {
    id: 'dovetail.machine-flanks', title: 'Machine the flanks', part: 'dovetail', families: EVERY, stage: 2,
    after: [{ job: 'keys.draw', because: 'the old key leaves the seat before a wheel or a file goes into it', atSameEnd: true }],
    replaces: [{ job: 'dovetail.file-flanks', on: ['dovetail'] }],
    hours: { least: 4, likely: 6, most: 8 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'machine shop', price: { least: 200, likely: 400, most: 800 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'dovetail.mend-lip', title: 'Mend or cut back a cracked lip', part: 'dovetail', families: EVERY, stage: 3,
    after: [],
    hours: { least: 6, likely: 12, most: 24 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'specialist or machine shop', price: { least: 400, likely: 900, most: 2000 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'cracked-casting', 'hot-casting'], source: 'common-practice',
  },
  {
    id: 'sow-block.put-back', title: 'Put the sow block back', part: 'sow-block', families: EVERY, stage: 2, end: 'lower',
    after: [],
    hours: { least: 6, likely: 9, most: 12 }, skill: 3, helpers: 0,
    parts: [
      { id: 'sow-block', words: 'sow block, heat-treated steel', quantity: 1, priceEach: { least: 300, likely: 700, most: 1400 }, source: 'price-guess', leadDays: { least: 14, likely: 30, most: 90 } },
    ],
    cautions: ['isolate', 'block-ram', 'drift'], source: 'page-seat',
  },
  {
    id: 'sow-block.re-true', title: 'True and re-key the sow block', part: 'sow-block', families: EVERY, stage: 2, end: 'lower',
    after: [],
    hours: { least: 4, likely: 7, most: 12 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'machine shop', price: { least: 150, likely: 350, most: 700 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'drift'], source: 'common-practice',
  },
  {
    id: 'keys.draw', title: 'Draw a stuck key', part: 'key-removal', families: EVERY, stage: 2,
    after: [],
    hours: { least: 0.3, likely: 3, most: 16 }, skill: 2, helpers: 0,
    parts: [
      { id: 'penetrating-oil', words: 'penetrating oil', quantity: 1, priceEach: { least: 8, likely: 12, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'drift', 'eyes'], source: 'page-keys',
  },
  {
    id: 'keys.dry', title: 'Dry the dovetails and keys', part: 'keys', families: EVERY, stage: 12,
    after: [
      { job: 'keys.draw', because: 'a stuck key has to come out first', atSameEnd: true },
      { job: 'dies.grind-pair', because: 'the dies are drawn once: ground or dressed while they are out, and washed of what grinding leaves', onlyInOrder: true },
      { job: 'dies.dress', because: 'the dies are drawn once: ground or dressed while they are out, and washed of what grinding leaves', onlyInOrder: true },
    ],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'dry-dovetail', 'drift', 'solvent'], source: 'page-keys',
  },
  {
    id: 'keys.drive', title: 'Drive the keys tight', part: 'keys', families: EVERY, stage: 12,
    after: [
      { job: 'keys.dry', because: 'an oily key drives tight and walks out' },
      { job: 'keys.renew', because: 'the key that stays is driven', onlyInOrder: true },
      ...DIES_BEFORE_KEYS,
    ],
    hours: { least: 0.2, likely: 0.3, most: 0.5 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail'], source: 'common-practice',
  },
  {
    id: 'keys.renew', title: 'Fit a new key', part: 'keys', families: EVERY, stage: 12,
    after: [
      { job: 'dovetail.file-flanks', because: 'a key fitted to a bad flank breaks the lip' },
      { job: 'dovetail.machine-flanks', because: 'a key is fitted to the finished flank' },
      { job: 'seat.fit-filler-plate', because: 'the plate lifts the die and changes the key' },
      { job: 'keys.dry', because: 'a new key goes into a dry dovetail', onlyInOrder: true },
      ...DIES_BEFORE_KEYS,
    ],
    replaces: [{ job: 'keys.drive', on: ['keys'] }],
    hours: { least: 1, likely: 1.5, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'key-steel', words: 'key steel', quantity: 1, unit: 'ft', priceEach: { least: 6, likely: 12, most: 25 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail'], source: 'page-keys',
  },
  {
    id: 'dies.dress', title: 'Dress the die faces', part: 'upper-die', families: EVERY, stage: 12,
    after: [
      { job: 'seat.fit-filler-plate', because: 'dies are ground parallel on a true seat' },
      { job: 'seat.file', because: 'dies are ground parallel on a true seat' },
      { job: 'keys.draw', because: 'the dies come out to be dressed', onlyInOrder: true },
      { job: 'dies.grind-pair', because: 'edges are rounded on the face that stays', onlyInOrder: true },
    ],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'abrasive-discs', words: 'abrasive discs', quantity: 2, priceEach: { least: 3, likely: 5, most: 8 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'eyes', 'drift'], source: 'page-dies',
  },
  {
    id: 'dies.grind-pair', title: 'Surface-grind the dies as a pair', part: 'upper-die', families: EVERY, stage: 12,
    after: [
      { job: 'seat.fit-filler-plate', because: 'dies are ground parallel on a true seat' },
      { job: 'seat.mill', because: 'dies are ground parallel on a true seat' },
      { job: 'ways.true', because: 'a taper ground into the dies hides ways that are out' },
      { job: 'keys.draw', because: 'the dies come out to be ground' },
      { job: 'dies.new-upper', because: 'the pair is ground with the new die in it', onlyInOrder: true },
      { job: 'dies.new-lower', because: 'the pair is ground with the new die in it', onlyInOrder: true },
      { job: 'dies.temper', because: 'heat moves a die: it is ground afterwards', onlyInOrder: true },
    ],
    closedBy: ['keys.renew', 'keys.drive'],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'surface grinding, pair', price: { least: 60, likely: 150, most: 300 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'drift'], source: 'page-dies',
  },
  {
    id: 'dies.new-upper', title: 'Make or buy a new upper die', part: 'upper-die', families: EVERY, stage: 12, end: 'upper',
    after: [
      { job: 'seat.fit-filler-plate', because: 'die heights are chosen with the seat made good' },
      ...SEAT_BEFORE_DIE,
      { job: 'rod.make-room', because: 'with the rod as it stands the dies would meet before the bottom, the first time it is barred over' },
    ],
    replaces: [{ job: 'dies.dress', on: ['upper-die'] }, { job: 'dies.temper', on: ['upper-die'] }],
    closedBy: ['dies.grind-pair', 'keys.renew', 'keys.drive', 'rod.set-gap'],
    hours: { least: 4, likely: 6, most: 10 }, skill: 3, helpers: 0,
    parts: [
      { id: 'upper-die-blank', words: 'die, half of a pair', quantity: 1, priceEach: { least: 125, likely: 200, most: 300 }, source: 'price-guess', leadDays: { least: 14, likely: 28, most: 60 } },
    ],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail'], source: 'page-dies',
  },
  {
    id: 'dies.new-lower', title: 'Make or buy a new lower die', part: 'lower-die', families: EVERY, stage: 12, end: 'lower',
    after: [
      { job: 'seat.fit-filler-plate', because: 'the seat wants its plate before a new lower die is made, or the new die sinks as the old one did' },
      { job: 'seat.mill', because: 'the die is made to the finished seat' },
      ...SEAT_BEFORE_DIE,
      { job: 'rod.make-room', because: 'with the rod as it stands the dies would meet before the bottom, the first time it is barred over' },
    ],
    replaces: [{ job: 'dies.dress', on: ['lower-die'] }],
    closedBy: ['dies.grind-pair', 'keys.renew', 'keys.drive', 'rod.set-gap'],
    hours: { least: 4, likely: 6, most: 10 }, skill: 3, helpers: 0,
    parts: [
      { id: 'lower-die-blank', words: 'die, half of a pair', quantity: 1, priceEach: { least: 125, likely: 200, most: 300 }, source: 'price-guess', leadDays: { least: 14, likely: 28, most: 60 } },
    ],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail'], source: 'page-dies',
  },
  {
    id: 'dies.temper', title: 'Soften a die that is too hard', part: 'upper-die', families: EVERY, stage: 12,
    after: [],
    hours: { least: 2, likely: 3, most: 5 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'heat treatment, pair', price: { least: 60, likely: 120, most: 250 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'eyes'], source: 'page-dies',
  },
];
