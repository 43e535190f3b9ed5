import { EVERY, GUIDED } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for castings and ways. */
export const CASTINGS_JOBS: readonly Job[] = [
  {
    id: 'base.level', title: 'Level the machine', part: 'base', families: EVERY, stage: 1,
    after: [
      { job: 'foundation.block', because: 'the machine is levelled on the ground that it will stay on' },
    ],
    hours: { least: 0.7, likely: 1, most: 2 }, skill: 1, helpers: 1,
    parts: [
      { id: 'base-shims', words: 'steel shims, assorted', quantity: 1, priceEach: { least: 5, likely: 15, most: 30 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'page-bearings',
  },
  {
    id: 'base.grout', title: 'Bed the base all round', part: 'base', families: EVERY, stage: 1,
    after: [
      { job: 'base.level', because: 'grout keeps whatever level it is poured at' },
    ],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 1,
    parts: [
      { id: 'grout', words: 'non-shrink grout, bag', quantity: 2, priceEach: { least: 20, likely: 30, most: 45 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'common-practice',
  },
  {
    id: 'base.mend-ear', title: 'Mend a cracked bolt ear of the base', part: 'base', families: EVERY, stage: 3,
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'clamp-plate', words: 'steel plate and bolts', quantity: 1, priceEach: { least: 20, likely: 40, most: 80 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'hot-casting'], source: 'page-frame',
  },
  {
    id: 'foundation.block', title: 'Cast a foundation block', part: 'foundation', families: EVERY, stage: 1,
    after: [],
    hours: { least: 8, likely: 14, most: 20 }, skill: 2, helpers: 2,
    parts: [
      { id: 'concrete', words: 'concrete, cubic yard', quantity: 1, priceEach: { least: 140, likely: 180, most: 260 }, source: 'price-guess' },
      { id: 'rebar', words: 'rebar and ties', quantity: 1, priceEach: { least: 40, likely: 80, most: 140 }, source: 'price-guess' },
      { id: 'joint-filler', words: 'soft joint filler, 1/2 in', quantity: 1, priceEach: { least: 20, likely: 35, most: 60 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'page-foundation',
  },
  {
    id: 'foundation.part-from-slab', title: 'Part the block from the slab', part: 'foundation', families: EVERY, stage: 1,
    after: [],
    hours: { least: 3, likely: 5, most: 8 }, skill: 2, helpers: 0,
    parts: [
      { id: 'joint-filler', words: 'soft joint filler, 1/2 in', quantity: 1, priceEach: { least: 20, likely: 35, most: 60 }, source: 'price-guess' },
    ],
    outside: { words: 'concrete sawing', price: { least: 150, likely: 300, most: 600 }, source: 'price-guess' },
    cautions: ['eyes', 'hearing'], source: 'page-foundation',
  },
  {
    id: 'bolts.tighten', title: 'Tighten the hold-down bolts and try again', part: 'hold-down-bolts', families: EVERY, stage: 1,
    after: [
      { job: 'base.level', because: 'a bolt pulled down on a rocking foot bends the casting' },
      { job: 'base.grout', because: 'grout cures before bolts are pulled down' },
      { job: 'bolts.renew', because: 'the bolts that stay are tightened' },
    ],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate'], source: 'page-foundation',
  },
  {
    id: 'bolts.renew', title: 'Renew the hold-down bolts', part: 'hold-down-bolts', families: EVERY, stage: 1,
    after: [
      { job: 'base.level', because: 'a bolt pulled down on a rocking foot bends the casting' },
      { job: 'base.grout', because: 'grout cures before bolts are pulled down' },
      { job: 'foundation.block', because: 'anchors are set in the block that stays' },
    ],
    replaces: [{ job: 'bolts.tighten', on: ['hold-down-bolts'] }],
    hours: { least: 2, likely: 3, most: 4 }, skill: 2, helpers: 0,
    parts: [
      { id: 'anchor-bolts', words: 'anchor bolts with washers and nuts', quantity: 4, priceEach: { least: 8, likely: 15, most: 30 }, source: 'price-guess' },
      { id: 'anchor-resin', words: 'anchor resin, cartridge', quantity: 1, priceEach: { least: 20, likely: 30, most: 45 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'page-foundation',
  },
  {
    id: 'frame.dye-test', title: 'Look for cracks with dye penetrant', part: 'frame', families: EVERY, stage: 1,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'dye-kit', words: 'dye penetrant kit', quantity: 1, priceEach: { least: 30, likely: 45, most: 80 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'cracked-casting', 'eyes'], source: 'common-practice',
  },
  {
    id: 'frame.stitch', title: 'Stitch the cracked frame', part: 'frame', families: EVERY, stage: 3,
    after: [
      { job: 'frame.dye-test', because: 'the whole length of the crack must be known before it is mended' },
    ],
    hours: { least: 8, likely: 16, most: 40 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'casting stitched by a specialist, each crack', price: { least: 500, likely: 1400, most: 3000 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'cracked-casting'], source: 'page-frame',
  },
  {
    id: 'frame.have-repair-judged', title: 'Have an old repair judged', part: 'frame', families: EVERY, stage: 3,
    after: [
      { job: 'frame.dye-test', because: 'the repair is judged with its edges clean' },
    ],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'specialist’s visit', price: { least: 80, likely: 200, most: 400 }, source: 'price-guess' },
    cautions: ['cracked-casting'], source: 'page-frame',
  },
  {
    id: 'nameplate.clear', title: 'Scrape off the paint that hides something', part: 'nameplate', families: EVERY, stage: 1, namesWhatFor: true,
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['eyes', 'asbestos'], source: 'common-practice',
  },
  {
    id: 'ways.polish', title: 'Clean and stone the ways', part: 'ways', families: GUIDED, stage: 4,
    after: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 1,
    parts: [],
    cautions: ['isolate', 'block-ram', 'solvent'], source: 'common-practice',
  },
  {
    id: 'ways.true', title: 'True the ways to the seat', part: 'ways', families: GUIDED, stage: 4,
    after: [
      { job: 'seat.mill', because: 'the seat is the datum from which the ways are squared' },
      { job: 'seat.file', because: 'the seat is the datum from which the ways are squared' },
      { job: 'frame.stitch', because: 'mending a casting moves it' },
    ],
    replaces: [{ job: 'ways.polish', on: ['ways'] }],
    hours: { least: 6, likely: 12, most: 20 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'machine shop or fitter', price: { least: 300, likely: 800, most: 1500 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram'], source: 'page-guide',
  },
  {
    id: 'anvil.bed', title: 'Bed the anvil tight', part: 'anvil', families: EVERY, stage: 1,
    after: [
      { job: 'foundation.block', because: 'the anvil is bedded on the ground that it will stay on' },
    ],
    hours: { least: 3, likely: 6, most: 12 }, skill: 2, helpers: 2,
    parts: [
      { id: 'grout', words: 'non-shrink grout, bag', quantity: 2, priceEach: { least: 20, likely: 30, most: 45 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'common-practice',
  },
  {
    id: 'anvil.add-mass', title: 'Give the anvil more mass', part: 'anvil', families: EVERY, stage: 1,
    after: [],
    hours: { least: 4, likely: 8, most: 16 }, skill: 3, helpers: 1,
    parts: [
      { id: 'steel-block', words: 'steel plate or billet, per 100 lb', quantity: 2, priceEach: { least: 60, likely: 90, most: 140 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'common-practice',
  },
];
