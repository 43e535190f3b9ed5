import type { Caution } from './job.ts';

/** Cautions, printed where the work is. They add to local law and licensed practice and never stand in for them. */
export const CAUTIONS: readonly Caution[] = [
  { id: 'isolate', words: 'Cut the power off, lock it, keep the key, throw the belt off, and try to start it before you trust it. Local rules on lock-out come first.', source: 'osha-1910-147' },
  { id: 'block-ram', words: 'Block the ram on sound hardwood before a hand goes near the dies: a 4 by 4 in hardwood prop carries 8,000 lb up to 44 in long. A ram of 100 lb once held a hand for five minutes.', source: 'osha-table-o-11' },
  { id: 'hands-out', words: 'No hand, rag or finger between the dies, ever: tongs, a long brush or a magnet instead.', source: 'osha-1910-218' },
  { id: 'no-cold-blow', words: 'Never die on die cold, and no air blows on hard dies: seat, keys and linkage take the whole blow.', source: 'owners-practice' },
  { id: 'least-thickness', words: 'Nothing thinner than the card says, and never less than 3/8 in where the linkage comes near the guide.', source: 'owners-practice' },
  { id: 'drift', words: 'Keys are driven with a restrained drift of steel that does not splinter, with a face shield, nobody in line; one firm blow, not taps.', source: 'page-keys' },
  { id: 'dry-dovetail', words: 'Dovetails and keys stay dry. A top die has been thrown across a shop by oil in its dovetail.', source: 'page-keys' },
  { id: 'spring-unload', words: 'Let the spring’s preload off in small turns, standing aside, before any pin or nut of the linkage is opened.', source: 'page-linkage' },
  { id: 'stand-aside', words: 'Stand aside of the plane of spring and linkage, with a guard between: that is where a broken part goes.', source: 'page-safety' },
  { id: 'asbestos', words: 'Old facings and linings may hold asbestos: no dry brushing, no compressed air; wipe wet, filtered vacuum, respirator. A laboratory can tell; local rules on disposal apply.', source: 'page-safety' },
  { id: 'babbitt-lead', words: 'Babbitt holds lead: no dust, no food nearby, wash hands, ventilate.', source: 'page-bearings' },
  { id: 'molten-metal', words: 'Molten babbitt and the least damp explode: everything dry and preheated, face shield, sleeves, boots covered, a second person.', source: 'page-bearings' },
  { id: 'top-heavy', words: 'Top-heavy: several hammers have gone over. Know the weight, sling low through the throat or bolt it to a platform, take anvil and body apart where they part, and use a rigger above 2,000 lb.', source: 'page-safety' },
  { id: 'electrician', words: 'Electrical work is for a licensed person and follows the local code. The third leg of a converter is live whenever it turns.', source: 'page-safety' },
  { id: 'hearing', words: 'Hearing: plugs and muffs together near a working hammer, for everybody in the room.', source: 'page-safety' },
  { id: 'eyes', words: 'Eyes, boots, natural-fibre clothing, no rings and no loose sleeves.', source: 'page-safety' },
  { id: 'tongs', words: 'Never a finger between the reins, never the reins in line with the body, and never two tools and the work in two hands.', source: 'page-safety' },
  { id: 'treadle-blocked', words: 'A block under the treadle whenever nobody stands at it; no bystanders, no children.', source: 'page-safety' },
  { id: 'pinch', words: 'Belt, pulley, crank plate and linkage take a sleeve faster than a hand can follow.', source: 'osha-1910-219' },
  { id: 'cracked-casting', words: 'A cracked casting is not tried gently. It is looked at by somebody who mends castings.', source: 'common-practice' },
  { id: 'hot-casting', words: 'Heat on cast iron only by somebody who knows it: slow, even, and cooled slowly, or a new crack opens beside the old.', source: 'page-frame' },
  { id: 'two-people', words: 'Not alone: a second person at the isolator for the first runs, and a telephone in reach.', source: 'page-safety' },
  { id: 'solvent', words: 'Solvent: no flame, no heater, open doors, rags into a closed tin.', source: 'common-practice' },
  { id: 'record', words: 'Write it down: date, who, which machine, what was done. Employers must, by law, in many places.', source: 'osha-1910-218' },
];
