import type { LinkageFamily } from '../../hammer/index.ts';
import type { Value } from '../value.ts';
import { frameHeightFor, usualHammer, type SpecWithDoubt } from './class-priors.ts';
import type { Suspension } from './suspension/suspension.ts';
import { checkSpec } from './check-spec.ts';
import { fittedToHammer } from './fitted-to-hammer.ts';
import { hammerNumbers } from './hammer-numbers.ts';
import { restGapOf } from './setting.ts';
import { hangingDepth } from './start-state.ts';
import { withMeasured, type Measured } from './with-measured.ts';

/** One value of the simulator as this hammer's survey gives it. */
export interface SpecValue {
  /** Dotted name in the specification; `restGap` stands for the frame's height. */
  readonly name: string;
  /** Key of the value that it came from. */
  readonly from: string;
  /** SI, with standard uncertainty. */
  readonly value: number;
  readonly uncertainty: number;
}

/** The simulator's hammer from a survey: what was read is used, what was not comes from the class and is named. */
export interface SurveySpec extends SpecWithDoubt {
  readonly used: readonly SpecValue[];
  /** Readings that cannot all be true together, each as a sentence that names the reading. */
  readonly atOdds: readonly { readonly field: string; readonly from: string; readonly sentence: string }[];
}

const KINDS: Readonly<Record<LinkageFamily, Suspension['kind']>> = { 'coil-and-toggle': 'coil-toggle', 'bow-spring': 'bow-strap', helve: 'helve' };
const TURN = 2 * Math.PI;
/** Pull-out torque of an induction motor over its rated torque, common practice, no source: 2 to 3. */
const PULL_OUT = 2.5;

type Values = Readonly<Record<string, Value>>;

/**
 * Makes the simulator's specification of a hammer from its values.
 * @param values readings and consequences by key, as in the picture
 * @param ramClass nominal ram mass, kg
 */
export function specOfSurvey(values: Values, family: LinkageFamily, ramClass: number): SurveySpec {
  const used: SpecValue[] = [];
  const take = (name: string, keys: readonly string[], convert: (value: number) => number = (value) => value): number | undefined => {
    for (const key of keys) {
      const found = values[key];
      if (found?.outcome.state !== 'known' || found.rests === 'assumed') continue;
      const { value, uncertainty } = found.outcome.quantity;
      const taken = convert(value);
      used.push({ name, from: key, value: taken, uncertainty: Math.abs(convert(value + uncertainty) - taken) });
      return taken;
    }
    return undefined;
  };
  const ramMass = take('ramMass', ['ram.mass']) ?? ramClass;
  const base = usualHammer(ramMass, KINDS[family]);
  const loss = Math.max(0, take('stackLoss', ['stack.loss']) ?? 0);
  const clearance = take('ledgeClearance', ['stack.linkage-clearance'], (left) => Math.max(0, left + loss));
  const anvilRatio = take('anvilRatio', ['capacity.anvil-ratio']);
  const plain: Record<string, number | undefined> = {
    ramMass, stackLoss: loss, ledgeClearance: clearance, anvilRatio,
    throw: take('throw', ['crank.throw']),
    rodLength: take('rodLength', ['connecting-rod.length']),
    restGap: take('restGap', ['upper-die.rest-gap']),
    lostMotion: take('lostMotion', ['linkage.pin-play-sum', 'helve.die-play']) ?? pivotPlay(values, take),
    driveSpeed: take('driveSpeed', ['drive.rate-without-slip', 'running.rate'], (turns) => turns * TURN),
  };
  plain['pullOutTorque'] = pullOutTorque(values, plain['driveSpeed'] ?? base.spec.driveSpeed, used);
  const suspension = suspensionOf(values, family, take);
  const measured = { ...withoutGaps(plain), ...(Object.keys(suspension).length === 0 ? {} : { suspension }) } as Measured;
  const taken = new Set(used.map((one) => one.name));
  const fitted = fittedToHammer(withMeasured(base, measured), base.spec, taken);
  const gap = plain['restGap'] ?? restGapOf(base.spec) + loss;
  const stopped = withStops({ ...fitted, spec: { ...fitted.spec, frameHeight: frameHeightFor(fitted.spec, gap) } }, take);
  const assumed = taken.has('ramMass') ? stopped.assumed : [...new Set([...stopped.assumed, 'ramMass'])];
  const problems = checkSpec(stopped.spec);
  return { spec: stopped.spec, assumed, used, atOdds: problems.map((problem) => ({ field: problem.field, from: blamed(problem.field, used), sentence: problem.sentence })) };
}

