import { groundInputOf, groundOf, type Felt, type Ground, type GroundInput, type Response } from '../../derived/ground/index.ts';
import { OF_MOTION } from '../../derived/capacity/index.ts';
import type { PrintSystem } from '../../derived/index.ts';
import type { Block } from '../report/block.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import { keyWords } from '../work/key-words.ts';
import { blockToPour, type BlockToPour } from './block-to-pour.ts';
import { foundationSection } from './foundation-section.ts';
import { missingOf, type OutlookGround, type SheetParts } from './sheet-parts.ts';
import { shownOutcome, shownPlain, shownRange, shownRough } from './shown.ts';

const DRAWS = 300;
const READ = ['foundation.kind', 'foundation.thickness', 'foundation.length', 'foundation.width', 'foundation.edge-gap', 'hold-down-bolts.diameter', 'frame.base-length', 'frame.base-width', 'whole-machine.mass', 'anvil.mass'] as const;
const KIND: Readonly<Record<GroundInput['kind'], string>> = { 'own-block': 'a block of its own', slab: 'the slab of the shop', timber: 'timbers', belting: 'belting on the slab', soil: 'bare soil', trailer: 'a trailer or skid', 'not-known': 'nobody looked' };

/** What the hammer stands on, how far that moves, who may feel it, and what a block would be. */
export function groundSheet(ground: OutlookGround): SheetParts {
  const { picture, outlook } = ground;
  const { system } = picture;
  const input = groundInputOf({ family: picture.known.identity.family, values: new Map(Object.entries(outlook.values)) }, picture.known);
  const asked = 'kind' in input ? input : undefined;
  const answer = asked === undefined ? undefined : groundOf(asked, picture.provenance.seed, DRAWS);
  const found = answer?.state === 'known' ? answer : undefined;
  const pour = blockToPour(picture, outlook);
  const missing = missingOf(picture, READ);
  return {
    answer: found === undefined ? unknownAnswer(ground, answer, pour) : foundAnswer(found, system),
    measureFirst: missing.map((key) => onceItMayRun(picture, [key], `${keyWords(key)}.`)),
    body: () => [
      ...sectionBlocks(ground, asked, found, pour),
      ...(found === undefined ? [] : [...soilBlocks(found, system), ...ruleBlocks(found, system), ...feltBlocks(found, system)]),
      ...pourBlocks(pour, system),
      { kind: 'heading', level: 2, text: 'Bolts' },
      { kind: 'list', ordered: false, items: found?.bolts ?? ['Nip them again after one hour and after ten: they settle.'] },
    ],
    assumed: [...(found?.notKnown.map((one) => `${one[0]!.toUpperCase()}${one.slice(1)}.`) ?? []), ...(missing.includes('whole-machine.mass') ? ['Weight of the machine: usual for its class, not weighed.'] : [])],
    doubt: [
      ...(found === undefined ? [] : [found.reported, speedWords(ground)]),
      'The rule for what arrives at a distance comes from driven piles; no hammer was measured for it. Two houses at one distance may differ tenfold.',
      'Codes for foundations are written for industrial hammers. A block that misses every one of them may have served for decades, and one that meets them may still shake a neighbour on clay.',
    ],
    cautions: ['top-heavy', 'two-people'],
    defers: 'A sheet to talk over with whoever lays the block: an engineer where there is a neighbour, a cellar, a suspended floor or soft ground. Local building rules and rules on noise and vibration come first.',
    sources: ['barkan-foundations', 'barkan-soils', 'page-foundation', 'common-practice', 'rigid-body-mechanics', ...(found?.sources ?? [])],
  };
}

/** How fast the dies meet, which everything here grows with, and which of the two ways it comes from. */
function speedWords({ picture: { system }, outlook: { values } }: OutlookGround): string {
  const speed = values['capacity.impact-speed'];
  const from = speed?.formula === OF_MOTION ? 'from the motion of this hammer as simulated, within the doubt of its readings' : 'from the speed of the crank pin times the whip of a healthy hammer, since its motion gave no figure';
  return `The dies meet at ${shownOutcome(speed, system)}: ${from}.`;
}

