import type { Finding } from '../condition/index.ts';
import { MOTOR_JOB, motorToFit } from '../power/index.ts';
import type { PrintSystem } from '../print-system.ts';
import { GRIND_JOB } from '../stack/index.ts';
import type { Known } from '../survey/index.ts';
import { isOpen, type Worksheet } from '../worksheet/index.ts';
import { makeBelt } from './belt.ts';
import { makeBowStraps } from './bow-strap.ts';
import { makeBowLeaf } from './bow-leaf.ts';
import { makeBowClipBushing, makeBowEyeBushings, makeClutchPulleyBushing, makeCrossheadBushing, makeHelveBushings, makeRodBushing, makeTreadleBushings } from './bushings.ts';
import { byPattern } from './by-pattern.ts';
import { makeCountershaftDriven, makeCountershaftDriver, wantsCountershaft } from './countershaft.ts';
import { makeCrankPin } from './crank-pin.ts';
import { makeLowerDie, makeUpperDie } from './die-blank.ts';
import type { Values } from './figure.ts';
import { gapLines, gapPlanOf } from './gap-lines.ts';
import { makeFillerPlate } from './filler-plate.ts';
import { makeGuideShims } from './guide-shims.ts';
import { makeHelveCushions } from './helve-cushion.ts';
import { makeBowClipPin, makeBowEyePins, makeCrossheadPin, makeHelvePins, makeTreadlePins } from './joint-pins.ts';
import { makeLowerKey, makeUpperKey } from './key.ts';
import type { MakingContext } from './making-context.ts';
import { makeMotorPulley } from './motor-pulley.ts';
import type { Making, PartKind } from './part-to-make.ts';
import { makeToggleBushings, makeTogglePins } from './pins.ts';
import { ramHeld } from './ram-held.ts';
import { makeRamProp } from './ram-prop.ts';
import { makeSoleTimbers } from './sole-timbers.ts';
import { inShopUnits } from './shop-units.ts';
import { makeCoilSpring } from './spring-order.ts';
import { makeThrustWasher } from './thrust-washer.ts';

/** What of a picture the parts are worked out from; a picture is one. */
export interface MakingGround {
  readonly known: Known;
  readonly values: Values;
  readonly findings: readonly Finding[];
  readonly worksheet: Worksheet;
  readonly system: PrintSystem;
}

export type Maker = (values: Values, known: Known, context?: MakingContext) => Making;

/** Every part that can be worked out, in the order of the datum chain. */
export const MAKERS: Readonly<Record<PartKind, Maker>> = {
  'ram-prop': makeRamProp, 'sole-timbers': makeSoleTimbers, 'filler-plate': makeFillerPlate, 'lower-die': makeLowerDie, 'upper-die': makeUpperDie,
  'lower-key': makeLowerKey, 'upper-key': makeUpperKey, 'thrust-washer': makeThrustWasher, 'clutch-pulley-bushing': makeClutchPulleyBushing, 'crank-pin': makeCrankPin, 'rod-bushing': makeRodBushing, 'crosshead-pin': makeCrossheadPin, 'crosshead-bushing': makeCrossheadBushing,
  'toggle-pin': makeTogglePins, 'toggle-bushing': makeToggleBushings, 'bow-leaf': makeBowLeaf, 'bow-eye-pin': makeBowEyePins, 'bow-eye-bushing': makeBowEyeBushings, 'bow-clip-pin': makeBowClipPin, 'bow-clip-bushing': makeBowClipBushing, 'helve-pin': makeHelvePins, 'helve-bushing': makeHelveBushings,
  'bow-strap': makeBowStraps, 'helve-cushion': makeHelveCushions, 'treadle-pin': makeTreadlePins, 'treadle-bushing': makeTreadleBushings,
  'coil-spring': makeCoilSpring, 'guide-shims': makeGuideShims, 'motor-pulley': makeMotorPulley, 'countershaft-driven': makeCountershaftDriven, 'countershaft-driver': makeCountershaftDriver, belt: makeBelt,
};