/** The reading behind a field at odds; the gap stands behind the frame's height. */
function blamed(field: string, used: readonly SpecValue[]): string {
  const names = field === 'frameHeight' || field === 'workThickness' ? ['restGap', 'stackLoss'] : field === 'suspension.travel' ? [field, 'suspension.preCompression'] : [field];
  return used.find((one) => names.includes(one.name))?.from ?? '';
}

/**
 * The two stops from what is read with the ram hanging. The model reckons both from the place where the links are level, and a ram at rest
 * hangs below that by its sag: the way down is that much longer from level than from rest, the way up that much shorter by reading.
 */
function withStops(made: SpecWithDoubt, take: Take): SpecWithDoubt {
  const hang = hangingDepth(hammerNumbers(made.spec)) ?? 0;
  const joint = take('jointStop', ['ram-guide.hang-room'], (room) => hang + room);
  const upper = take('upperStop', ['ram-guide.carrier-room'], (room) => room - hang);
  const read = new Set([...(joint === undefined ? [] : ['jointStop']), ...(upper === undefined ? [] : ['upperStop'])]);
  return { spec: { ...made.spec, ...withoutGaps({ jointStop: joint, upperStop: upper }) }, assumed: made.assumed.filter((name) => !read.has(name)) };
}

/** Play of a helve's pivot as the die feels it: a pivot that rocks on the rod pin moves the head by more than its own play. */
function pivotPlay(values: Values, take: Take): number | undefined {
  const ratio = numberOf(values, 'helve.arm-ratio');
  if (ratio === undefined) return undefined;
  return take('lostMotion', ['helve.pivot-play', 'helve.pivot-play@left', 'helve.pivot-play@right'], (play) => play * (1 + ratio));
}

type Take = (name: string, keys: readonly string[], convert?: (value: number) => number) => number | undefined;

function suspensionOf(values: Values, family: LinkageFamily, take: Take): Record<string, number> {
  if (family === 'helve') {
    return withoutGaps({ headRadius: take('suspension.headRadius', ['helve.front-length']), rodRadius: take('suspension.rodRadius', ['helve.rear-length']), cushionRadius: take('suspension.cushionRadius', ['helve.cushion-length']) });
  }
  if (family === 'bow-spring') {
    // Half of the load at the middle hangs on each tip, and a tip moves as far as the middle does: half the rate of the bow.
    return withoutGaps({ tipRate: take('suspension.tipRate', ['bow.rate'], (rate) => rate / 2), strap: take('suspension.strap', ['bow-spring.strap-length@left', 'bow-spring.strap-length@right']) });
  }
  const made = numberOf(values, 'coil-spring.free-length#as-made') ?? numberOf(values, 'coil-spring.free-length');
  const solid = numberOf(values, 'spring.solid-length');
  return withoutGaps({
    link: take('suspension.link', ['toggle-links.length', 'toggle-links.length@left', 'toggle-links.length@right']),
    lowerLimb: take('suspension.lowerLimb', ['toggle-arms.length', 'toggle-arms.length@left', 'toggle-arms.length@right']),
    upperLimb: take('suspension.upperLimb', ['toggle-arms.upper-length@left', 'toggle-arms.upper-length@right']),
    rate: take('suspension.rate', ['spring.rate']),
    preCompression: made === undefined ? undefined : take('suspension.preCompression', ['coil-spring.installed-length'], (installed) => made - installed),
    sag: made === undefined ? undefined : take('suspension.sag', ['coil-spring.free-length'], (free) => Math.max(0, made - free)),
    travel: made === undefined || solid === undefined ? undefined : take('suspension.travel', ['spring.solid-length'], (length) => made - length),
  });
}

function numberOf(values: Values, key: string): number | undefined {
  const outcome = values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity.value : undefined;
}

/** Pull-out torque referred to the crank, N m, from the motor's plate: rated power over crank speed, times 2.5. */
function pullOutTorque(values: Values, driveSpeed: number, used: SpecValue[]): number | undefined {
  const power = numberOf(values, 'motor.power');
  if (power === undefined) return undefined;
  const torque = (PULL_OUT * power) / driveSpeed;
  used.push({ name: 'pullOutTorque', from: 'motor.power', value: torque, uncertainty: torque * 0.1 });
  return torque;
}

const withoutGaps = (row: Readonly<Record<string, number | undefined>>): Record<string, number> =>
  Object.fromEntries(Object.entries(row).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])));