function foundAnswer(found: Ground, system: PrintSystem): SheetParts['answer'] {
  const { overall, under, felt } = found;
  const next = felt.find((one) => one.distance >= 10) ?? felt[0];
  const moves = under.block === undefined ? overall.machine : overall.block;
  return {
    kind: 'answer', estimate: true, words: `${under.block === undefined ? 'The machine' : 'The block'} moves ${shownRange(moves, 'length', system)} under a full blow, at most`,
    sentence: `${under.block === undefined ? 'On the soil' : `The machine on it moves ${shownRange(overall.machine, 'length', system)}`}. It presses on the ground with ${shownRough(found.restPressure, 'pressure', system)} at rest.${next === undefined ? '' : ` At ${away(next.distance, system)} a neighbour: ${next.words}.`}`,
    rests: found.bySoil.length > 1 ? 'Nobody named the soil, so the interval spans soft clay to dense gravel; without damping, so it is an upper bound.' : 'Without damping, so it is an upper bound.',
  };
}

function unknownAnswer({ picture: { system } }: OutlookGround, answer: ReturnType<typeof groundOf> | undefined, pour: BlockToPour): SheetParts['answer'] {
  const block = `A block to talk about: ${size(pour, system)}, ${volumeWords(pour.volume, system)} of concrete.`;
  if (answer?.state === 'does-not-apply') return { kind: 'answer', estimate: true, words: 'No foundation', sentence: `${answer.because}. ${block}`, rests: 'By the class; see the drawing.' };
  const because = answer?.state === 'refused' ? answer.problems.map((problem) => problem.sentence).join('; ') : answer?.state === 'not-known' ? `still to be read: ${answer.missing.map(keyWords).join('; ')}` : 'too little was read';
  return { kind: 'answer', estimate: true, words: 'How far it moves is not known yet', sentence: `${because[0]!.toUpperCase()}${because.slice(1)}. ${block}`, rests: 'The block is sized by rules for its class and foot, not from what lies under this hammer.' };
}

const size = ({ length, width, thickness }: { readonly length: number; readonly width: number; readonly thickness: number }, system: PrintSystem): string => [length, width, thickness].map((one) => lengthWords(one, system)).join(' × ');
const TWO_INCHES = 0.0508;
const lengthWords = (metres: number, system: PrintSystem): string => shownPlain(metres, 'length', system, { resolution: system === 'inch' ? 0.0254 : 0.01 });
const boltWords = (metres: number, system: PrintSystem): string => shownPlain(metres, 'length', system, { resolution: system === 'inch' ? 0.0254 / 16 : 0.001 });
/** Concrete is ordered by the tenth of a yard or of a cubic metre. */
const volumeWords = (volume: number, system: PrintSystem): string => shownPlain(volume, 'volume', system, system === 'inch' ? { unit: 'yd3', resolution: 0.0764554857984 } : { unit: 'm3', resolution: 0.1 });
/** Distances of a neighbour as he would pace them. */
const away = (metres: number, system: PrintSystem): string => (system === 'inch' ? `${shownPlain(metres, 'length', system, { unit: 'ft', resolution: (metres < 20 ? 1 : 10) * 0.3048 })} (${metres} m)` : shownPlain(metres, 'length', system, { unit: 'm', resolution: 1 }));

function sectionBlocks({ picture, width }: OutlookGround, asked: GroundInput | undefined, found: Ground | undefined, pour: BlockToPour): readonly Block[] {
  const { system } = picture;
  const under = found?.under.block;
  const shown = under ?? pour;
  const drawn = foundationSection({
    length: shown.length, thickness: shown.thickness, foot: pour.foot.length, gap: asked?.edgeGap, bolt: asked?.boltDiameter, estimate: under === undefined, slab: asked?.kind === 'slab' || asked?.kind === 'belting', system, width: width ?? 'sheet',
    words: under === undefined ? 'Block to talk about' : found?.under.block?.words ?? '',
  });
  return [
    { kind: 'heading', level: 2, text: under === undefined ? 'A block to talk about, in section' : 'What it stands on, in section' },
    { kind: 'figure', svg: drawn.svg, words: drawn.words, tallest: 54, caption: under === undefined ? 'Not what lies there: a block by the rules for its class and foot, dashed since nobody read it. Along the base; sizes in the table.' : `Along the base, to scale: ${found?.under.block?.words ?? ''}. ${asked === undefined ? '' : `Found: ${KIND[asked.kind]}.`}` },
  ];
}

