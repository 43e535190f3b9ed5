import { COIL, EVERY, GUIDED } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for the running trial. */
export const RUNNING_CRITERIA: readonly Criterion[] = [
  {
    id: 'running.creep', title: 'Ram with the treadle up', question: 'Does the ram stay still with the treadle up?', part: 'running', rows: [28, 29, 31], families: EVERY,
    rule: { kind: 'seen', look: 'running.creep', answers: {
      still: { grade: 'sound', because: 'Stays still.', source: 'common-practice' },
      drifts: { grade: 'watch', because: 'A little drift that stops is common; look at the clutch, be it facing or belt.', source: 'common-practice', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }], cures: ['clutch.adjust'] },
      creeps: { grade: 'stand-down', because: 'A ram that creeps or drops by itself takes a hand.', source: 'common-practice', cures: ['clutch.adjust', 'shipper.free'] },
    } },
    gate: true, minutes: 5, cures: ['clutch.adjust', 'clutch-pulley.ease', 'shipper.free', 'return-spring.renew'], cautions: ['block-ram', 'hands-out'],
    examples: [{ given: 'still', grade: 'sound', stands: 'plain' }, { given: 'drifts', grade: 'watch', stands: 'plain' }, { given: 'creeps', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'running.release', title: 'Strokes after release', question: 'How many strokes does it make after the treadle is let go?', part: 'running', rows: [28, 33, 34], families: EVERY,
    rule: { kind: 'measured', value: 'running.release-strokes', worse: 'more', steps: [
      { grade: 'watch', from: '5', source: 'page-clutch', because: 'Without a brake a few strokes are normal.', cures: ['clutch.adjust'] },
      { grade: 'limited', from: '10', source: 'common-practice', because: 'It runs on: clutch dry, tight or flooded, or its belt dragging; bush worn or return weak.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'second-person', sentence: 'A second person stands at the isolator.' }], cures: ['clutch.wash', 'clutch.adjust'] },
    ] },
    gate: false, minutes: 3, cures: ['clutch.adjust', 'clutch.wash', 'return-spring.renew'], cautions: ['stand-aside'],
    examples: [{ given: '4', grade: 'sound', stands: 'just under' }, { given: '5', grade: 'watch', stands: 'at' }, { given: '6', grade: 'watch', stands: 'just over' }, { given: '9', grade: 'watch', stands: 'just under' }, { given: '10', grade: 'limited', stands: 'at' }, { given: '11', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'running.clank', title: 'Dies meeting', question: 'Do the dies ring on one another?', part: 'running', rows: [3], families: EVERY,
    rule: { kind: 'seen', look: 'running.clank', answers: {
      no: { grade: 'sound', because: 'No.', source: 'common-practice' },
      yes: { grade: 'stand-down', because: 'Iron on iron at the bottom: the gap is too small. Stop.', source: 'common-practice' },
    } },
    gate: false, minutes: 1, cures: ['rod.set-gap'], cautions: ['no-cold-blow'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'yes', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'running.sound', title: 'The beat', question: 'Is there one clean blow each turn?', part: 'running', rows: [19, 38], families: EVERY,
    rule: { kind: 'seen', look: 'running.sound', answers: {
      clean: { grade: 'sound', because: 'One clean blow each turn.', source: 'common-practice' },
      double: { grade: 'watch', because: 'Spring set wrong, more often too tight than too loose; not bolted down; gap wrong; or too fast.', source: 'page-linkage' },
      uneven: { grade: 'watch', because: 'Hard and soft by turns: too fast, or cold dies.', source: 'common-practice', cures: ['trial.find-second-sound'] },
    } },
    gate: false, minutes: 3, cures: ['trial.find-second-sound', 'bolts.tighten', 'spring.set-tension'], cautions: ['stand-aside'],
    examples: [{ given: 'clean', grade: 'sound', stands: 'plain' }, { given: 'double', grade: 'watch', stands: 'plain' }, { given: 'uneven', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.top-knock', title: 'Knock at the top', question: 'Is there a knock at the top of the stroke?', part: 'running', rows: [21, 22, 23], families: EVERY,
    rule: { kind: 'seen', look: 'running.top-knock', answers: {
      no: { grade: 'sound', because: 'No.', source: 'common-practice' },
      yes: { grade: 'watch', because: 'Slack in crank pin, rod or crosshead; a spring going solid; or the linkage on the guide.', source: 'common-practice', limits: [{ kind: 'greatest-tread', value: { fixed: '75 %' }, sentence: 'Tread no deeper than {value}.' }], cures: ['trial.find-second-sound'] },
    } },
    gate: false, minutes: 3, cures: ['rod.bush', 'trial.find-second-sound'], cautions: ['stand-aside'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'yes', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.click', title: 'Click at light tread', question: 'Does it click twice a turn?', part: 'running', rows: [18], families: COIL,
    rule: { kind: 'seen', look: 'running.click', answers: {
      no: { grade: 'sound', because: 'No.', source: 'common-practice' },
      yes: { grade: 'watch', because: 'Worn linkage pins.', source: 'common-practice' },
    } },
    gate: false, minutes: 2, cures: ['pins.renew'], cautions: ['stand-aside'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'yes', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.chatter', title: 'Clutch taking up', question: 'Does the clutch take up smoothly?', part: 'running', rows: [28], families: EVERY,
    rule: { kind: 'seen', look: 'running.chatter', answers: {
      smooth: { grade: 'sound', because: 'Smoothly.', source: 'common-practice' },
      chatters: { grade: 'watch', because: 'What grips is dry or glazed or out of line, or the linkage of the treadle is slack.', source: 'page-clutch', cures: ['clutch.wash', 'clutch.adjust'] },
      grabs: { grade: 'limited', because: 'A grabbing clutch throws the ram at the first touch.', source: 'page-clutch', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'named-operator', sentence: 'Only the operator named on the limits card.' }], cures: ['clutch.wash', 'clutch.adjust'] },
      slips: { grade: 'watch', because: 'What grips is oily, glazed, or at the end of its adjustment.', source: 'common-practice', cures: ['clutch.wash', 'clutch.adjust'] },
    } },
    gate: false, minutes: 3, cures: ['clutch.wash', 'clutch.adjust', 'clutch.reline'], cautions: ['stand-aside'],
    examples: [{ given: 'smooth', grade: 'sound', stands: 'plain' }, { given: 'chatters', grade: 'watch', stands: 'plain' }, { given: 'grabs', grade: 'limited', stands: 'plain' }, { given: 'slips', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.walks', title: 'Walking', question: 'Does it stay on its marks?', part: 'running', rows: [36, 38], families: EVERY,
    rule: { kind: 'seen', look: 'running.walks', answers: {
      no: { grade: 'sound', because: 'Stays on its marks.', source: 'common-practice' },
      little: { grade: 'watch', because: 'Tighten the bolts and look again.', source: 'common-practice', cures: ['bolts.tighten'] },
      yes: { grade: 'limited', because: 'It walks: bolts, bed or speed.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'greatest-tread', value: { fixed: '25 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    } },
    gate: false, minutes: 6, cures: ['bolts.tighten', 'base.grout'], cautions: ['top-heavy'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'little', grade: 'watch', stands: 'plain' }, { given: 'yes', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'running.shims', title: 'Guide shims while running', question: 'Do the guide shims stay put?', part: 'running', rows: [13], families: GUIDED,
    rule: { kind: 'seen', look: 'running.shims', answers: {
      no: { grade: 'sound', because: 'They stay.', source: 'common-practice' },
      yes: { grade: 'limited', because: 'They climb out with the ram.', source: 'page-guide', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    } },
    gate: false, minutes: 6, cures: ['guide.retain-shims'], cautions: [],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'yes', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'running.die-shift', title: 'Dies while running', question: 'Do the dies stay where they are keyed?', part: 'running', rows: [5, 6], families: EVERY,
    rule: { kind: 'seen', look: 'running.die-shift', answers: {
      no: { grade: 'sound', because: 'The paint line is unbroken.', source: 'common-practice' },
      yes: { grade: 'stand-down', because: 'A die that has shifted is no longer held: lock off, key it and try again.', source: 'common-practice', cures: ['keys.drive'] },
    } },
    gate: false, minutes: 6, cures: ['keys.drive', 'keys.renew'], cautions: ['drift', 'dry-dovetail'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'yes', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'running.oil', title: 'Oil while running', question: 'Does oil reach every joint and stay off the dies?', part: 'running', rows: [39], families: EVERY,
    rule: { kind: 'seen', look: 'running.oil', answers: {
      flings: { grade: 'sound', because: 'A little is flung from every joint.', source: 'page-bearings' },
      dry: { grade: 'limited', because: 'A joint stays dry.', source: 'common-practice', limits: [{ kind: 'oil-every', value: { fixed: '10 min' }, sentence: 'Oil every joint every {value} of running.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['oil-ways.clear'] },
      'on-dies': { grade: 'watch', because: 'Oil on its way to the dovetail: wipe, oil less at the ways, look at the keys.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }], cures: ['keys.dry'] },
    } },
    gate: false, minutes: 3, cures: ['oil-ways.clear', 'keys.dry'], cautions: ['dry-dovetail'],
    examples: [{ given: 'flings', grade: 'sound', stands: 'plain' }, { given: 'dry', grade: 'limited', stands: 'plain' }, { given: 'on-dies', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.off-centre', title: 'Where the blow falls', question: 'Does the blow fall evenly on the die?', part: 'running', rows: [12, 15], families: EVERY,
    rule: { kind: 'seen', look: 'running.off-centre', answers: {
      even: { grade: 'sound', because: 'Evenly.', source: 'common-practice' },
      edge: { grade: 'watch', because: 'Guide play, shifted dies, or ways out of square.', source: 'common-practice' },
    } },
    gate: false, minutes: 5, cures: ['guide.shim', 'helve.bush-pivot', 'keys.drive'], cautions: ['block-ram'],
    examples: [{ given: 'even', grade: 'sound', stands: 'plain' }, { given: 'edge', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'running.bearing-temperature', title: 'Bearing temperature', question: 'How hot do the bearings get?', part: 'running', rows: [24], families: EVERY,
    rule: { kind: 'measured', value: 'running.bearing-temperature', worse: 'more', steps: [
      { grade: 'watch', from: '50 °C', source: 'common-practice', because: 'Warm: a hand stays on it, and it is watched.', cures: ['bearings.clean'] },
      { grade: 'stand-down', from: '60 °C', source: 'common-practice', because: 'Too hot to hold: stop, and find out why before it seizes.' },
    ] },
    gate: false, minutes: 10, cures: ['bearings.clean', 'bearings.even-shims'], cautions: ['stand-aside'],
    examples: [{ given: '49 °C', grade: 'sound', stands: 'just under' }, { given: '50 °C', grade: 'watch', stands: 'at' }, { given: '51 °C', grade: 'watch', stands: 'just over' }, { given: '59 °C', grade: 'watch', stands: 'just under' }, { given: '60 °C', grade: 'stand-down', stands: 'at' }, { given: '61 °C', grade: 'stand-down', stands: 'just over' }],
  },
  {
    id: 'running.noise', title: 'Sound at the ear', question: 'How loud is it at the operator’s ear?', part: 'running', rows: [], families: EVERY,
    rule: { kind: 'measured', value: 'running.noise', worse: 'more', steps: [
      { grade: 'watch', from: '85 dB', source: 'niosh-98-126', because: 'From 85 dBA on, hearing is lost over the years.' },
      { grade: 'limited', from: '100 dB', source: 'niosh-98-126', because: 'A quarter of an hour a day is allowed by the 85 dBA rule, two hours by the 90 dBA rule.', limits: [{ kind: 'double-hearing-protection', sentence: 'Plugs and muffs together for everybody in the room.' }] },
    ] },
    gate: false, minutes: 3, cures: [], cautions: ['hearing'],
    examples: [{ given: '84 dB', grade: 'sound', stands: 'just under' }, { given: '85 dB', grade: 'watch', stands: 'at' }, { given: '86 dB', grade: 'watch', stands: 'just over' }, { given: '99 dB', grade: 'watch', stands: 'just under' }, { given: '100 dB', grade: 'limited', stands: 'at' }, { given: '101 dB', grade: 'limited', stands: 'just over' }],
  },
];
