import { EVERY } from '../families.ts';
import type { Job } from '../job.ts';

/** Jobs for ground, guards and the machine as a whole. */
export const GROUND_AND_GUARDS_JOBS: readonly Job[] = [
  {
    id: 'guards.front', title: 'Fit a guard in front of the linkage', part: 'guards', families: EVERY, stage: 15,
    words: 'Steel mesh or polycarbonate sheet at head height, fixed, hinged for oiling.',
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [
      { id: 'guard-material', words: 'mesh or polycarbonate sheet and frame', quantity: 1, priceEach: { least: 50, likely: 110, most: 220 }, source: 'price-guess' },
    ],
    cautions: ['isolate'], source: 'page-safety',
  },
  {
    id: 'guards.belt', title: 'Guard belt, pulleys and crank', part: 'guards', families: EVERY, stage: 15,
    words: 'Mesh over whatever a sleeve can reach, up to 7 ft from the floor.',
    after: [],
    hours: { least: 2, likely: 4, most: 6 }, skill: 2, helpers: 0,
    parts: [
      { id: 'mesh', words: 'mesh and angle', quantity: 1, priceEach: { least: 40, likely: 90, most: 180 }, source: 'price-guess' },
    ],
    cautions: ['isolate', 'pinch'], source: 'osha-1910-219',
  },
  {
    id: 'guards.scale', title: 'Fit a scale guard behind the dies', part: 'guards', families: EVERY, stage: 15,
    words: 'A sheet or mesh at the back that stops flying scale.',
    after: [],
    hours: { least: 0.5, likely: 1, most: 2 }, skill: 1, helpers: 0,
    parts: [
      { id: 'scale-sheet', words: 'sheet and brackets', quantity: 1, priceEach: { least: 10, likely: 25, most: 50 }, source: 'price-guess' },
    ],
    cautions: ['isolate'], source: 'osha-1910-218',
  },
  {
    id: 'whole.free', title: 'Free a hammer that does not turn', part: 'whole-machine', families: EVERY, stage: 1,
    words: 'Find where it binds before forcing it: belts and treadle off, oil, look at bearings, ways and clutch one by one.',
    after: [],
    hours: { least: 1, likely: 3, most: 8 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['isolate', 'block-ram', 'spring-unload'], source: 'common-practice',
  },
  {
    id: 'trial.run', title: 'Run the trial', part: 'running', families: EVERY, stage: 16,
    words: 'Prop out, guards on. Idle, soft on wood, full on wood once soft is right, release, hot steel; count, time, feel and record, with what the setting sheet keeps for it; lock off and tighten everything; write it down.',
    after: [],
    hours: { least: 1, likely: 2, most: 4 }, skill: 2, helpers: 1,
    parts: [
      { id: 'hardwood-blocks', words: 'hardwood blocks', quantity: 2, priceEach: { least: 5, likely: 10, most: 20 }, source: 'price-guess' },
    ],
    cautions: ['block-ram', 'two-people', 'stand-aside', 'hearing', 'eyes', 'tongs', 'no-cold-blow', 'record'], source: 'common-practice',
  },
  {
    id: 'trial.find-second-sound', title: 'Find the second sound', part: 'running', families: EVERY, stage: 16,
    words: 'It runs, so it is part of the trial: after the soft blows on wood, before the full ones, and only where the second sound is still there. One change at a time, locked off for each: bolt down, slack the spring half a turn, count the rate, measure the gap, oil the pins; record each.',
    wordsFor: {
      'bow-spring': 'It runs, so it is part of the trial: after the soft blows on wood, before the full ones, and only where the second sound is still there. One change at a time, locked off for each: bolt down, count the rate, measure the gap and the draw of the bow, oil clip and eyes; record each.',
      helve: 'It runs, so it is part of the trial: after the soft blows on wood, before the full ones, and only where the second sound is still there. One change at a time, locked off for each: bolt down, count the rate, measure the gap, look at the cushions, oil the pivots; record each.',
    },
    after: [
      { job: 'bolts.tighten', because: 'a loose hammer double-beats whatever else is done' },
      { job: 'spring.set-tension', because: 'the spring is set before its effect is judged' },
    ],
    hours: { least: 0.5, likely: 1, most: 3 }, skill: 2, helpers: 0,
    parts: [],
    cautions: ['block-ram', 'two-people', 'stand-aside', 'hearing'], source: 'page-linkage',
  },
];
