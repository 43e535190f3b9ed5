import { EVERY } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for ground, guards and the machine as a whole. */
export const GROUND_AND_GUARDS_CRITERIA: readonly Criterion[] = [
  {
    id: 'base.ears', title: 'Bolt ears of the base', question: 'Are the bolt ears whole?', part: 'base', rows: [36], families: EVERY,
    rule: { kind: 'seen', look: 'base.ears', answers: {
      whole: { grade: 'sound', because: 'Whole.', source: 'common-practice' },
      cracked: { grade: 'limited', because: 'A cracked ear lets one corner go.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
      broken: { grade: 'limited', because: 'The corner is not held.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    } },
    gate: false, minutes: 3, cures: ['base.mend-ear'], cautions: ['cracked-casting'],
    examples: [{ given: 'whole', grade: 'sound', stands: 'plain' }, { given: 'cracked', grade: 'limited', stands: 'plain' }, { given: 'broken', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'base.rock', title: 'Base on its bed', question: 'Does the base bear on its bed at every corner?', part: 'base', rows: [36], families: EVERY,
    rule: { kind: 'measured', value: 'base.rock', worse: 'more', steps: [
      { grade: 'watch', from: '0.005 in', source: 'common-practice', because: 'A feeler should not go in at any corner.', cures: ['base.level'] },
      { grade: 'limited', from: '1/32 in', source: 'common-practice', because: 'It rocks, walks and double-beats.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 10, cures: ['base.level', 'base.grout'], cautions: ['top-heavy'],
    examples: [{ given: '0.004 in', grade: 'sound', stands: 'just under' }, { given: '0.005 in', grade: 'watch', stands: 'at' }, { given: '0.006 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'base.bearing', title: 'Bearing of the base', question: 'Is the base solid all round?', part: 'base', rows: [36], families: EVERY,
    rule: { kind: 'seen', look: 'base.bearing', answers: {
      'all-round': { grade: 'sound', because: 'Solid all round.', source: 'common-practice' },
      shims: { grade: 'watch', because: 'Loose shims creep out.', source: 'common-practice' },
      corners: { grade: 'watch', because: 'A casting held on a few points can crack.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['base.grout'], cautions: ['top-heavy'],
    examples: [{ given: 'all-round', grade: 'sound', stands: 'plain' }, { given: 'shims', grade: 'watch', stands: 'plain' }, { given: 'corners', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'base.level', title: 'Level', question: 'Does it stand level?', part: 'base', rows: [42], families: EVERY,
    rule: { kind: 'measured', value: 'base.level', worse: 'more', steps: [
      { grade: 'watch', from: '1/16 in', source: 'common-practice', because: 'Oil runs to one side, and bearings wear with it.' },
    ] },
    gate: false, minutes: 5, cures: ['base.level'], cautions: ['top-heavy'],
    examples: [{ given: '0.062 in', grade: 'sound', stands: 'just under' }, { given: '1/16 in', grade: 'watch', stands: 'at' }, { given: '0.063 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'bolts.state', title: 'Hold-down bolts', question: 'Do the hold-down bolts stay tight?', part: 'hold-down-bolts', rows: [38], families: EVERY,
    rule: { kind: 'seen', look: 'hold-down-bolts.state', answers: {
      tight: { grade: 'sound', because: 'Tight after an hour.', source: 'common-practice' },
      'loosened-once': { grade: 'watch', because: 'New bolts settle once; try again after ten hours.', source: 'page-foundation', cures: ['bolts.tighten'] },
      'loosened-twice': { grade: 'limited', because: 'Loose again: the bed is at fault, not the bolt.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['base.grout', 'bolts.tighten'] },
      none: { grade: 'limited', because: 'A hammer that is not held down walks.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '25 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['bolts.renew'] },
    } },
    gate: false, minutes: 3, cures: ['bolts.tighten', 'bolts.renew', 'base.grout'], cautions: ['top-heavy'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loosened-once', grade: 'watch', stands: 'plain' }, { given: 'loosened-twice', grade: 'limited', stands: 'plain' }, { given: 'none', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'bolts.diameter', title: 'Size of the hold-down bolts', question: 'Are the hold-down bolts thick enough?', part: 'hold-down-bolts', rows: [38], families: EVERY,
    rule: { kind: 'measured', value: 'hold-down-bolts.diameter', worse: 'less', steps: [
      { grade: 'watch', from: '1/2 in', source: 'page-foundation', because: '5/8 to 3/4 in is usual from 25 to 100 lb.' },
    ] },
    gate: false, minutes: 2, cures: ['bolts.renew'], cautions: [],
    examples: [{ given: '0.499 in', grade: 'watch', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'foundation.kind', title: 'What it stands on', question: 'Is the ground fit for it?', part: 'foundation', rows: [41], families: EVERY,
    rule: { kind: 'seen', look: 'foundation.kind', answers: {
      'own-block': { grade: 'sound', because: 'A block of its own.', source: 'page-foundation' },
      slab: { grade: 'sound', because: 'The floor slab carries it; it may shake the house.', source: 'page-foundation' },
      timber: { grade: 'sound', because: 'Timbers carry small hammers well.', source: 'page-foundation' },
      belting: { grade: 'sound', because: 'Belting on a slab carries small hammers well.', source: 'page-foundation' },
      soil: { grade: 'limited', because: 'On bare soil it sinks and tips.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
      trailer: { grade: 'limited', because: 'A trailer is for showing, not for working.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
      'not-known': { grade: 'watch', because: 'Find out before it is worked hard.', source: 'common-practice', cures: [] },
    } },
    gate: false, minutes: 3, cures: ['foundation.block'], cautions: [],
    examples: [{ given: 'own-block', grade: 'sound', stands: 'plain' }, { given: 'slab', grade: 'sound', stands: 'plain' }, { given: 'timber', grade: 'sound', stands: 'plain' }, { given: 'belting', grade: 'sound', stands: 'plain' }, { given: 'soil', grade: 'limited', stands: 'plain' }, { given: 'trailer', grade: 'limited', stands: 'plain' }, { given: 'not-known', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'foundation.thickness', title: 'Thickness of the foundation', question: 'Is the block or slab thick enough?', part: 'foundation', rows: [41], families: EVERY,
    onlyWhere: { look: 'foundation.kind', answers: ['own-block', 'slab'] },
    rule: { kind: 'measured', value: 'foundation.thickness', worse: 'less', steps: [
      { grade: 'watch', from: '6 in', source: 'page-foundation', because: '12 to 18 in is usual; 6 in has served small hammers.', cures: [] },
      { grade: 'limited', from: '3 in', source: 'common-practice', because: 'A slab this thin breaks under it.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 10, cures: ['foundation.block'], cautions: [],
    examples: [{ given: '5 in', grade: 'watch', stands: 'just under' }, { given: '6 in', grade: 'watch', stands: 'at' }, { given: '7 in', grade: 'sound', stands: 'just over' }, { given: '2 in', grade: 'limited', stands: 'just under' }, { given: '3 in', grade: 'limited', stands: 'at' }, { given: '4 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'foundation.crack', title: 'Cracks in the foundation', question: 'Is the foundation whole?', part: 'foundation', rows: [41], families: EVERY,
    rule: { kind: 'seen', look: 'foundation.crack', answers: {
      none: { grade: 'sound', because: 'None.', source: 'common-practice' },
      hairline: { grade: 'watch', because: 'Hairlines that stay are harmless; mark their ends.', source: 'common-practice', cures: [] },
      open: { grade: 'limited', because: 'Pieces that move let it tip and walk.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    } },
    gate: false, minutes: 3, cures: ['foundation.block'], cautions: [],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'hairline', grade: 'watch', stands: 'plain' }, { given: 'open', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'foundation.neighbours', title: 'House and neighbours', question: 'Does it shake anybody?', part: 'foundation', rows: [41], families: EVERY,
    rule: { kind: 'seen', look: 'foundation.neighbours', answers: {
      no: { grade: 'sound', because: 'No.', source: 'common-practice' },
      felt: { grade: 'watch', because: 'Felt in the house: soft ground and a thin slab carry far.', source: 'page-foundation', cures: [] },
      complaint: { grade: 'watch', because: 'Agree on hours before the next complaint.', source: 'page-foundation', limits: [{ kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    } },
    gate: false, minutes: 5, cures: ['foundation.part-from-slab'], cautions: [],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'felt', grade: 'watch', stands: 'plain' }, { given: 'complaint', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'guards.front', title: 'Guard in front of the linkage', question: 'Is there a guard between linkage and people?', part: 'guards', rows: [40], families: EVERY,
    rule: { kind: 'seen', look: 'guards.front', answers: {
      fitted: { grade: 'sound', because: 'Fitted and fixed.', source: 'common-practice' },
      'missing-alone': { grade: 'limited', because: 'Only the operator stands in front, and stands aside.', source: 'page-safety', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }, { kind: 'named-operator', sentence: 'Only the operator named on the limits card.' }] },
      'missing-public': { grade: 'stand-down', because: 'No guard between the moving linkage at head height and other people.', source: 'page-safety' },
    } },
    gate: true, minutes: 1, cures: ['guards.front'], cautions: ['stand-aside'],
    examples: [{ given: 'fitted', grade: 'sound', stands: 'plain' }, { given: 'missing-alone', grade: 'limited', stands: 'plain' }, { given: 'missing-public', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'guards.belt', title: 'Guard of belt and pulleys', question: 'Are belt, pulleys and crank guarded?', part: 'guards', rows: [40], families: EVERY,
    rule: { kind: 'seen', look: 'guards.belt', answers: {
      guarded: { grade: 'sound', because: 'Guarded.', source: 'osha-1910-219' },
      part: { grade: 'limited', because: 'Part of it is in reach of a sleeve.', source: 'osha-1910-219', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      open: { grade: 'limited', because: 'Belt and pulleys are in reach of a sleeve.', source: 'osha-1910-219', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'named-operator', sentence: 'Only the operator named on the limits card.' }] },
    } },
    gate: false, minutes: 1, cures: ['guards.belt'], cautions: ['pinch'],
    examples: [{ given: 'guarded', grade: 'sound', stands: 'plain' }, { given: 'part', grade: 'limited', stands: 'plain' }, { given: 'open', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'guards.scale', title: 'Scale guard', question: 'Is there a scale guard at the back?', part: 'guards', rows: [40], families: EVERY,
    rule: { kind: 'seen', look: 'guards.scale', answers: {
      fitted: { grade: 'sound', because: 'Fitted.', source: 'osha-1910-218' },
      missing: { grade: 'watch', because: 'Scale flies out at the back.', source: 'osha-1910-218' },
    } },
    gate: false, minutes: 1, cures: ['guards.scale'], cautions: ['eyes'],
    examples: [{ given: 'fitted', grade: 'sound', stands: 'plain' }, { given: 'missing', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'whole.hand-turn', title: 'Turning by hand', question: 'Does it turn smoothly by hand?', part: 'whole-machine', rows: [], families: EVERY,
    rule: { kind: 'seen', look: 'whole-machine.hand-turn', answers: {
      smooth: { grade: 'sound', because: 'Smooth all round.', source: 'common-practice' },
      'tight-spot': { grade: 'watch', because: 'Something binds once a turn.', source: 'common-practice', cures: [] },
      click: { grade: 'watch', because: 'A joint is slack.', source: 'common-practice', cures: [] },
      stuck: { grade: 'stand-down', because: 'What does not turn by hand is not started with a motor.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['whole.free'], cautions: ['isolate', 'spring-unload'],
    examples: [{ given: 'smooth', grade: 'sound', stands: 'plain' }, { given: 'tight-spot', grade: 'watch', stands: 'plain' }, { given: 'click', grade: 'watch', stands: 'plain' }, { given: 'stuck', grade: 'stand-down', stands: 'plain' }],
  },
];
