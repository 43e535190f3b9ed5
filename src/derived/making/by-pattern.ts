import type { NotMade, PatternKind } from './part-to-make.ts';

interface Pattern {
  readonly kind: PatternKind;
  readonly title: string;
  readonly because: string;
}

/** Jobs whose part has no drawing here: made to the old one. What is taken to the machinist, and what is read on it first. Common practice, no source. */
const PATTERNS: Readonly<Record<string, Pattern>> = {
  'shipper.free': { kind: 'shipper-joint', title: 'Pins and bushes of the shipper', because: 'No drawing: take yoke, rod and old pins to the machinist. Read on them: each pin where it does not rub, each hole at two angles, each eye along its pin. Pins as the old ones, bushes bored for a free push fit; the slot of the saddle pin stays loose.' },
  'links.renew': { kind: 'toggle-links', title: 'Toggle links', because: 'No drawing: take the old pair to the machinist, laid on one another. Read on them: holes from centre to centre, bores, thickness, width at the thinnest place. Both are bored in one setting.' },
  'arms.renew': { kind: 'toggle-arms', title: 'Toggle arms', because: 'No drawing: take the old pair to the machinist as patterns. Read on them: all holes from centre to centre, bores, thickness at each boss, where the spring bears. Both are bored in one setting.' },
  'rod.renew': { kind: 'connecting-rod', title: 'Connecting rod', because: 'No drawing: take the old rod with both ends and nuts to the machinist. Read on it: pin to pin as set, both threads over the crests with their pitch and hand, and how much thread is in each end; one diameter at least.' },
  'spring-bolt.renew': { kind: 'spring-bolt', title: 'Spring bolt', because: 'No drawing: bought or turned to the old one. Read on it: thread over the crests, pitch and hand, length under the head, length of thread, and the width of the head.' },
  'bow.tighten-clip': { kind: 'bow-clip', title: 'Clip of the bow', because: 'No drawing: bolts and plates as the old ones. Read on them: bolt over the crests, its pitch, length under the head; plate thickness, width and holes from centre to centre. Looked at first: a clip that is only slack is tightened.' },
  'guide.retain-shims': { kind: 'shim-retainer', title: 'Retainer of the guide shims', because: 'No drawing: strip of 1/8 by 3/4 in (3 by 20 mm), as long as the pack is wide and 1 in (25 mm) more, two screws into the guide beyond the pack, marked through at the machine.' },
  'brake.fit': { kind: 'brake-band', title: 'Brake with band, lining and lever', because: 'No drawing: built to the drum. Read there: diameter and face of flywheel or clutch drum, room beside it, and where on the frame an anchor can be bolted; never drilled near a crack.' },
};

/** Parts of the open jobs that are made to the old one, each with what to read on it. */
export const byPattern = (jobs: readonly string[]): readonly NotMade[] => jobs.flatMap((job): readonly NotMade[] => {
  const pattern = PATTERNS[job];
  return pattern === undefined ? [] : [{ state: 'by-pattern', ...pattern }];
});
