import { EVERY } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for shaft, bearings, clutch, treadle and oil. */
export const SHAFT_AND_CLUTCH_JOBS: readonly Job[] = [
  {
    id: 'shaft.turn-true', title: 'Turn the shaft true', part: 'main-shaft', families: EVERY, stage: 5,
    after: [],
    hours: { least: 6, likely: 9, most: 14 }, skill: 3, helpers: 1,
    parts: [],
    outside: { words: 'turning', price: { least: 120, likely: 250, most: 500 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'top-heavy', 'pinch'], source: 'page-bearings',
  },
  {
    id: 'shaft.renew', title: 'Make a new main shaft', part: 'main-shaft', families: EVERY, stage: 5,
    after: [],
    replaces: [{ job: 'shaft.turn-true', on: ['main-shaft'] }],
    hours: { least: 8, likely: 11, most: 14 }, skill: 3, helpers: 1,
    parts: [
      { id: 'shaft-steel', words: 'shaft steel, turned and ground', quantity: 1, priceEach: { least: 80, likely: 160, most: 300 }, source: 'price-guess' },
    ],
    outside: { words: 'turning and keyways', price: { least: 200, likely: 400, most: 800 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'top-heavy', 'pinch'], source: 'page-bearings',
  },
  {
    id: 'shaft.refit-keys', title: 'Refit the tapered keys of crank plate and pulley', part: 'main-shaft', families: EVERY, stage: 5,
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 3, helpers: 0,
    parts: [
      { id: 'taper-keys', words: 'taper keys', quantity: 2, priceEach: { least: 8, likely: 15, most: 30 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'pinch', 'drift'], source: 'page-bearings',
  },
  {
    id: 'pulley.renew', title: 'Replace the cracked pulley', part: 'pulley', families: EVERY, stage: 5,
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 3, helpers: 1,
    parts: [
      { id: 'pulley', words: 'flat-belt pulley', quantity: 1, priceEach: { least: 120, likely: 300, most: 700 }, source: 'price-guess', leadDays: { least: 7, likely: 30, most: 90 } },
    ],
    cautions: ['isolate', 'pinch', 'cracked-casting'], source: 'common-practice',
  },
  {
    id: 'bearings.clean', title: 'Clean and oil a bearing', part: 'main-bearings', families: EVERY, stage: 6,
    after: [],
    hours: { least: 1, likely: 1.5, most: 3 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'babbitt-lead', 'solvent'], source: 'common-practice',
  },
  {
    id: 'bearings.take-out-shims', title: 'Take shims out of the caps', part: 'bearing-caps', families: EVERY, stage: 6,
    after: [
      { job: 'bearings.clean', because: 'grit under the shaft reads as fit' },
      { job: 'shaft.turn-true', because: 'shims cannot fit a shaft that is out of round' },
      { job: 'bearings.scrape', because: 'scraping lets the shaft down, and changes what the shims have set', onlyInOrder: true },
    ],
    hours: { least: 0.5, likely: 0.7, most: 1 }, skill: 2, helpers: 0,
    parts: [
      { id: 'cap-shims', words: 'shim stock', quantity: 1, priceEach: { least: 10, likely: 20, most: 40 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-bearings',
  },
  {
    id: 'bearings.even-shims', title: 'Make the shims even', part: 'bearing-caps', families: EVERY, stage: 6,
    after: [
      { job: 'bearings.scrape', because: 'scraping lets the shaft down, and changes what the shims have set', onlyInOrder: true },
    ],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 2, helpers: 0,
    parts: [
      { id: 'cap-shims', words: 'shim stock', quantity: 1, priceEach: { least: 10, likely: 20, most: 40 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-bearings',
  },
  {
    id: 'bearings.scrape', title: 'Scrape the bearings to the shaft', part: 'main-bearings', families: EVERY, stage: 6,
    after: [
      { job: 'bearings.clean', because: 'blue shows contact only on clean metal' },
      { job: 'shaft.turn-true', because: 'a bearing is scraped to a round shaft' },
      { job: 'bearings.pour', because: 'a new pour is scraped after it has cooled' },
    ],
    hours: { least: 2, likely: 3, most: 4 }, skill: 3, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'babbitt-lead'], source: 'page-bearings',
  },
  {
    id: 'bearings.pour', title: 'Pour the main bearings anew', part: 'main-bearings', families: EVERY, stage: 6,
    after: [
      { job: 'base.level', because: 'bearings are poured to the machine as it stands' },
      { job: 'frame.stitch', because: 'never pour before the frame is mended: heat moves castings' },
      { job: 'ways.true', because: 'the shaft is set square to the ways' },
      { job: 'shaft.turn-true', because: 'bearings are made to the finished shaft' },
      { job: 'shaft.renew', because: 'bearings are made to the finished shaft' },
    ],
    replaces: [{ job: 'bearings.take-out-shims', on: ['main-bearings', 'bearing-caps'] }, { job: 'bearings.even-shims', on: ['main-bearings', 'bearing-caps'] }, { job: 'bearings.scrape', on: ['main-bearings', 'bearing-caps', 'pouring'] }, { job: 'bearings.clean', on: ['main-bearings'] }],
    mendsFirst: ['shaft.turn-true'],
    hours: { least: 8, likely: 12, most: 16 }, skill: 4, helpers: 1,
    parts: [
      { id: 'babbitt', words: 'babbitt', quantity: 12, unit: 'lb', priceEach: { least: 10, likely: 12, most: 18 }, source: 'page-prices' },
      { id: 'dam-putty', words: 'dam putty and lamp-black', quantity: 1, priceEach: { least: 15, likely: 25, most: 40 }, source: 'price-guess' },
      { id: 'cap-shims', words: 'shim stock', quantity: 1, priceEach: { least: 10, likely: 20, most: 40 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'molten-metal', 'babbitt-lead', 'two-people'], source: 'page-bearings',
  },
  {
    id: 'caps.renew-bolts', title: 'Renew and tighten the cap bolts', part: 'bearing-caps', families: EVERY, stage: 6,
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'cap-bolts', words: 'cap bolts and nuts, set', quantity: 1, unit: 'set', priceEach: { least: 15, likely: 35, most: 70 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'common-practice',
  },
  {
    id: 'caps.mend-lug', title: 'Have the cracked cap or lug mended', part: 'bearing-caps', families: EVERY, stage: 3,
    after: [],
    hours: { least: 4, likely: 8, most: 16 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'casting repair or a new cap', price: { least: 200, likely: 500, most: 1200 }, source: 'price-guess' },
    cautions: ['isolate', 'block-ram', 'cracked-casting', 'hot-casting'], source: 'page-frame',
  },
  {
    id: 'shaft.set-end-float', title: 'Set the end float', part: 'main-shaft', families: EVERY, stage: 6,
    after: [
      { job: 'bearings.pour', because: 'the poured ends set the float' },
    ],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 0,
    parts: [
      { id: 'thrust-washers', words: 'bronze thrust washers', quantity: 2, priceEach: { least: 8, likely: 15, most: 30 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-bearings',
  },
  {
    id: 'clutch-pulley.bush', title: 'Renew the clutch pulley’s bushing', part: 'clutch-pulley', families: EVERY, stage: 7,
    after: [
      { job: 'shaft.turn-true', because: 'the bush is made to the finished shaft' },
      { job: 'bearings.pour', because: 'the pulley is bushed on a shaft that runs true' },
    ],
    otherwise: [],
    hours: { least: 3, likely: 5, most: 8 }, skill: 3, helpers: 1,
    parts: [
      { id: 'pulley-bush', words: 'bronze sleeve, or babbitt', quantity: 1, priceEach: { least: 40, likely: 110, most: 220 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'babbitt-lead', 'molten-metal'], source: 'page-clutch',
  },
  {
    id: 'clutch-pulley.ease', title: 'Ease a tight clutch pulley', part: 'clutch-pulley', families: EVERY, stage: 7,
    after: [],
    otherwise: ['idler.set'],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'babbitt-lead'], source: 'common-practice',
  },
  {
    id: 'clutch.wash', title: 'Wash the clutch and oil it anew', part: 'clutch-facing', families: EVERY, stage: 8,
    after: [],
    otherwise: ['belt.dress', 'tyre.renew'],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'solvent', 'asbestos'], source: 'page-clutch',
  },
  {
    id: 'clutch.reline', title: 'Reline the clutch', part: 'clutch-facing', families: EVERY, stage: 8,
    after: [
      { job: 'clutch-pulley.bush', because: 'never reline before the pulley’s bush is right: it will grab again' },
      { job: 'shaft.set-end-float', because: 'never reline before the end float is right: it will grab again' },
      { job: 'shipper.free', because: 'a binding yoke wears a new facing on one side' },
    ],
    replaces: [{ job: 'clutch.wash', on: ['clutch-facing'] }],
    otherwise: ['belt.renew', 'tyre.renew'],
    hours: { least: 4, likely: 6, most: 8 }, skill: 3, helpers: 1,
    parts: [
      { id: 'facing-leather', words: 'leather facings with rivets, set', quantity: 1, unit: 'set', priceEach: { least: 15, likely: 40, most: 90 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'asbestos'], source: 'page-clutch',
  },
  {
    id: 'clutch.adjust', title: 'Adjust the clutch', part: 'clutch-facing', families: EVERY, stage: 13,
    after: [
      { job: 'clutch.reline', because: 'a new facing is set last' },
      { job: 'clutch.wash', because: 'an oily or dirty facing cannot be set' },
      { job: 'keys.dry', because: 'the clutch is tried running, and nothing runs with oil in a dovetail' },
      { job: 'keys.drive', because: 'the clutch is tried running, and nothing runs with a loose key' },
      { job: 'keys.renew', because: 'the clutch is tried running, and nothing runs with a loose key' },
      { job: 'return-spring.renew', because: 'a lazy return looks like a tight clutch' },
    ],
    otherwise: ['idler.set', 'tyre.renew'],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram'], source: 'page-clutch',
  },
  {
    id: 'clutch.test-for-asbestos', title: 'Have the facing tested', part: 'clutch-facing', families: EVERY, stage: 0,
    after: [],
    otherwise: [],
    hours: { least: 0.2, likely: 0.3, most: 0.5 }, skill: 1, helpers: 0,
    parts: [],
    outside: { words: 'laboratory, one sample', price: { least: 40, likely: 60, most: 120 }, source: 'price-guess' },
    mayLeadTo: 'clutch.take-off-asbestos',
    cautions: ['asbestos'], source: 'common-practice',
  },
  {
    id: 'clutch.take-off-asbestos', title: 'Have the asbestos facing taken off and a new one fitted', part: 'clutch-facing', families: EVERY, stage: 0,
    after: [
      { job: 'clutch.test-for-asbestos', because: 'only a laboratory can tell whether it is' },
    ],
    replaces: [{ job: 'clutch.wash', on: ['clutch-facing'] }],
    otherwise: [],
    hours: { least: 4, likely: 6, most: 8 }, skill: 4, helpers: 0,
    parts: [
      { id: 'facing-leather', words: 'leather facings with rivets, set', quantity: 1, unit: 'set', priceEach: { least: 15, likely: 40, most: 90 }, source: 'price-guess' },
    ],
    outside: { words: 'licensed removal and disposal of a small lot', price: { least: 250, likely: 600, most: 1_800 }, source: 'from-memory' },
    cautions: ['isolate', 'block-ram', 'asbestos'], source: 'common-practice',
  },
  {
    id: 'shipper.free', title: 'Free the yoke and shipper', part: 'shipper', families: EVERY, stage: 8,
    after: [],
    otherwise: ['idler.set'],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 0,
    parts: [
      { id: 'yoke-pins', words: 'pins and bushes', quantity: 1, priceEach: { least: 10, likely: 25, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-clutch',
  },
  {
    id: 'shipper.pour-saddle', title: 'Renew the saddle metal', part: 'shipper', families: EVERY, stage: 8,
    after: [
      { job: 'shipper.free', because: 'the yoke must stand straight before its saddle is fitted' },
    ],
    otherwise: [],
    hours: { least: 2, likely: 3, most: 4 }, skill: 3, helpers: 0,
    parts: [
      { id: 'babbitt', words: 'babbitt', quantity: 1, unit: 'lb', priceEach: { least: 10, likely: 12, most: 18 }, source: 'page-prices' },
    ],
    cautions: ['isolate', 'block-ram', 'molten-metal', 'babbitt-lead'], source: 'page-clutch',
  },
  {
    id: 'return-spring.renew', title: 'Renew the return spring', part: 'return-spring', families: EVERY, stage: 8,
    after: [
      { job: 'shipper.free', because: 'a bound yoke makes a good spring look weak' },
    ],
    hours: { least: 0.2, likely: 0.3, most: 0.7 }, skill: 1, helpers: 0,
    parts: [
      { id: 'return-spring', words: 'extension spring', quantity: 1, priceEach: { least: 4, likely: 10, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-clutch',
  },
  {
    id: 'treadle.bush', title: 'Bush the treadle pivot', part: 'treadle', families: EVERY, stage: 14,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'treadle-bushes', words: 'bushes and bolt', quantity: 1, priceEach: { least: 10, likely: 20, most: 40 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-clutch',
  },
  {
    id: 'treadle.set', title: 'Set the treadle', part: 'treadle', families: EVERY, stage: 14,
    after: [
      { job: 'treadle.bush', because: 'free play is set on a tight pivot' },
      { job: 'clutch.adjust', because: 'the pedal is set to the finished clutch' },
    ],
    hours: { least: 0.3, likely: 0.5, most: 1 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram'], source: 'page-clutch',
  },
  {
    id: 'treadle.guard', title: 'Guard the treadle', part: 'treadle', families: EVERY, stage: 15,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 1, helpers: 0,
    parts: [
      { id: 'treadle-guard', words: 'flat bar and bolts', quantity: 1, priceEach: { least: 10, likely: 25, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate'], source: 'osha-1910-218',
  },
  {
    id: 'brake.reline', title: 'Reline and set the brake', part: 'brake', families: EVERY, stage: 14,
    after: [
      { job: 'clutch.adjust', because: 'a brake hides a clutch that drags' },
      { job: 'treadle.set', because: 'the brake works off the finished treadle' },
    ],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [
      { id: 'brake-lining', words: 'lining and rivets', quantity: 1, priceEach: { least: 20, likely: 45, most: 90 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'asbestos'], source: 'page-brake',
  },
  {
    id: 'brake.fit', title: 'Fit a brake', part: 'brake', families: EVERY, stage: 14,
    after: [
      { job: 'clutch.adjust', because: 'a brake hides a clutch that drags' },
      { job: 'treadle.set', because: 'the brake works off the finished treadle' },
    ],
    hours: { least: 3, likely: 6, most: 8 }, skill: 3, helpers: 0,
    parts: [
      { id: 'brake-kit', words: 'band, lining, lever and spring', quantity: 1, priceEach: { least: 60, likely: 130, most: 260 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram'], source: 'page-brake',
  },
  {
    id: 'oil-ways.clear', title: 'Clear every oil way', part: 'oil-ways', families: EVERY, stage: 6,
    after: [],
    hours: { least: 0.7, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [
      { id: 'oil-cups', words: 'oil cups or covers', quantity: 6, priceEach: { least: 2, likely: 4, most: 8 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'block-ram', 'solvent'], source: 'page-bearings',
  },
];
