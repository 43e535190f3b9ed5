import type { NotMade, PatternKind } from './part-to-make.ts';

interface Pattern {
  readonly kind: PatternKind;
  readonly title: string;
  readonly because: string;
}

/** Jobs whose part has no drawing here: made to the old one, built to its place, or bought by its size; and what is read first. Common practice, no source. */
const PATTERNS: Readonly<Record<string, Pattern>> = {
  'shipper.free': { kind: 'shipper-joint', title: 'Pins and bushes of the shipper', because: 'Made to the old ones: take yoke, rod and old pins to the machinist. Read on them: each pin where it does not rub, each hole at two angles, each eye along its pin. Pins as the old ones, bushes bored for a free push fit; the slot of the saddle pin stays loose.' },
  'links.renew': { kind: 'toggle-links', title: 'Toggle links', because: 'Made to the old pair: take it to the machinist, laid on one another. Read on them: holes from centre to centre, bores, thickness, width at the thinnest place. Both are bored in one setting.' },
  'arms.renew': { kind: 'toggle-arms', title: 'Toggle arms', because: 'Made to the old pair: take it to the machinist as patterns. Read on them: all holes from centre to centre, bores, thickness at each boss, where the spring bears. Both are bored in one setting.' },
  'rod.renew': { kind: 'connecting-rod', title: 'Connecting rod', because: 'Made to the old one: take the rod with both ends and nuts to the machinist. Read on it: pin to pin as set, both threads over the crests with their pitch and hand, and how much thread is in each end; one diameter at least.' },
  'spring-bolt.renew': { kind: 'spring-bolt', title: 'Spring bolt', because: 'Bought, or turned to the old one. Read on it: thread over the crests, pitch and hand, length under the head, length of thread, and the width of the head.' },
  'bow.tighten-clip': { kind: 'bow-clip', title: 'Clip of the bow', because: 'Made to the old one, bolts and plates. Read on them: bolt over the crests, its pitch, length under the head; plate thickness, width and holes from centre to centre. Looked at first: a clip that is only slack is tightened.' },
  'guide.retain-shims': { kind: 'shim-retainer', title: 'Retainer of the guide shims', because: 'Fitted new, to its place: strip of 1/8 by 3/4 in (3 by 20 mm) over each end of each pack, as long as the pack is wide and 1 in (25 mm) more, each with two screws of 1/4 in (6 mm), into the guide beyond the pack, marked through at the machine. Read first: width of the pack, and how much iron stands beside it and behind it for the screws.' },
  'brake.fit': { kind: 'brake-band', title: 'Brake with band, lining and lever', because: 'Fitted new, to its place: built to the drum. Read there, before band, lining, lever or spring is ordered: diameter and face of flywheel or clutch drum, room beside it, how far the treadle rises, and where on the frame an anchor can be bolted; never drilled near a crack.' },
  'brake.reline': { kind: 'brake-lining', title: 'Lining of the brake', because: 'Bought by its size. Read first: width of the band, its length where it bears, thickness of the lining at an unworn end, size and spacing of the rivets. What the old lining is made of is tested before it is touched.' },
  'return-spring.renew': { kind: 'return-spring', title: 'Return spring of the treadle', because: 'Bought by its load, after the pivots run free. Read first: length between its hooks with the treadle up and with it fully down; with a spring balance in the place of the spring, the pull that just brings the treadle fully up, and that with the treadle down; the room across it, and the hooks. Ask for one that pulls as much or a little more at the first length and is not stretched out at the second.' },
  'helve.renew-bolts': { kind: 'head-bolts', title: 'Head and clamp bolts of the helve', because: 'Bought or turned as a set, by their sizes. Read first on each: diameter over the crests, pitch, length under the head, length of thread, width of the head, and the hole that it goes through. Ask for steel of a known grade, ISO 898-1 class 8.8 or SAE grade 5, not harder, with lock nuts and hard washers; which head and clamp each belongs to is marked before it comes out.' },
  'guide.renew-bolts': { kind: 'guide-bolts', title: 'Bolts of the ram guide', because: 'Bought as a set, by their sizes. Read first: diameter over the crests, pitch, length under the head, how many; class 8.8 or grade 5, hard washers, lock nuts.' },
  'caps.renew-bolts': { kind: 'cap-bolts', title: 'Bolts of the bearing caps', because: 'Bought as a set, by their sizes. Read first: diameter over the crests, pitch, length under the head or of the stud, depth of thread in the frame, how many; class 8.8 or grade 5.' },
};

/** Parts of the open jobs that have no drawing, each with what to read first. */
export const byPattern = (jobs: readonly string[]): readonly NotMade[] => jobs.flatMap((job): readonly NotMade[] => {
  const pattern = PATTERNS[job];
  return pattern === undefined ? [] : [{ state: 'by-pattern', ...pattern }];
});