/** Jobs that ask for a part. */
const ASKED_BY: Readonly<Record<string, readonly PartKind[]>> = {
  'seat.fit-filler-plate': ['filler-plate'], 'dies.new-lower': ['lower-die', 'lower-key'], 'dies.new-upper': ['upper-die', 'upper-key'], 'crank.pin-bush': ['crank-pin', 'rod-bushing'], 'rod.bush': ['rod-bushing'], 'crosshead.bush': ['crosshead-pin', 'crosshead-bushing'], 'clutch-pulley.bush': ['clutch-pulley-bushing'],
  'pins.renew': ['toggle-pin', 'toggle-bushing'], 'spring.renew': ['coil-spring'], 'guide.shim': ['guide-shims'], 'bow.replace-leaf': ['bow-leaf'],
  'bow.bush-eyes': ['bow-eye-pin', 'bow-eye-bushing', 'bow-clip-pin', 'bow-clip-bushing'], 'helve.bush-pivot': ['helve-pin', 'helve-bushing'], 'bow.renew-straps': ['bow-strap'], 'helve.renew-cushions': ['helve-cushion'], 'treadle.bush': ['treadle-pin', 'treadle-bushing'], 'shaft.set-end-float': ['thrust-washer'], 'belt.renew': ['belt'],
};

/** The job that leaves the seat floor flat right across, as deep as the die had sunk; a guided disc takes off thousandths and no quarter of an inch. */
const FLOOR_JOB = 'seat.mill';
/** Grounds that a light hammer is taken off for timbers or a block. */
const POOR_GROUND = ['soil', 'trailer', 'timber'];

/** Which parts this hammer needs, by its worksheet and findings; what is done or dropped is left out. */
export function partsNeeded(ground: MakingGround): ReadonlySet<PartKind> {
  const jobs = openJobs(ground);
  const kinds = new Set<PartKind>(jobs.flatMap((job) => ASKED_BY[job] ?? []));
  if (jobs.includes('drive.set-speed')) for (const kind of wantsCountershaft(ground.values, ground.known) ? (['countershaft-driven', 'countershaft-driver'] as const) : (['motor-pulley'] as const)) kinds.add(kind);
  if (jobs.includes('keys.renew')) for (const kind of keysToRenew(ground)) kinds.add(kind);
  if (ground.worksheet.jobs.some((job) => job.state !== 'done' && job.cautions.includes('block-ram'))) kinds.add('ram-prop');
  if (POOR_GROUND.includes(ground.known.looks['foundation.kind']?.answer ?? '') && (jobs.includes('foundation.block') || ground.findings.some((one) => one.criterion.startsWith('foundation.') && ['limited', 'stand-down'].includes(one.grade)))) kinds.add('sole-timbers');
  return kinds;
}

/**
 * The parts to make for this hammer, each worked out and with its drawing's geometry, or why not.
 * @param ground a picture
 * @returns in the order of the datum chain, then what is made to the old part; empty where the worksheet asks for none
 */
export function partsToMake(ground: MakingGround): readonly Making[] {
  const kinds = partsNeeded(ground);
  const context: MakingContext = { system: ground.system, alsoMade: kinds, floorCut: openJobs(ground).includes(FLOOR_JOB), pairGround: openJobs(ground).includes(GRIND_JOB), ramHeld: ramHeld(ground.worksheet, gapPlanOf(ground, new Set(openJobs(ground))).move), ...(openJobs(ground).includes(MOTOR_JOB) ? { motor: motorToFit(ground.known.identity.ramClass.quantity.value, ground.system) } : {}) };
  const minded = gapLines(ground, new Set(openJobs(ground)));
  const drawn = (Object.keys(MAKERS) as PartKind[]).filter((kind) => kinds.has(kind)).map((kind) => minded(MAKERS[kind](ground.values, ground.known, context)));
  return [...drawn, ...byPattern(openJobs(ground)).map((one) => (one.state === 'by-pattern' ? { ...one, because: inShopUnits(one.because, ground.system) } : one))];
}

const openJobs = (ground: MakingGround): readonly string[] => ground.worksheet.jobs.filter(isOpen).map((job) => job.job);

/** Both keys, unless every finding that asks for new ones names its end. */
function keysToRenew(ground: MakingGround): readonly PartKind[] {
  const asking = ground.findings.filter((one) => one.cures.includes('keys.renew') && ['watch', 'limited', 'stand-down'].includes(one.grade));
  const ends = asking.map((one) => one.at);
  if (asking.length === 0 || ends.some((at) => at !== 'upper' && at !== 'lower')) return ['lower-key', 'upper-key'];
  return [...new Set(ends)].map((at) => `${at as 'upper' | 'lower'}-key` as const);
}
