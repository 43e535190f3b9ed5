import type { AssumedWeight, SurveySpec } from '../../derived/motion/index.ts';
import { placeOf, type LinkageFamily } from '../../hammer/index.ts';
import { BEAT_WORDS } from './class-words.ts';
import { settingWords } from './setting-words.ts';
import { shownShare } from './shown.ts';

/** Where an assumed value is read at the hammer, in order of what is quickest; the first that the family has counts. */
const READ_AT: Readonly<Record<string, readonly string[]>> = {
  throw: ['crank.throw'], rodLength: ['connecting-rod.length'], frameHeight: ['upper-die.rest-gap'], ramMass: ['ram.mass'], driveSpeed: ['running.rate'], lostMotion: ['toggle-pins.play', 'helve.pivot-play'],
  jointStop: ['ram-guide.hang-room'], upperStop: ['ram-guide.carrier-room'], ledgeClearance: ['ram-guide.linkage-clearance'], pullOutTorque: ['motor.power'], stackLoss: ['upper-die.height'], anvilRatio: ['anvil.mass'],
  'suspension.link': ['toggle-links.length'], 'suspension.lowerLimb': ['toggle-arms.length'], 'suspension.upperLimb': ['toggle-arms.upper-length'], 'suspension.strap': ['bow-spring.strap-length'], 'suspension.cushionRadius': ['helve.cushion-length'], 'suspension.rate': ['coil-spring.wire'], 'suspension.preCompression': ['coil-spring.installed-length'], 'suspension.travel': ['coil-spring.coils'], 'suspension.sag': ['coil-spring.free-length'],
  'suspension.tipRate': ['bow-spring.leaf-thickness'], 'suspension.headRadius': ['helve.front-length'], 'suspension.rodRadius': ['helve.rear-length'],
};
/** What the person or the work decides at each blow; nobody can read it off the hammer. */
const CHOSEN: readonly string[] = ['treadle', 'workThickness', 'contact.restitution', 'restitution'];
/** A value that moves the blow by less than this, and leaves the beat, is not worth a walk to the hammer. */
const LITTLE = 0.02;

/** How much of the reckoning was read, and the one thing to read next. */
export interface RestsOn {
  readonly words: string;
  /** Absent where nothing that is left to read changes much. */
  readonly next?: { readonly place: string; readonly part: string; readonly name: string; readonly words: string };
}

/**
 * How many of the values behind a reckoned motion were assumed, and which of them is best read next.
 * @param weights from `weighAssumed`; leave out while they are being worked out
 */
export function restsOn(survey: SurveySpec, family: LinkageFamily, weights?: readonly AssumedWeight[]): RestsOn {
  const own = (name: string): string => (name === 'restGap' ? 'frameHeight' : name);
  const read = new Set(survey.used.map((one) => own(one.name)));
  const assumed = survey.assumed.filter((name) => !CHOSEN.includes(name) && !read.has(name));
  const all = read.size + assumed.length;
  const words = assumed.length === 0 ? `All ${all} values that this rests on were read on this hammer.` : `${assumed.length} of the ${all} values that this rests on were not read on this hammer: they are the usual ones of its class.`;
  if (weights === undefined) return { words };
  const heavy = weights.filter((one) => !CHOSEN.includes(one.name) && (one.swing >= LITTLE || one.becomes !== undefined));
  const readable = heavy.flatMap((weight) => {
    const found = (READ_AT[weight.name] ?? []).map((id) => placeOf(id)).find((one) => one !== undefined && one.part.families.includes(family));
    return found === undefined ? [] : [{ weight, found }];
  })[0];
  const [first] = heavy;
  const hidden = first !== undefined && first !== readable?.weight ? first : undefined;
  const unread = hidden === undefined ? '' : ` ${readable === undefined ? 'Most' : 'More still'} hangs on the ${settingWords(hidden.name)}, for which there is no place to read it yet.`;
  if (readable === undefined) return { words: `${words}${unread}` };
  const { weight, found } = readable;
  return {
    words,
    next: { place: found.place.id, part: found.part.id, name: found.place.name, words: `Of those that can be read, the ${settingWords(weight.name)} matters most: by itself ${doesWords(weight)}.${unread}` },
  };
}

function doesWords({ swing, becomes }: AssumedWeight): string {
  const moves = swing > 1 ? 'it can more than double the blow' : swing >= LITTLE ? `it can move the blow by ${shownShare(swing)}` : '';
  const turns = becomes === undefined ? '' : `it can turn the beat into another (${BEAT_WORDS[becomes].words})`;
  return [turns, moves].filter((one) => one !== '').join(', and ');
}
