import { BOW, COIL, EVERY, GUIDED, HELVE } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for ram, guide and linkage. */
export const RAM_AND_LINKAGE_JOBS: readonly Job[] = [
  {
    id: 'ram.build-up', title: 'Build up and machine the ram faces', part: 'ram', families: EVERY, stage: 4,
    after: [],
    hours: { least: 3, likely: 6, most: 10 }, skill: 3, helpers: 1,
    parts: [],
    outside: { words: 'machine shop', price: { least: 200, likely: 450, most: 900 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'ram.mend-or-renew', title: 'Have the cracked ram mended or renewed', part: 'ram', families: EVERY, stage: 3,
    after: [],
    hours: { least: 4, likely: 10, most: 20 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'casting repair or a new ram', price: { least: 500, likely: 1200, most: 3000 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'cracked-casting'], source: 'common-practice',
  },
  {
    id: 'guide.mend', title: 'Mend or fabricate the ram guide', part: 'ram-guide', families: GUIDED, stage: 3,
    after: [],
    hours: { least: 10, likely: 14, most: 20 }, skill: 3, helpers: 0,
    parts: [
      { id: 'guide-steel', words: 'heavy angle, plate and bolts', quantity: 1, priceEach: { least: 60, likely: 120, most: 220 }, source: 'price-guess' },
    ],
    outside: { words: 'brazing by a specialist', price: { least: 150, likely: 400, most: 900 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'hot-casting', 'cracked-casting'], source: 'page-guide',
  },
  {
    id: 'guide.shim', title: 'Shim the ram guide', part: 'ram-guide', families: GUIDED, stage: 11,
    after: [
      { job: 'ways.polish', because: 'never tighten the guide before ways and ram are clean: grit then scores both' },
      { job: 'ways.true', because: 'shims cannot mend ways that are out of square' },
      { job: 'ram.build-up', because: 'shims cannot fit a stepped ram' },
    ],
    hours: { least: 1, likely: 1.5, most: 2 }, skill: 2, helpers: 1,
    parts: [
      { id: 'shim-stock', words: 'brass or steel shim stock, assorted', quantity: 1, priceEach: { least: 15, likely: 30, most: 60 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'guide.retain-shims', title: 'Fix the guide shims', part: 'guide-shims', families: GUIDED, stage: 11,
    after: [
      { job: 'guide.shim', because: 'the packs are settled before they are fixed' },
    ],
    hours: { least: 0.5, likely: 1, most: 1.5 }, skill: 2, helpers: 0,
    parts: [
      { id: 'retainer', words: 'strip steel and screws', quantity: 1, priceEach: { least: 5, likely: 10, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-guide',
  },
  {
    id: 'guide.renew-bolts', title: 'Renew the guide bolts', part: 'guide-bolts', families: GUIDED, stage: 11,
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'guide-bolts', words: 'bolts, washers, lock nuts, set', quantity: 1, unit: 'set', priceEach: { least: 10, likely: 25, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'guide.raise-linkage', title: 'Give the linkage room over the guide', part: 'ram-guide', families: GUIDED, stage: 13,
    after: [
      { job: 'seat.fit-filler-plate', because: 'lost height is made good before anything is cut' },
      { job: 'dies.new-upper', because: 'lost height is made good before anything is cut' },
      { job: 'dies.new-lower', because: 'lost height is made good before anything is cut' },
    ],
    hours: { least: 1, likely: 2, most: 4 }, skill: 3, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'links.renew', title: 'Renew or sleeve the toggle links', part: 'toggle-links', families: COIL, stage: 10,
    after: [],
    hours: { least: 4, likely: 6, most: 8 }, skill: 3, helpers: 0,
    parts: [
      { id: 'link-pair', words: 'links, steel plate, pair', quantity: 1, priceEach: { least: 60, likely: 150, most: 300 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'arms.renew', title: 'Renew the toggle arms as a pair', part: 'toggle-arms', families: COIL, stage: 10,
    after: [],
    hours: { least: 6, likely: 10, most: 16 }, skill: 3, helpers: 0,
    parts: [
      { id: 'arm-pair', words: 'toggle arms, pair', quantity: 1, priceEach: { least: 200, likely: 450, most: 900 }, source: 'price-guess', leadDays: { least: 14, likely: 40, most: 120 } },
    ],
    outside: { words: 'boring', price: { least: 100, likely: 200, most: 400 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'spring-unload', 'cracked-casting'], source: 'common-practice',
  },
  {
    id: 'pins.renew', title: 'Renew pins and bushings of the linkage', part: 'toggle-pins', families: COIL, stage: 10,
    after: [
      { job: 'links.renew', because: 'bushes are pressed into the links that stay' },
      { job: 'arms.renew', because: 'bushes are pressed into the arms that stay' },
    ],
    replaces: [{ job: 'pins.oil', on: ['toggle-pins'] }, { job: 'pins.hold', on: ['toggle-pins'] }],
    hours: { least: 4, likely: 7, most: 10 }, skill: 3, helpers: 0,
    parts: [
      { id: 'pin-set', words: 'pin and bush set', quantity: 1, unit: 'set', priceEach: { least: 200, likely: 350, most: 600 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'pins.hold', title: 'Keep the pins from walking out', part: 'toggle-pins', families: COIL, stage: 10,
    after: [],
    hours: { least: 0.3, likely: 0.7, most: 1.5 }, skill: 1, helpers: 0,
    parts: [
      { id: 'split-pins', words: 'split pins and collars', quantity: 1, priceEach: { least: 5, likely: 10, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'pins.oil', title: 'Draw, clean and oil the pins', part: 'toggle-pins', families: COIL, stage: 10,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'spring.renew', title: 'Renew the coil spring', part: 'coil-spring', families: COIL, stage: 10,
    after: [
      { job: 'pins.renew', because: 'a new spring on slack joints cannot be set' },
      { job: 'spring-bolt.renew', because: 'the bolt comes out with the spring' },
    ],
    closedBy: ['spring.set-tension'],
    hours: { least: 1, likely: 1.5, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'coil-spring', words: 'coil spring to order', quantity: 1, priceEach: { least: 35, likely: 60, most: 120 }, source: 'price-guess', leadDays: { least: 7, likely: 21, most: 45 } },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'page-linkage',
  },
  {
    id: 'spring-bolt.renew', title: 'Renew the spring bolt', part: 'spring-bolt', families: COIL, stage: 10,
    after: [],
    replaces: [{ job: 'spring.lock-nut', on: ['spring-bolt'] }],
    closedBy: ['spring.set-tension'],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'spring-bolt', words: 'bolt, nuts and washers', quantity: 1, priceEach: { least: 15, likely: 40, most: 80 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'common-practice',
  },
  {
    id: 'spring.lock-nut', title: 'Lock the spring nut', part: 'spring-bolt', families: COIL, stage: 13,
    after: [],
    hours: { least: 0.1, likely: 0.2, most: 0.4 }, skill: 1, helpers: 0,
    parts: [
      { id: 'lock-nut', words: 'lock nut', quantity: 1, priceEach: { least: 1, likely: 3, most: 6 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'stand-aside'], source: 'common-practice',
  },
  {
    id: 'crosshead.bush', title: 'Bush the crosshead', part: 'crosshead', families: COIL, stage: 9,
    after: [],
    hours: { least: 3, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'crosshead-bush', words: 'bush and pin', quantity: 1, priceEach: { least: 40, likely: 90, most: 180 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'crosshead.renew', title: 'Renew the cracked crosshead', part: 'crosshead', families: COIL, stage: 9,
    after: [],
    hours: { least: 4, likely: 8, most: 16 }, skill: 4, helpers: 0,
    parts: [
      { id: 'crosshead', words: 'crosshead, made or found', quantity: 1, priceEach: { least: 200, likely: 450, most: 1000 }, source: 'price-guess', leadDays: { least: 14, likely: 45, most: 120 } },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'cracked-casting'], source: 'common-practice',
  },
  {
    id: 'rod.bush', title: 'Bush the rod’s big end', part: 'connecting-rod', families: EVERY, stage: 9,
    after: [
      { job: 'crank.pin-bush', because: 'the bush is bored to the finished pin' },
    ],
    hours: { least: 2, likely: 3, most: 4 }, skill: 3, helpers: 0,
    parts: [
      { id: 'rod-bush', words: 'bronze bush', quantity: 1, priceEach: { least: 25, likely: 60, most: 120 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'rod.renew', title: 'Make a new rod', part: 'connecting-rod', families: EVERY, stage: 9,
    after: [],
    replaces: [{ job: 'rod.bush', on: ['connecting-rod'] }],
    closedBy: ['rod.set-gap', 'rod.lock-nuts'],
    hours: { least: 2, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'rod-stock', words: 'rod, ends and nuts', quantity: 1, priceEach: { least: 60, likely: 140, most: 300 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'rod.lock-nuts', title: 'Fit and tighten the rod’s lock nuts', part: 'connecting-rod', families: EVERY, stage: 13,
    after: [],
    hours: { least: 0.2, likely: 0.3, most: 0.5 }, skill: 1, helpers: 0,
    parts: [
      { id: 'rod-lock-nuts', words: 'lock nuts, right and left hand', quantity: 2, priceEach: { least: 3, likely: 8, most: 15 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'crank.pin-bush', title: 'Renew or true the crank pin', part: 'crank', families: EVERY, stage: 9,
    after: [
      { job: 'shaft.turn-true', because: 'the pin is set parallel to the finished shaft' },
      { job: 'bearings.pour', because: 'the pin is set parallel to the finished shaft' },
    ],
    hours: { least: 3, likely: 5, most: 8 }, skill: 3, helpers: 0,
    parts: [
      { id: 'crank-pin', words: 'pin and bush', quantity: 1, priceEach: { least: 50, likely: 120, most: 250 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'crank.renew-plate', title: 'Have the cracked crank plate renewed', part: 'crank', families: EVERY, stage: 5,
    after: [],
    hours: { least: 6, likely: 10, most: 16 }, skill: 4, helpers: 0,
    parts: [
      { id: 'crank-plate', words: 'crank plate', quantity: 1, priceEach: { least: 250, likely: 600, most: 1200 }, source: 'price-guess', leadDays: { least: 14, likely: 45, most: 120 } },
    ],
    cautions: ['isolate', 'block-ram', 'cracked-casting', 'pinch'], source: 'common-practice',
  },
  {
    id: 'bow.replace-leaf', title: 'Replace the broken leaf', part: 'bow-spring', families: BOW, stage: 10,
    after: [],
    closedBy: ['bow.tighten-clip', 'bow.renew-straps'],
    hours: { least: 3, likely: 4, most: 6 }, skill: 3, helpers: 1,
    parts: [
      { id: 'spring-leaf', words: 'leaf, spring steel', quantity: 1, priceEach: { least: 40, likely: 90, most: 200 }, source: 'price-guess', leadDays: { least: 7, likely: 21, most: 60 } },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'page-other-families',
  },
  {
    id: 'bow.tighten-clip', title: 'Tighten or renew the clip', part: 'bow-spring', families: BOW, stage: 10,
    after: [
      { job: 'bow.replace-leaf', because: 'the pack is complete before it is clipped' },
      { job: 'bow.bush-eyes', because: 'eyes and clip pivot are reamed and bushed before the pack is closed', onlyInOrder: true },
    ],
    hours: { least: 1, likely: 1.5, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'clip-bolts', words: 'clip and bolts', quantity: 1, priceEach: { least: 15, likely: 35, most: 70 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'common-practice',
  },
  {
    id: 'bow.renew-straps', title: 'Renew the straps to the ram', part: 'bow-spring', families: BOW, stage: 10,
    after: [
      { job: 'bow.bush-eyes', because: 'the holes of the straps are made to the new pins', onlyInOrder: true },
    ],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 0,
    parts: [
      { id: 'strap-belting', words: 'belting or strap steel, set', quantity: 1, unit: 'set', priceEach: { least: 30, likely: 70, most: 150 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'common-practice',
  },
  {
    id: 'bow.bush-eyes', title: 'Bush the eyes and the clip pivot', part: 'bow-spring', families: BOW, stage: 10,
    after: [
      { job: 'bow.replace-leaf', because: 'the eyes are bushed in the leaf that stays' },
    ],
    hours: { least: 3, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'eye-bushes', words: 'bushes and pins, set', quantity: 1, unit: 'set', priceEach: { least: 60, likely: 130, most: 260 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'bow.renew-spring', title: 'Order a new bow', part: 'bow-spring', families: BOW, stage: 10,
    after: [],
    replaces: [{ job: 'bow.replace-leaf', on: ['bow-spring'] }, { job: 'bow.tighten-clip', on: ['bow-spring'] }],
    closedBy: ['bow.renew-straps'],
    hours: { least: 3, likely: 5, most: 6 }, skill: 3, helpers: 1,
    parts: [
      { id: 'bow-pack', words: 'leaf pack to order', quantity: 1, priceEach: { least: 250, likely: 500, most: 1000 }, source: 'price-guess', leadDays: { least: 14, likely: 40, most: 90 } },
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], source: 'common-practice',
  },
  {
    id: 'helve.renew', title: 'Renew the helve', part: 'helve', families: HELVE, stage: 10,
    after: [],
    hours: { least: 6, likely: 8, most: 12 }, skill: 3, helpers: 1,
    parts: [
      { id: 'helve-beam', words: 'seasoned beam', quantity: 1, priceEach: { least: 120, likely: 280, most: 600 }, source: 'price-guess', leadDays: { least: 7, likely: 30, most: 90 } },
    ],
    cautions: ['isolate', 'block-ram', 'beam-propped', 'top-heavy'], source: 'page-other-families',
  },
  {
    id: 'helve.renew-bolts', title: 'Renew the head and clamp bolts', part: 'helve', families: HELVE, stage: 10,
    after: [
      { job: 'helve.renew', because: 'bolts are fitted to the beam that stays' },
    ],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'head-bolts', words: 'bolts and lock nuts, set', quantity: 1, unit: 'set', priceEach: { least: 25, likely: 60, most: 120 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'beam-propped'], source: 'page-other-families',
  },
  {
    id: 'helve.renew-cushions', title: 'Renew the cushions', part: 'helve', families: HELVE, stage: 10,
    after: [
      { job: 'helve.free-screws', because: 'new rubber goes in when the screws that set the height turn', onlyInOrder: true },
    ],
    hours: { least: 1, likely: 1.5, most: 3 }, skill: 1, helpers: 0,
    parts: [
      { id: 'cushions', words: 'rubber cushions, set', quantity: 1, unit: 'set', priceEach: { least: 30, likely: 80, most: 180 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'beam-propped'], source: 'page-other-families',
  },
  {
    id: 'helve.bush-pivot', title: 'Bush the pivot', part: 'helve', families: HELVE, stage: 10,
    after: [
      { job: 'helve.free-screws', because: 'level side to side is set with the height screws, and stuck ones set nothing' },
    ],
    hours: { least: 3, likely: 5, most: 8 }, skill: 3, helpers: 1,
    parts: [
      { id: 'pivot-bushes', words: 'bushes and pins, set', quantity: 1, unit: 'set', priceEach: { least: 80, likely: 180, most: 350 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'beam-propped', 'top-heavy'], source: 'common-practice',
  },
  {
    id: 'helve.free-screws', title: 'Free the height screws', part: 'helve', families: HELVE, stage: 10,
    after: [],
    hours: { least: 0.5, likely: 1.5, most: 4 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram'], source: 'page-other-families',
  },
  {
    id: 'rod.make-room', title: 'Move the ram up, clear of the new stack', part: 'connecting-rod', families: EVERY, stage: 2,
    after: [],
    closedBy: ['rod.set-gap'],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'dies-meet'], source: 'common-practice',
  },
  {
    id: 'rod.set-gap', title: 'Set the gap with the rod', part: 'connecting-rod', families: EVERY, stage: 13,
    after: [
      { job: 'spring.renew', because: 'never adjust the rod to cure a weak blow before the spring is right' },
      { job: 'drive.set-speed', because: 'never adjust the rod to cure a weak blow before the speed is right' },
      { job: 'seat.fit-filler-plate', because: 'never adjust the rod to cure a weak blow before the die heights are right' },
      { job: 'dies.new-upper', because: 'never adjust the rod to cure a weak blow before the die heights are right' },
      { job: 'dies.new-lower', because: 'never adjust the rod to cure a weak blow before the die heights are right' },
      { job: 'rod.renew', because: 'the gap is set with the rod that stays' },
      { job: 'rod.make-room', because: 'the ram is moved roughly first, and the gap is set when the dies are in' },
    ],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'no-cold-blow'], source: 'common-practice',
  },
  {
    id: 'spring.set-tension', title: 'Set the spring', part: 'coil-spring', families: COIL, stage: 13,
    after: [
      { job: 'rod.set-gap', because: 'the gap changes where the arms stand' },
      { job: 'spring.renew', because: 'the new spring is set, not the one that goes' },
      { job: 'bolts.tighten', because: 'a hammer that is loose on its bed double-beats whatever the spring' },
    ],
    hours: { least: 0.3, likely: 0.7, most: 1.5 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'stand-aside'], source: 'page-linkage',
  },
];