function soilBlocks(found: Ground, system: PrintSystem): readonly Block[] {
  const moves = (of: Response['machine']): string => shownRange(of, 'length', system);
  return [
    { kind: 'heading', level: 2, text: 'How far it moves, by ground' },
    { kind: 'table', caption: 'Under a full blow, both modes together, undamped; handbooks print the lower mode alone', dense: true, columns: ['Ground', 'Machine', 'Block', 'Block, lower mode', 'Slower beat', 'Rest load of what it carries'], rows: found.bySoil.map(({ soil, response, restShare }) => ({
      cells: [soil.words, moves(response.machine), moves(response.block), moves(response.blockLowerMode), shownRange(response.lowerFrequency, 'frequency', system), `${(100 * restShare.ofMost).toFixed(0)} to ${(100 * restShare.ofLeast).toFixed(0)} %`],
    })) },
    ...(found.pad === undefined ? [] : [{ kind: 'paragraph', text: `Between foot and block: ${shownRange(found.pad.stress, 'pressure', system)} against about ${shownRough(found.pad.allowed, 'pressure', system)}.` } as const]),
  ];
}

function ruleBlocks(found: Ground, system: PrintSystem): readonly Block[] {
  if (found.rules.length === 0) return [];
  const print = (value: number, dimension: 'ratio' | 'length', id: string): string => (dimension === 'ratio' ? value.toFixed(1) : id === 'bolts' || id === 'edge-gap' ? boltWords(value, system) : lengthWords(value, system));
  // A code that speaks in metres is rounded to the side that it asks for, and says its own figure behind.
  const asked = (one: Ground['rules'][number]): string =>
    one.dimension === 'length' && system === 'inch' && one.source.startsWith('IS ') ? `${lengthWords(Math.ceil(one.want / TWO_INCHES - 1e-9) * TWO_INCHES, system)} (${shownPlain(one.want, 'length', 'metric', { unit: 'mm', resolution: 1e-3 })})` : print(one.want, one.dimension, one.id);
  return [{ kind: 'table', caption: 'Against what codes and owners ask', dense: true, columns: ['Rule', 'It has', 'It asks', 'Meets it', 'From'], rows: found.rules.map((one) => ({ cells: [ruleWords(one.id, one.rule), print(one.have, one.dimension, one.id), asked(one), one.meets ? 'yes' : 'no', one.source.replace('; 5/8 in read', '; the smallest read')] })) }];
}

/** Rules that are named by their inches in the trade are named by their matter here; the figures stand beside them in the reader's units. */
const ruleWords = (id: string, rule: string): string => ({ 'thickness-practice': 'thickness laid under a small hammer', 'edge-gap': 'soft joint between block and floor' })[id] ?? rule;

function feltBlocks(found: Ground, system: PrintSystem): readonly Block[] {
  if (found.felt.length === 0) return [];
  const speed = (value: number): string => shownRough(value, 'velocity', system, system === 'inch' ? 'in/s' : 'mm/s');
  return [
    { kind: 'heading', level: 2, text: 'Next door' },
    { kind: 'table', caption: 'Greatest speed of the ground at a distance, from firm dry ground to soft wet clay, and what people say of it', dense: true, columns: ['Away', 'Speed', 'Said of it'], rows: found.felt.map((one: Felt) => ({ cells: [away(one.distance, system), `${speed(one.least)} to ${speed(one.most)}`, one.words] })) },
  ];
}

function pourBlocks(pour: BlockToPour, system: PrintSystem): readonly Block[] {
  return [
    { kind: 'heading', level: 2, text: 'If a block is to be poured' },
    { kind: 'facts', rows: [
      ['Size, estimate', size(pour, system)], ['Concrete', `${volumeWords(pour.volume, system)}, about ${shownRough(pour.mass, 'mass', system)}`],
      ['Why so large', pour.because], ['Under it', 'undisturbed or compacted ground, level, never fill that was thrown in yesterday'],
      ['In it', `reinforcement both ways with ${boltWords(0.0381, system)} of cover, concrete of ${shownPlain(27_579_028, 'pressure', system, system === 'inch' ? { unit: 'psi', resolution: 6894.757 * 500 } : { unit: 'MPa', resolution: 1e6 })} or better, no water added (read on public pages)`],
      ['Round it', `a soft joint of ${boltWords(0.0127, system)} to the floor, so that the floor does not ring with it`], ['Bolts', `${boltWords(pour.bolt, system)}, ${pour.boltWords}`],
    ] },
  ];
}
