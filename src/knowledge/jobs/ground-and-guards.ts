import { EVERY } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for ground, guards and the machine as a whole. */
export const GROUND_AND_GUARDS_JOBS: readonly Job[] = [
  {
    id: 'guards.front', title: 'Fit a guard in front of the linkage', part: 'guards', families: EVERY, stage: 15,
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [
      { id: 'guard-material', words: 'mesh or polycarbonate sheet and frame', quantity: 1, priceEach: { least: 50, likely: 110, most: 220 }, source: 'price-guess' },
    ],
    cautions: ['isolate'], source: 'page-safety',
  },
  {
    id: 'guards.belt', title: 'Guard belt, pulleys and crank', part: 'guards', families: EVERY, stage: 15,
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [
      { id: 'mesh', words: 'mesh and angle', quantity: 1, priceEach: { least: 40, likely: 90, most: 180 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch'], source: 'osha-1910-219',
  },
  {
    id: 'guards.scale', title: 'Fit a scale guard behind the dies', part: 'guards', families: EVERY, stage: 15,
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [
      { id: 'scale-sheet', words: 'sheet and brackets', quantity: 1, priceEach: { least: 10, likely: 25, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate'], source: 'osha-1910-218',
  },
  {
    id: 'whole.free', title: 'Free a hammer that does not turn', part: 'whole-machine', families: EVERY, stage: 1,
    after: [],
    hours: { least: 1, likely: 3, most: 8 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'trial.run', title: 'Run the trial', part: 'running', families: EVERY, stage: 16,
    after: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 1,
    parts: [
      { id: 'hardwood-blocks', words: 'hardwood blocks', quantity: 2, priceEach: { least: 5, likely: 10, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['block-ram', 'two-people', 'stand-aside', 'hearing', 'eyes', 'tongs', 'no-cold-blow', 'record'], source: 'common-practice',
  },
  {
    id: 'trial.find-second-sound', title: 'Find the second sound', part: 'running', families: EVERY, stage: 16,
    after: [
      { job: 'bolts.tighten', because: 'a loose hammer double-beats whatever else is done' },
      { job: 'spring.set-tension', because: 'the spring is set before its effect is judged' },
    ],
    hours: { least: 0.5, likely: 1, most: 3 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['block-ram', 'two-people', 'stand-aside', 'hearing'], source: 'page-linkage',
  },
];
