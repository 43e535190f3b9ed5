import { EVERY, GUIDED } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for castings and ways. */
export const CASTINGS_JOBS: readonly Job[] = [
  {
    id: 'base.level', title: 'Level the machine', part: 'base', families: EVERY, stage: 1,
    words: 'Slack the bolts, jack each corner, shim with steel until level both ways on a machined face, then tighten evenly.',
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
    words: 'Clean under the flange, level on screws, pour non-shrink grout under the whole foot and let it cure.',
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
    words: 'Drill the ends of the crack, stitch or braze the ear, or carry the corner on a bolted steel clamp plate.',
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'clamp-plate', words: 'steel plate and bolts', quantity: 1, priceEach: { least: 20, likely: 40, most: 80 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'hot-casting'], source: 'page-frame',
  },
  {
    id: 'foundation.block', title: 'Cast a foundation block', part: 'foundation', families: EVERY, stage: 1,
    words: 'Cut the slab, dig to firm ground, rebar grid, anchor sleeves, 4,000 psi concrete, a soft joint all round; let it cure before the hammer is set.',
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
    words: 'Saw round the base, clear the slot and fill it with soft joint filler and sand.',
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
    words: 'Tighten evenly in turn. Once it may run, tighten again after the first hour and after ten, locked off each time.',
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
    words: 'Set through bolts or resin anchors of 5/8 to 3/4 in with large washers and lock nuts.',
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
    words: 'Clean the doubtful place to bare metal, apply dye, wipe, apply developer, wait, and photograph every line with a rule beside it. Then enter what it showed: the finding stands until somebody does.',
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'dye-kit', words: 'dye penetrant kit', quantity: 1, priceEach: { least: 30, likely: 45, most: 80 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'cracked-casting', 'eyes'], source: 'common-practice',
  },
  {
    id: 'frame.stitch', title: 'Stitch the cracked frame', part: 'frame', families: EVERY, stage: 3,
    words: 'A specialist drills along the crack and locks it with cast plugs and bars, without heat, then tests it with dye.',
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
    words: 'A specialist looks at the old plate, braze or weld with dye and says in writing what it will carry.',
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
    words: 'Scrape and wire-brush the paint off what it hides, and off nothing else; photograph it; repaint around it.',
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['eyes', 'asbestos'], source: 'common-practice',
  },
  {
    id: 'ways.polish', title: 'Clean and stone the ways', part: 'ways', families: GUIDED, stage: 4,
    words: 'Take the ram out, wash off old oil, stone burrs and rust flat, wipe and oil.',
    after: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 1,
    parts: [],
    cautions: ['isolate', 'block-ram', 'solvent'], source: 'common-practice',
  },
  {
    id: 'ways.true', title: 'True the ways to the seat', part: 'ways', families: GUIDED, stage: 4,
    words: 'Scrape or machine the ways square to the finished seat floor, or fit a brass gib cut to taper.',
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
    words: 'Lift or jack the anvil, clean its bed, shim or grout it solid and wedge or bolt it.',
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
    words: 'Bolt or weld solid steel to the anvil or set it on a heavier base plate, in hard contact.',
    after: [],
    hours: { least: 4, likely: 8, most: 16 }, skill: 3, helpers: 1,
    parts: [
      { id: 'steel-block', words: 'steel plate or billet, per 100 lb', quantity: 2, priceEach: { least: 60, likely: 90, most: 140 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'top-heavy'], source: 'common-practice',
  },
];
