import { EVERY } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for shaft, bearings, clutch, treadle and oil. */
export const SHAFT_AND_CLUTCH_CRITERIA: readonly Criterion[] = [
  {
    id: 'journals.clearance', title: 'Main bearing clearance', question: 'How much clearance has the bearing for each inch of shaft?', part: 'main-bearings', rows: [24], families: EVERY,
    rule: { kind: 'measured', value: 'journals.clearance-ratio', worse: 'more', steps: [
      { grade: 'watch', from: '0.0025', source: 'sleeve-bearing-table', because: 'Set at 0.001 to 0.002 in for each inch of shaft; take shims out soon.', cures: ['bearings.take-out-shims'] },
      { grade: 'limited', from: '0.004', source: 'sleeve-bearing-table', because: 'Past 0.004 in for each inch the shaft lifts, the clutch pulley hangs up, and it knocks.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }], cures: ['bearings.take-out-shims'] },
    ] },
    gate: false, minutes: 15, cures: ['bearings.take-out-shims', 'bearings.pour'], cautions: ['block-ram'],
    examples: [{ given: '0.0024', grade: 'sound', stands: 'just under' }, { given: '0.0025', grade: 'watch', stands: 'at' }, { given: '0.0026', grade: 'watch', stands: 'just over' }, { given: '0.003', grade: 'watch', stands: 'just under' }, { given: '0.004', grade: 'limited', stands: 'at' }, { given: '0.005', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'journals.tight', title: 'Main bearing too tight', question: 'Is there room for oil in the bearing?', part: 'main-bearings', rows: [24], families: EVERY,
    rule: { kind: 'measured', value: 'journals.clearance-ratio', worse: 'less', steps: [
      { grade: 'watch', from: '0.0008', source: 'sleeve-bearing-table', because: '0.001 in for each inch of shaft is the least that engine practice allows.', cures: ['bearings.clean'] },
      { grade: 'limited', from: '0.0004', source: 'sleeve-bearing-table', because: 'There is no room for oil: it runs hot.', limits: [{ kind: 'longest-run', value: { fixed: '10 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'oil-every', value: { fixed: '10 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 15, cures: ['bearings.clean', 'bearings.even-shims'], cautions: ['block-ram'],
    examples: [{ given: '0.0007', grade: 'watch', stands: 'just under' }, { given: '0.0008', grade: 'watch', stands: 'at' }, { given: '0.0009', grade: 'sound', stands: 'just over' }, { given: '0.0003', grade: 'limited', stands: 'just under' }, { given: '0.0004', grade: 'limited', stands: 'at' }, { given: '0.0005', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'journals.shims-left', title: 'Cap shims left', question: 'Are there shims left after the bearing is set?', part: 'bearing-caps', rows: [25], families: EVERY,
    rule: { kind: 'measured', value: 'journals.shims-left-after', worse: 'less', steps: [
      { grade: 'watch', from: '0.002 in', source: 'common-practice', because: 'When the shims are gone the bearing is poured anew: plan it.', cures: [] },
      { grade: 'limited', from: '0.0005 in', source: 'common-practice', because: 'To set the bearing takes every shim there is, or more: it is poured anew.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 10, cures: ['bearings.pour'], cautions: [],
    examples: [{ given: '0.0019 in', grade: 'watch', stands: 'just under' }, { given: '0.002 in', grade: 'watch', stands: 'at' }, { given: '0.0021 in', grade: 'sound', stands: 'just over' }, { given: '0.0004 in', grade: 'limited', stands: 'just under' }, { given: '0.0005 in', grade: 'limited', stands: 'at' }, { given: '0.0006 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'caps.shims-even', title: 'Cap shims even', question: 'Are the shims equal at both sides of the cap?', part: 'bearing-caps', rows: [25], families: EVERY,
    rule: { kind: 'measured', value: 'bearing-caps.shim-difference', worse: 'more', steps: [
      { grade: 'watch', from: '0.002 in', source: 'common-practice', because: 'Both sides should be equal.' },
      { grade: 'limited', from: '0.005 in', source: 'common-practice', because: 'The cap sits crooked and pinches the shaft.', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 10, cures: ['bearings.even-shims'], cautions: [],
    examples: [{ given: '0.0019 in', grade: 'sound', stands: 'just under' }, { given: '0.002 in', grade: 'watch', stands: 'at' }, { given: '0.0021 in', grade: 'watch', stands: 'just over' }, { given: '0.004 in', grade: 'watch', stands: 'just under' }, { given: '0.005 in', grade: 'limited', stands: 'at' }, { given: '0.006 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'caps.bolts', title: 'Bearing caps and bolts', question: 'Are both caps whole and all their bolts there and tight?', part: 'bearing-caps', rows: [25], families: EVERY,
    rule: { kind: 'seen', look: 'bearing-caps.bolts', answers: {
      tight: { grade: 'sound', because: 'All there, tight, lugs whole.', source: 'common-practice' },
      loose: { grade: 'stand-down', because: 'A loose cap lets the shaft out under load; tighten it and look again.', source: 'common-practice', cures: ['caps.renew-bolts'] },
      missing: { grade: 'stand-down', because: 'A missing bolt leaves the other to carry the blow.', source: 'common-practice', cures: ['caps.renew-bolts'] },
      cracked: { grade: 'stand-down', because: 'A cracked lug or cap opens under load.', source: 'page-frame', cures: ['caps.mend-lug'] },
    } },
    gate: true, minutes: 3, cures: ['caps.renew-bolts', 'caps.mend-lug'], cautions: ['cracked-casting'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'stand-down', stands: 'plain' }, { given: 'missing', grade: 'stand-down', stands: 'plain' }, { given: 'cracked', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'bearings.metal', title: 'Bearing metal', question: 'Is the bearing metal sound?', part: 'main-bearings', rows: [24], families: EVERY,
    rule: { kind: 'seen', look: 'main-bearings.metal', answers: {
      smooth: { grade: 'sound', because: 'Smooth, with even contact.', source: 'common-practice' },
      scored: { grade: 'watch', because: 'Grit in the metal scores the shaft.', source: 'common-practice', cures: ['bearings.clean', 'bearings.scrape'] },
      cracked: { grade: 'limited', because: 'Loose or cracked metal wipes out at once when it gets hot.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '10 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['bearings.pour'] },
      bronze: { grade: 'sound', because: 'Bronze or inserts: judge by clearance.', source: 'common-practice' },
    } },
    gate: false, minutes: 30, cures: ['bearings.clean', 'bearings.scrape', 'bearings.pour'], cautions: ['babbitt-lead'],
    examples: [{ given: 'smooth', grade: 'sound', stands: 'plain' }, { given: 'scored', grade: 'watch', stands: 'plain' }, { given: 'cracked', grade: 'limited', stands: 'plain' }, { given: 'bronze', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'pouring.contact', title: 'Contact of the new metal', question: 'Does the shaft bear on four fifths of the metal?', part: 'pouring', rows: [24.5], families: EVERY,
    rule: { kind: 'measured', value: 'pouring.contact', worse: 'less', steps: [
      { grade: 'watch', from: '75 %', source: 'page-bearings', because: '80 % or more by blue is asked of a new pour.' },
      { grade: 'limited', from: '50 %', source: 'common-practice', because: 'A bearing on half its length runs hot.', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'oil-every', value: { fixed: '10 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 30, cures: ['bearings.scrape'], cautions: ['babbitt-lead'],
    examples: [{ given: '74 %', grade: 'watch', stands: 'just under' }, { given: '75 %', grade: 'watch', stands: 'at' }, { given: '76 %', grade: 'sound', stands: 'just over' }, { given: '49 %', grade: 'limited', stands: 'just under' }, { given: '50 %', grade: 'limited', stands: 'at' }, { given: '51 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'pouring.shell', title: 'Hold of the metal in its shell', question: 'Will the shell hold the metal?', part: 'pouring', rows: [24.5], families: EVERY,
    rule: { kind: 'seen', look: 'pouring.shell', answers: {
      anchors: { grade: 'sound', because: 'Clean anchor holes hold it.', source: 'page-bearings' },
      tinned: { grade: 'sound', because: 'A tinned shell holds it.', source: 'page-bearings' },
      neither: { grade: 'watch', because: 'With neither anchors nor tin the metal works loose.', source: 'page-bearings' },
    } },
    gate: false, minutes: 5, cures: ['bearings.pour'], cautions: ['molten-metal'],
    examples: [{ given: 'anchors', grade: 'sound', stands: 'plain' }, { given: 'tinned', grade: 'sound', stands: 'plain' }, { given: 'neither', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'shaft.out-of-round', title: 'Journal round', question: 'Is the journal round?', part: 'main-shaft', rows: [26], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.out-of-round', worse: 'more', steps: [
      { grade: 'watch', from: '0.0015 in', source: 'common-practice', because: 'Round within 0.001 in is good.', cures: [] },
      { grade: 'limited', from: '0.003 in', source: 'common-practice', because: 'No bearing can be set on it.', limits: [{ kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 20, cures: ['shaft.turn-true'], cautions: [],
    examples: [{ given: '0.0014 in', grade: 'sound', stands: 'just under' }, { given: '0.0015 in', grade: 'watch', stands: 'at' }, { given: '0.0016 in', grade: 'watch', stands: 'just over' }, { given: '0.002 in', grade: 'watch', stands: 'just under' }, { given: '0.003 in', grade: 'limited', stands: 'at' }, { given: '0.004 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'shaft.taper', title: 'Journal parallel', question: 'Is the journal parallel?', part: 'main-shaft', rows: [26], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.taper', worse: 'more', steps: [
      { grade: 'watch', from: '0.0015 in', source: 'common-practice', because: 'It bears at one end.', cures: [] },
      { grade: 'limited', from: '0.003 in', source: 'common-practice', because: 'A tapered journal runs hot in a new pour.', limits: [{ kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 20, cures: ['shaft.turn-true'], cautions: [],
    examples: [{ given: '0.0014 in', grade: 'sound', stands: 'just under' }, { given: '0.0015 in', grade: 'watch', stands: 'at' }, { given: '0.0016 in', grade: 'watch', stands: 'just over' }, { given: '0.002 in', grade: 'watch', stands: 'just under' }, { given: '0.003 in', grade: 'limited', stands: 'at' }, { given: '0.004 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'shaft.score', title: 'Scores in the journal', question: 'How deep are the scores?', part: 'main-shaft', rows: [26], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.score', worse: 'more', steps: [
      { grade: 'watch', from: '0.002 in', source: 'common-practice', because: 'A nail catches.', cures: [] },
      { grade: 'limited', from: '0.005 in', source: 'common-practice', because: 'The score cuts the metal like a tool.', limits: [{ kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 20, cures: ['shaft.turn-true'], cautions: [],
    examples: [{ given: '0.0019 in', grade: 'sound', stands: 'just under' }, { given: '0.002 in', grade: 'watch', stands: 'at' }, { given: '0.0021 in', grade: 'watch', stands: 'just over' }, { given: '0.004 in', grade: 'watch', stands: 'just under' }, { given: '0.005 in', grade: 'limited', stands: 'at' }, { given: '0.006 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'shaft.run-out', title: 'Shaft straight', question: 'Is the shaft straight?', part: 'main-shaft', rows: [26], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.run-out', worse: 'more', steps: [
      { grade: 'watch', from: '0.004 in', source: 'common-practice', because: 'Straight within 0.003 in is good.', cures: [] },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'A bent shaft wipes its bearings and shakes the pulley.', limits: [{ kind: 'greatest-speed', value: { from: 'class.working-rate' }, sentence: 'No faster than {value}.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }], cures: ['shaft.turn-true'] },
    ] },
    gate: false, minutes: 15, cures: ['shaft.turn-true', 'shaft.renew'], cautions: [],
    examples: [{ given: '0.003 in', grade: 'sound', stands: 'just under' }, { given: '0.004 in', grade: 'watch', stands: 'at' }, { given: '0.005 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'shaft.end-float-little', title: 'Too little end float', question: 'Can the shaft move end to end?', part: 'main-shaft', rows: [30], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.end-float', worse: 'less', steps: [
      { grade: 'watch', from: '0.009 in', source: 'common-practice', because: '0.010 to 0.030 in is usual.' },
      { grade: 'limited', from: '0.004 in', source: 'common-practice', because: 'The shaft binds, and the clutch will not free.', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
    ] },
    gate: false, minutes: 4, cures: ['shaft.set-end-float'], cautions: [],
    examples: [{ given: '0.008 in', grade: 'watch', stands: 'just under' }, { given: '0.009 in', grade: 'watch', stands: 'at' }, { given: '0.010 in', grade: 'sound', stands: 'just over' }, { given: '0.003 in', grade: 'limited', stands: 'just under' }, { given: '0.004 in', grade: 'limited', stands: 'at' }, { given: '0.005 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'shaft.end-float-much', title: 'Too much end float', question: 'Does the shaft move too far end to end?', part: 'main-shaft', rows: [30], families: EVERY,
    rule: { kind: 'measured', value: 'main-shaft.end-float', worse: 'more', steps: [
      { grade: 'watch', from: '0.035 in', source: 'common-practice', because: 'More than the usual 0.010 to 0.030 in.' },
      { grade: 'limited', from: '1/16 in', source: 'page-bearings', because: 'The clutch grabs and does not let go cleanly.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 4, cures: ['shaft.set-end-float'], cautions: [],
    examples: [{ given: '0.034 in', grade: 'sound', stands: 'just under' }, { given: '0.035 in', grade: 'watch', stands: 'at' }, { given: '0.036 in', grade: 'watch', stands: 'just over' }, { given: '0.062 in', grade: 'watch', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'shaft.keys', title: 'Tapered keys of plate and pulley', question: 'Are the tapered keys tight?', part: 'main-shaft', rows: [26, 27], families: EVERY,
    rule: { kind: 'seen', look: 'main-shaft.keys', answers: {
      tight: { grade: 'sound', because: 'Tight, direction marked.', source: 'page-bearings' },
      loose: { grade: 'limited', because: 'A loose key beats its keyway out, and the plate comes off.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      'not-seen': { grade: 'watch', because: 'Find out how they were driven before anything is pressed.', source: 'page-bearings', cures: [] },
    } },
    gate: false, minutes: 3, cures: ['shaft.refit-keys'], cautions: ['pinch'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'limited', stands: 'plain' }, { given: 'not-seen', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'pulley.crack', title: 'Crack in the pulley', question: 'Is the pulley whole in hub, spokes and rim?', part: 'pulley', rows: [27], families: EVERY,
    rule: { kind: 'seen', look: 'pulley.crack', answers: {
      none: { grade: 'sound', because: 'None found, rings clear.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line or a dull spoke counts as a crack until dye has shown otherwise.', source: 'common-practice' },
      present: { grade: 'stand-down', because: 'A cracked pulley bursts at speed.', source: 'common-practice' },
      repaired: { grade: 'limited', because: 'A repaired rim or spoke runs slow and guarded.', source: 'common-practice', limits: [{ kind: 'greatest-speed', value: { from: 'class.working-rate' }, sentence: 'No faster than {value}.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    } },
    gate: false, minutes: 5, cures: ['pulley.renew'], cautions: ['pinch', 'cracked-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }, { given: 'repaired', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'pulley.bore', title: 'Pulley on its shaft', question: 'Is the pulley tight in its bore or key?', part: 'pulley', rows: [27], families: EVERY,
    rule: { kind: 'seen', look: 'pulley.bore', answers: {
      tight: { grade: 'sound', because: 'Tight.', source: 'common-practice' },
      loose: { grade: 'limited', because: 'A loose pulley beats out its key.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['shaft.refit-keys'] },
    } },
    gate: false, minutes: 3, cures: ['shaft.refit-keys', 'clutch-pulley.bush'], cautions: ['pinch'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'clutch.facing-thickness', title: 'Thickness of the facing', question: 'How much facing is left?', part: 'clutch-facing', rows: [28], families: EVERY,
    onlyWhere: { look: 'clutch-facing.kind', answers: ['leather', 'woven', 'moulded'] },
    rule: { kind: 'measured', value: 'clutch-facing.thickness', worse: 'less', steps: [
      { grade: 'watch', from: '3/16 in', source: 'page-clutch', because: 'New leather is about 1/4 in.', cures: [] },
      { grade: 'limited', from: '1/8 in', source: 'page-clutch', because: 'Half is gone: rivets are near the surface and the cone near its bottom.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
    ] },
    gate: false, minutes: 10, cures: ['clutch.reline'], cautions: ['asbestos'],
    examples: [{ given: '0.187 in', grade: 'watch', stands: 'just under' }, { given: '3/16 in', grade: 'watch', stands: 'at' }, { given: '0.188 in', grade: 'sound', stands: 'just over' }, { given: '0.124 in', grade: 'limited', stands: 'just under' }, { given: '1/8 in', grade: 'limited', stands: 'at' }, { given: '0.126 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'clutch.proud', title: 'Cone proud of the pulley', question: 'Does the cone still stand proud when engaged?', part: 'clutch-facing', rows: [28], families: EVERY,
    onlyWhere: { look: 'clutch-facing.kind', answers: ['leather', 'wood', 'woven', 'moulded', 'iron'] },
    rule: { kind: 'measured', value: 'clutch-facing.proud', worse: 'less', steps: [
      { grade: 'watch', from: '3/16 in', source: 'page-clutch', because: 'About 3/8 in proud is usual with a good facing.', cures: [] },
      { grade: 'limited', from: '1/32 in', source: 'common-practice', because: 'The cone bottoms: it slips, and no adjustment helps.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 5, cures: ['clutch.reline'], cautions: ['asbestos'],
    examples: [{ given: '0.187 in', grade: 'watch', stands: 'just under' }, { given: '3/16 in', grade: 'watch', stands: 'at' }, { given: '0.188 in', grade: 'sound', stands: 'just over' }, { given: '0.031 in', grade: 'limited', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'clutch.state', title: 'Surface of the facing', question: 'Is the facing in the state that lets it slip and hold?', part: 'clutch-facing', rows: [28], families: EVERY,
    rule: { kind: 'seen', look: 'clutch-facing.state', answers: {
      'oiled-slips': { grade: 'sound', because: 'Lightly oiled, even, slips when eased.', source: 'page-clutch' },
      dry: { grade: 'watch', because: 'A dry facing grabs and runs on.', source: 'page-clutch', cures: ['clutch.wash'] },
      glazed: { grade: 'watch', because: 'A glazed facing slips, then grabs.', source: 'common-practice', cures: ['clutch.wash'] },
      flooded: { grade: 'watch', because: 'Too much oil slips and runs on.', source: 'page-clutch', cures: ['clutch.wash'] },
      uneven: { grade: 'watch', because: 'It bears in patches and chatters.', source: 'common-practice', cures: ['clutch.reline'] },
      rivets: { grade: 'limited', because: 'Rivets score the pulley and grab.', source: 'common-practice', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }], cures: ['clutch.reline'] },
    } },
    gate: false, minutes: 5, cures: ['clutch.wash', 'clutch.reline'], cautions: ['asbestos', 'solvent'],
    examples: [{ given: 'oiled-slips', grade: 'sound', stands: 'plain' }, { given: 'dry', grade: 'watch', stands: 'plain' }, { given: 'glazed', grade: 'watch', stands: 'plain' }, { given: 'flooded', grade: 'watch', stands: 'plain' }, { given: 'uneven', grade: 'watch', stands: 'plain' }, { given: 'rivets', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'clutch.asbestos', title: 'Asbestos in the facing', question: 'May the facing hold asbestos?', part: 'clutch-facing', rows: [28], families: EVERY,
    rule: { kind: 'seen', look: 'clutch-facing.asbestos', answers: {
      no: { grade: 'sound', because: 'Leather, wood, or a paper says so.', source: 'common-practice' },
      perhaps: { grade: 'watch', because: 'Treat it as asbestos until it is tested.', source: 'page-safety', cures: ['clutch.test-for-asbestos'] },
      yes: { grade: 'watch', because: 'It holds asbestos: leave it alone, or have it taken off as local rules ask.', source: 'page-safety', cures: [] },
    } },
    gate: false, minutes: 1, cures: ['clutch.test-for-asbestos', 'clutch.take-off-asbestos', 'clutch.reline'], cautions: ['asbestos'],
    examples: [{ given: 'no', grade: 'sound', stands: 'plain' }, { given: 'perhaps', grade: 'watch', stands: 'plain' }, { given: 'yes', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'clutch.play-much', title: 'Clutch pulley too loose', question: 'Is the clutch pulley loose on the shaft?', part: 'clutch-pulley', rows: [29], families: EVERY,
    rule: { kind: 'measured', value: 'clutch-pulley.play', worse: 'more', steps: [
      { grade: 'watch', from: '16 thou', source: 'owners-practice', because: '10 to 15 thou is good practice.', cures: [] },
      { grade: 'limited', from: '31 thou', source: 'common-practice', because: 'The pulley drags on the cone: it grabs and runs on.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
    ] },
    gate: false, minutes: 6, cures: ['clutch-pulley.bush'], cautions: ['pinch'],
    examples: [{ given: '15 thou', grade: 'sound', stands: 'just under' }, { given: '16 thou', grade: 'watch', stands: 'at' }, { given: '17 thou', grade: 'watch', stands: 'just over' }, { given: '30 thou', grade: 'watch', stands: 'just under' }, { given: '31 thou', grade: 'limited', stands: 'at' }, { given: '32 thou', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'clutch.play-little', title: 'Clutch pulley too tight', question: 'Has the clutch pulley play enough to let go?', part: 'clutch-pulley', rows: [29], families: EVERY,
    rule: { kind: 'measured', value: 'clutch-pulley.play', worse: 'less', steps: [
      { grade: 'watch', from: '9 thou', source: 'owners-practice', because: '10 to 15 thou is good practice: with less it lets go badly.' },
      { grade: 'limited', from: '4 thou', source: 'owners-practice', because: 'It binds on the shaft and keeps turning it.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 6, cures: ['clutch-pulley.ease'], cautions: ['pinch'],
    examples: [{ given: '8 thou', grade: 'watch', stands: 'just under' }, { given: '9 thou', grade: 'watch', stands: 'at' }, { given: '10 thou', grade: 'sound', stands: 'just over' }, { given: '3 thou', grade: 'limited', stands: 'just under' }, { given: '4 thou', grade: 'limited', stands: 'at' }, { given: '5 thou', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'clutch-pulley.sound', title: 'Sound of the clutch pulley', question: 'Is the pulley quiet when idling?', part: 'clutch-pulley', rows: [29], families: EVERY,
    rule: { kind: 'seen', look: 'clutch-pulley.sound', answers: {
      quiet: { grade: 'sound', because: 'Quiet.', source: 'common-practice' },
      rattles: { grade: 'watch', because: 'A worn bush or too much end float.', source: 'page-clutch', cures: ['clutch-pulley.bush'] },
      squeals: { grade: 'limited', because: 'A dry bush seizes.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '10 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'oil-every', value: { fixed: '10 min' }, sentence: 'Oil every joint every {value} of running.' }], cures: ['oil-ways.clear'] },
    } },
    gate: false, minutes: 3, cures: ['oil-ways.clear', 'clutch-pulley.bush'], cautions: ['stand-aside'],
    examples: [{ given: 'quiet', grade: 'sound', stands: 'plain' }, { given: 'rattles', grade: 'watch', stands: 'plain' }, { given: 'squeals', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'shipper.free', title: 'Yoke free', question: 'Does the yoke move free all round?', part: 'shipper', rows: [31], families: EVERY,
    rule: { kind: 'seen', look: 'shipper.free', answers: {
      free: { grade: 'sound', because: 'Free.', source: 'common-practice' },
      binds: { grade: 'limited', because: 'It can keep the clutch in with the foot off.', source: 'page-clutch', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'second-person', sentence: 'A second person stands at the isolator.' }] },
      bent: { grade: 'limited', because: 'A bent yoke pushes on one side.', source: 'page-clutch', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
    } },
    gate: false, minutes: 5, cures: ['shipper.free'], cautions: ['pinch'],
    examples: [{ given: 'free', grade: 'sound', stands: 'plain' }, { given: 'binds', grade: 'limited', stands: 'plain' }, { given: 'bent', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'shipper.saddle', title: 'Saddle worn', question: 'How deep is the groove in the saddle?', part: 'shipper', rows: [31], families: EVERY,
    rule: { kind: 'measured', value: 'shipper.saddle-groove', worse: 'more', steps: [
      { grade: 'watch', from: '1/64 in', source: 'common-practice', because: 'It begins to lose travel.' },
      { grade: 'limited', from: '1/32 in', source: 'page-clutch', because: 'The pedal goes floppy and lets go late.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
    ] },
    gate: false, minutes: 10, cures: ['shipper.pour-saddle'], cautions: [],
    examples: [{ given: '0.015 in', grade: 'sound', stands: 'just under' }, { given: '1/64 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'treadle.free-play', title: 'Free play at the pedal', question: 'Has the pedal free play?', part: 'treadle', rows: [32], families: EVERY,
    rule: { kind: 'measured', value: 'treadle.free-play', worse: 'less', steps: [
      { grade: 'watch', from: '3/16 in', source: 'common-practice', because: '1/4 to 1/2 in is good.' },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'Without free play the clutch is never quite out.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
    ] },
    gate: false, minutes: 2, cures: ['treadle.set'], cautions: [],
    examples: [{ given: '0.187 in', grade: 'watch', stands: 'just under' }, { given: '3/16 in', grade: 'watch', stands: 'at' }, { given: '0.188 in', grade: 'sound', stands: 'just over' }, { given: '0.062 in', grade: 'limited', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'treadle.pivot', title: 'Treadle pivot', question: 'How worn is the treadle pivot?', part: 'treadle', rows: [32], families: EVERY,
    rule: { kind: 'measured', value: 'treadle.pivot-wear', worse: 'more', steps: [
      { grade: 'watch', from: '1/64 in', source: 'common-practice', because: 'Control begins to go.' },
      { grade: 'limited', from: '1/32 in', source: 'page-clutch', because: 'Control is jumpy, and the treadle may not let go.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 4, cures: ['treadle.bush'], cautions: [],
    examples: [{ given: '0.015 in', grade: 'sound', stands: 'just under' }, { given: '1/64 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'treadle.guard', title: 'Treadle guarded', question: 'Is the treadle guarded against an accidental foot?', part: 'treadle', rows: [32, 40], families: EVERY,
    rule: { kind: 'seen', look: 'treadle.guard', answers: {
      guarded: { grade: 'sound', because: 'Guarded.', source: 'osha-1910-218' },
      'block-only': { grade: 'watch', because: 'A block helps only when somebody puts it there.', source: 'common-practice', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
      open: { grade: 'limited', because: 'A foot or a fallen bar starts it; for employers in the United States a guard is law.', source: 'osha-1910-218', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    } },
    gate: false, minutes: 1, cures: ['treadle.guard'], cautions: ['treadle-blocked'],
    examples: [{ given: 'guarded', grade: 'sound', stands: 'plain' }, { given: 'block-only', grade: 'watch', stands: 'plain' }, { given: 'open', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'treadle.control', title: 'Control by the treadle', question: 'Does the speed follow the foot?', part: 'treadle', rows: [32], families: EVERY,
    rule: { kind: 'seen', look: 'treadle.control', answers: {
      smooth: { grade: 'sound', because: 'Follows the foot.', source: 'common-practice' },
      jumpy: { grade: 'limited', because: 'The blow comes harder than was meant.', source: 'common-practice', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'named-operator', sentence: 'Only the operator named on the limits card.' }] },
      floppy: { grade: 'watch', because: 'Worn pivots and saddle.', source: 'common-practice', cures: ['treadle.bush'] },
    } },
    gate: false, minutes: 3, cures: ['treadle.bush', 'clutch.adjust'], cautions: [],
    examples: [{ given: 'smooth', grade: 'sound', stands: 'plain' }, { given: 'jumpy', grade: 'limited', stands: 'plain' }, { given: 'floppy', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'return.lift', title: 'Return of the treadle', question: 'Does the treadle come fully up by itself?', part: 'return-spring', rows: [33], families: EVERY,
    rule: { kind: 'seen', look: 'return-spring.lift', answers: {
      fully: { grade: 'sound', because: 'Fully, every time.', source: 'common-practice' },
      lazy: { grade: 'watch', because: 'A lazy return makes it run on.', source: 'page-clutch', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }], cures: ['return-spring.renew'] },
      'by-hand': { grade: 'limited', because: 'It runs on until somebody lifts the treadle.', source: 'page-clutch', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'second-person', sentence: 'A second person stands at the isolator.' }] },
    } },
    gate: false, minutes: 2, cures: ['return-spring.renew', 'shipper.free'], cautions: ['treadle-blocked'],
    examples: [{ given: 'fully', grade: 'sound', stands: 'plain' }, { given: 'lazy', grade: 'watch', stands: 'plain' }, { given: 'by-hand', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'brake.holds', title: 'Brake holds', question: 'Does the brake stop and hold the ram?', part: 'brake', rows: [34], families: EVERY,
    onlyWhere: { look: 'brake.fitted', answers: ['relied-on'] },
    rule: { kind: 'seen', look: 'brake.holds', answers: {
      holds: { grade: 'sound', because: 'Stops at once and holds, ten times in ten.', source: 'page-brake' },
      slips: { grade: 'stand-down', because: 'Tools go under the die on the strength of a brake that slips: a hand was held five minutes under a 100 lb ram.', source: 'page-brake' },
    } },
    gate: true, minutes: 3, cures: ['brake.reline'], cautions: ['block-ram', 'hands-out'],
    examples: [{ given: 'holds', grade: 'sound', stands: 'plain' }, { given: 'slips', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'brake.fitted', title: 'Brake', question: 'Is there a brake for work with tools under the die?', part: 'brake', rows: [34], families: EVERY,
    rule: { kind: 'seen', look: 'brake.fitted', answers: {
      none: { grade: 'watch', because: 'Without a brake it coasts a few strokes, which is normal, and nothing loose goes under the die.', source: 'page-brake', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
      fitted: { grade: 'sound', because: 'Fitted.', source: 'page-brake' },
      'relied-on': { grade: 'sound', because: 'Fitted and relied on: it must hold.', source: 'page-brake' },
    } },
    gate: false, minutes: 1, cures: ['brake.fit'], cautions: ['hands-out'],
    examples: [{ given: 'none', grade: 'watch', stands: 'plain' }, { given: 'fitted', grade: 'sound', stands: 'plain' }, { given: 'relied-on', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'brake.lining', title: 'Brake lining', question: 'How much brake lining is left?', part: 'brake', rows: [34], families: EVERY,
    onlyWhere: { look: 'brake.fitted', answers: ['fitted', 'relied-on'] },
    rule: { kind: 'measured', value: 'brake.lining', worse: 'less', steps: [
      { grade: 'watch', from: '1/8 in', source: 'common-practice', because: 'Thin; order lining.', cures: [] },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'Metal is near.', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
    ] },
    gate: false, minutes: 5, cures: ['brake.reline'], cautions: ['asbestos'],
    examples: [{ given: '0.124 in', grade: 'watch', stands: 'just under' }, { given: '1/8 in', grade: 'watch', stands: 'at' }, { given: '0.126 in', grade: 'sound', stands: 'just over' }, { given: '0.062 in', grade: 'limited', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'oil-ways.open', title: 'Oil ways', question: 'Does every oil way run?', part: 'oil-ways', rows: [39], families: EVERY,
    rule: { kind: 'seen', look: 'oil-ways.open', answers: {
      runs: { grade: 'sound', because: 'Open and runs.', source: 'common-practice' },
      greased: { grade: 'watch', because: 'Grease blocks holes made for oil.', source: 'page-bearings', limits: [{ kind: 'oil-way-first', sentence: 'Not before the oil way is open.' }] },
      blocked: { grade: 'limited', because: 'A blocked hole runs dry and seizes.', source: 'common-practice', limits: [{ kind: 'oil-way-first', sentence: 'Not before the oil way is open.' }] },
      none: { grade: 'sound', because: 'No oil hole here: oil it by hand.', source: 'common-practice' },
    } },
    gate: false, minutes: 15, cures: ['oil-ways.clear'], cautions: ['block-ram'],
    examples: [{ given: 'runs', grade: 'sound', stands: 'plain' }, { given: 'greased', grade: 'watch', stands: 'plain' }, { given: 'blocked', grade: 'limited', stands: 'plain' }, { given: 'none', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'oil-ways.blocked-share', title: 'Share of oil holes blocked', question: 'How many of the oil holes are blocked?', part: 'oil-ways', rows: [39], families: EVERY,
    rule: { kind: 'measured', value: 'oil-ways.blocked-share', worse: 'more', steps: [
      { grade: 'watch', from: '5 %', source: 'common-practice', because: 'After storage 10 to 30 % are usually blocked.' },
      { grade: 'limited', from: '25 %', source: 'common-practice', because: 'Too many joints run dry.', limits: [{ kind: 'oil-way-first', sentence: 'Not before the oil way is open.' }] },
    ] },
    gate: false, minutes: 15, cures: ['oil-ways.clear'], cautions: [],
    examples: [{ given: '4 %', grade: 'sound', stands: 'just under' }, { given: '5 %', grade: 'watch', stands: 'at' }, { given: '6 %', grade: 'watch', stands: 'just over' }, { given: '24 %', grade: 'watch', stands: 'just under' }, { given: '25 %', grade: 'limited', stands: 'at' }, { given: '26 %', grade: 'limited', stands: 'just over' }],
  },
];
