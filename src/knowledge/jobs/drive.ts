import { EVERY } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for drive and electrics. */
export const DRIVE_JOBS: readonly Job[] = [
  {
    id: 'drive.set-speed', title: 'Set the speed with the pulleys', part: 'drive-line', families: EVERY, stage: 13,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 2, helpers: 0,
    parts: [
      { id: 'motor-pulley', words: 'motor pulley', quantity: 1, priceEach: { least: 20, likely: 45, most: 90 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch'], source: 'common-practice',
  },
  {
    id: 'belt.dress', title: 'Clean and dress the belt', part: 'belt', families: EVERY, stage: 15,
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [
      { id: 'belt-dressing', words: 'belt dressing', quantity: 1, priceEach: { least: 8, likely: 15, most: 25 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch', 'solvent'], source: 'page-drive',
  },
  {
    id: 'belt.renew', title: 'Renew the belt', part: 'belt', families: EVERY, stage: 15,
    after: [
      { job: 'drive.set-speed', because: 'the belt is cut to the pulleys that stay' },
      { job: 'motor.renew', because: 'the belt is cut to the motor that stays, to its place and its pulley, and no new belt runs the hammer faster on a motor that is too small', onlyInOrder: true },
    ],
    replaces: [{ job: 'belt.dress', on: ['belt', 'running'] }],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 2, helpers: 0,
    parts: [
      { id: 'flat-belt', words: 'flat belt', quantity: 4, unit: 'm', priceEach: { least: 15, likely: 30, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch'], source: 'common-practice',
  },
  {
    id: 'belt.align', title: 'Align the pulleys', part: 'belt', families: EVERY, stage: 15,
    after: [
      { job: 'drive.set-speed', because: 'pulleys are lined up when they are final' },
    ],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [],
    cautions: ['isolate', 'pinch'], source: 'common-practice',
  },
  {
    id: 'idler.set', title: 'Set the idler', part: 'belt-idler', families: EVERY, stage: 15,
    after: [
      { job: 'belt.renew', because: 'the idler is set to the belt that stays' },
    ],
    otherwise: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'pinch'], source: 'page-drive',
  },
  {
    id: 'motor.renew', title: 'Fit a larger motor', part: 'motor', families: EVERY, stage: 15,
    after: [],
    replaces: [{ job: 'motor.service', on: ['motor', 'starter'] }],
    hours: { least: 2, likely: 3, most: 4 }, skill: 3, helpers: 0,
    parts: [
      { id: 'motor', words: 'motor', sized: 'motor', quantity: 1, priceEach: { least: 250, likely: 350, most: 700 }, source: 'price-guess', leadDays: { least: 2, likely: 7, most: 21 } },
      { id: 'motor-circuit', words: 'wire and breaker of the motor’s circuit', quantity: 1, priceEach: { least: 30, likely: 70, most: 160 }, source: 'price-guess' },
    ],
    outside: { words: 'electrician', price: { least: 100, likely: 200, most: 400 }, source: 'price-guess' },
    cautions: ['isolate', 'electrician', 'pinch'], source: 'page-drive',
  },
  {
    id: 'motor.service', title: 'Clean and check the motor', part: 'motor', families: EVERY, stage: 15,
    after: [],
    hours: { least: 1, likely: 2, most: 3 }, skill: 3, helpers: 0,
    parts: [],
    outside: { words: 'electrician or motor shop', price: { least: 60, likely: 120, most: 250 }, source: 'price-guess' },
    cautions: ['isolate', 'electrician'], source: 'page-drive',
  },
  {
    id: 'starter.isolator', title: 'Fit a lockable isolator and no-volt starter', part: 'starter', families: EVERY, stage: 0,
    after: [],
    hours: { least: 2, likely: 3, most: 4 }, skill: 4, helpers: 0,
    parts: [
      { id: 'isolator', words: 'isolator and starter with overload', quantity: 1, priceEach: { least: 60, likely: 140, most: 300 }, source: 'price-guess' },
    ],
    outside: { words: 'electrician', price: { least: 100, likely: 200, most: 400 }, source: 'price-guess' },
    cautions: ['electrician'], source: 'common-practice',
  },
  {
    id: 'electrics.make-safe', title: 'Make the wiring safe', part: 'starter', families: EVERY, stage: 0,
    after: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 4, helpers: 0,
    parts: [],
    outside: { words: 'electrician', price: { least: 100, likely: 250, most: 500 }, source: 'price-guess' },
    cautions: ['electrician'], source: 'common-practice',
  },
  {
    id: 'converter.enlarge', title: 'Fit a larger converter', part: 'phase-converter', families: EVERY, stage: 15,
    after: [],
    otherwise: [],
    hours: { least: 3, likely: 5, most: 8 }, skill: 4, helpers: 0,
    parts: [
      { id: 'rotary-converter', words: 'rotary converter and panel', quantity: 1, priceEach: { least: 600, likely: 850, most: 1200 }, source: 'price-guess' },
    ],
    outside: { words: 'electrician', price: { least: 100, likely: 200, most: 400 }, source: 'price-guess' },
    cautions: ['electrician'], source: 'phase-converter-rules',
  },
  {
    id: 'converter.balance', title: 'Balance the converter’s legs', part: 'phase-converter', families: EVERY, stage: 15,
    after: [
      { job: 'converter.enlarge', because: 'the legs are balanced on the converter that stays' },
    ],
    otherwise: ['electrics.make-safe'],
    hours: { least: 1, likely: 2, most: 3 }, skill: 4, helpers: 0,
    parts: [
      { id: 'run-capacitors', words: 'run capacitors', quantity: 3, priceEach: { least: 10, likely: 18, most: 30 }, source: 'price-guess' },
    ],
    cautions: ['electrician'], source: 'common-practice',
  },
  {
    id: 'tyre.renew', title: 'Renew the tyre and roller', part: 'tyre-wheel', families: EVERY, stage: 15,
    after: [],
    otherwise: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 1, helpers: 0,
    parts: [
      { id: 'tyre', words: 'tyre', quantity: 1, priceEach: { least: 60, likely: 110, most: 200 }, source: 'price-guess' },
      { id: 'drive-roller', words: 'drive roller', quantity: 1, priceEach: { least: 20, likely: 50, most: 100 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch'], source: 'page-drive',
  },
];
