import { EVERY, GUIDED } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for castings and ways. */
export const CASTINGS_CRITERIA: readonly Criterion[] = [
  {
    id: 'frame.crack', title: 'Crack in the frame', question: 'Is the load path of the frame whole?', part: 'frame', rows: [35], families: EVERY,
    rule: { kind: 'seen', look: 'frame.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and no crack found in throat, spine, seat walls or lugs.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line in the load path counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      present: { grade: 'stand-down', because: 'Every blow opens the throat: a crack in the load path grows without warning.', source: 'common-practice', cures: ['frame.dye-test', 'frame.stitch'] },
      repaired: { grade: 'limited', because: 'An old repair that holds is declared and worked gently, and watched.', source: 'page-frame', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }], cures: ['frame.have-repair-judged'] },
    } },
    gate: true, minutes: 12, cures: ['frame.dye-test', 'frame.stitch', 'frame.have-repair-judged'], cautions: ['cracked-casting', 'hot-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }, { given: 'repaired', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'frame.repair', title: 'Old repair of the frame', question: 'What repair does the frame carry, and what is it worth?', part: 'frame', rows: [35], families: EVERY,
    rule: { kind: 'seen', look: 'frame.repair', answers: {
      none: { grade: 'sound', because: 'No repair found.', source: 'common-practice' },
      plated: { grade: 'limited', because: 'Plates hold a broken spine together and hide how far it has gone.', source: 'page-frame', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }], cures: ['frame.have-repair-judged'] },
      stitched: { grade: 'watch', because: 'Stitching is a good repair; look at its line every year.', source: 'page-frame', cures: [] },
      brazed: { grade: 'watch', because: 'Braze holds well where it is sound; look along its edges every year.', source: 'page-frame', cures: [] },
      welded: { grade: 'limited', because: 'Weld on cast iron often cracks again beside the bead.', source: 'page-frame', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }], cures: ['frame.have-repair-judged'] },
      filler: { grade: 'watch', because: 'Filler and fresh paint hide seams: take them off before trusting the casting.', source: 'page-frame', cures: ['frame.dye-test'] },
    } },
    gate: false, minutes: 5, cures: ['frame.have-repair-judged', 'frame.dye-test'], cautions: ['cracked-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'plated', grade: 'limited', stands: 'plain' }, { given: 'stitched', grade: 'watch', stands: 'plain' }, { given: 'brazed', grade: 'watch', stands: 'plain' }, { given: 'welded', grade: 'limited', stands: 'plain' }, { given: 'filler', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'frame.ring', title: 'Ring of the casting', question: 'Does the casting ring alike all over?', part: 'frame', rows: [35], families: EVERY,
    rule: { kind: 'seen', look: 'frame.ring', answers: {
      clear: { grade: 'sound', because: 'Rings alike all over.', source: 'common-practice' },
      dull: { grade: 'watch', because: 'A dull place may be a crack, or a loose bolt or guard: look with dye.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['frame.dye-test'], cautions: ['cracked-casting'],
    examples: [{ given: 'clear', grade: 'sound', stands: 'plain' }, { given: 'dull', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'ways.square', title: 'Ways square to the seat', question: 'Are the ways square to the die seat?', part: 'ways', rows: [15], families: GUIDED,
    rule: { kind: 'measured', value: 'ways.square', worse: 'more', steps: [
      { grade: 'watch', from: '0.005 in', source: 'common-practice', because: 'Good practice is 0.003 in in one foot; this is more and shows in the work.' },
      { grade: 'limited', from: '1/32 in', source: 'page-guide', because: 'The blow falls on one edge and levers on keys and lips.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }] },
    ] },
    gate: false, minutes: 20, cures: ['ways.true'], cautions: ['block-ram'],
    examples: [{ given: '0.004 in', grade: 'sound', stands: 'just under' }, { given: '0.005 in', grade: 'watch', stands: 'at' }, { given: '0.006 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'ways.state', title: 'Surface of the ways', question: 'What are the ways like?', part: 'ways', rows: [15], families: GUIDED,
    rule: { kind: 'seen', look: 'ways.state', answers: {
      smooth: { grade: 'sound', because: 'Smooth and oily.', source: 'common-practice' },
      scored: { grade: 'watch', because: 'Scored ways eat ram and shims; find the grit and the dry oil hole.', source: 'common-practice' },
      rusted: { grade: 'watch', because: 'Rust on the ways is an abrasive: clean it before anything is tightened.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['ways.polish'], cautions: ['block-ram'],
    examples: [{ given: 'smooth', grade: 'sound', stands: 'plain' }, { given: 'scored', grade: 'watch', stands: 'plain' }, { given: 'rusted', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'nameplate.paint', title: 'What the paint hides', question: 'Are oil holes, seams and marks clear of paint?', part: 'nameplate', rows: [51], families: EVERY,
    rule: { kind: 'seen', look: 'nameplate.paint', answers: {
      clear: { grade: 'sound', because: 'Oil holes, seams and marks are clear.', source: 'common-practice' },
      buries: { grade: 'watch', because: 'Painted-over oil holes run dry, and painted-over seams hide cracks.', source: 'common-practice' },
      fresh: { grade: 'watch', because: 'Fresh paint all over shows nothing of the iron: look at it bare where it carries load.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['nameplate.clear'], cautions: [],
    examples: [{ given: 'clear', grade: 'sound', stands: 'plain' }, { given: 'buries', grade: 'watch', stands: 'plain' }, { given: 'fresh', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'nameplate.marks', title: 'Casting marks', question: 'Are the marks of the casting read?', part: 'nameplate', rows: [51], families: EVERY,
    rule: { kind: 'seen', look: 'nameplate.marks', answers: {
      read: { grade: 'sound', because: 'Read and photographed.', source: 'common-practice' },
      part: { grade: 'watch', because: 'Read what is left: parts are found by these marks.', source: 'common-practice' },
      none: { grade: 'watch', because: 'Without marks, as-made heights have to come from a like machine.', source: 'common-practice', cures: [] },
    } },
    gate: false, minutes: 3, cures: ['nameplate.clear'], cautions: [],
    examples: [{ given: 'read', grade: 'sound', stands: 'plain' }, { given: 'part', grade: 'watch', stands: 'plain' }, { given: 'none', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'anvil.ratio', title: 'Anvil against ram', question: 'Is the anvil heavy enough for the ram?', part: 'anvil', rows: [37], families: EVERY,
    rule: { kind: 'measured', value: 'capacity.anvil-ratio', worse: 'less', steps: [
      { grade: 'watch', from: '9', source: 'common-practice', because: 'The trade’s goal is 10 to 15 times the ram; a lighter anvil wastes part of the blow.', cures: [] },
      { grade: 'limited', from: '5', source: 'page-foundation', because: 'A small part of the blow reaches the work; the rest shakes the ground.', limits: [{ kind: 'greatest-bar', value: { from: 'capacity.largest-bar' }, sentence: 'No bar thicker than {value}.' }] },
    ] },
    gate: false, minutes: 15, cures: ['anvil.add-mass'], cautions: [],
    examples: [{ given: '8', grade: 'watch', stands: 'just under' }, { given: '9', grade: 'watch', stands: 'at' }, { given: '10', grade: 'sound', stands: 'just over' }, { given: '4', grade: 'limited', stands: 'just under' }, { given: '5', grade: 'limited', stands: 'at' }, { given: '6', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'anvil.tight', title: 'Anvil in its bed', question: 'Does the anvil sit tight?', part: 'anvil', rows: [37], families: EVERY,
    rule: { kind: 'seen', look: 'anvil.tight', answers: {
      tight: { grade: 'sound', because: 'Tight in its bed.', source: 'common-practice' },
      shifts: { grade: 'limited', because: 'An anvil that shifts loses the datum of every die height.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
    } },
    gate: false, minutes: 3, cures: ['anvil.bed'], cautions: ['top-heavy'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'shifts', grade: 'limited', stands: 'plain' }],
  },
];
