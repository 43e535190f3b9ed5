import type { LinkageFamily } from '../../hammer/index.ts';
import type { Value } from '../value.ts';
import { usualHammer, type SpecWithDoubt } from './class-priors.ts';
import { checkSpec } from './check-spec.ts';
import type { Suspension } from './suspension/suspension.ts';
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
    lostMotion: take('lostMotion', ['linkage.pin-play-sum', 'helve.die-play']),
    driveSpeed: take('driveSpeed', ['drive.rate-without-slip', 'running.rate'], (turns) => turns * TURN),
  };
  plain['pullOutTorque'] = pullOutTorque(values, plain['driveSpeed'] ?? base.spec.driveSpeed, used);
  const suspension = suspensionOf(values, family, take);
  const measured = { ...withoutGaps(plain), ...(Object.keys(suspension).length === 0 ? {} : { suspension }) } as Measured;
  const spec = withMeasured(base, measured);
  const assumed = ramMass === ramClass && !used.some((one) => one.name === 'ramMass') ? [...new Set([...spec.assumed, 'ramMass'])] : spec.assumed;
  const atOdds = checkSpec(spec.spec).map((problem) => ({ field: problem.field, from: used.find((one) => one.name === problem.field)?.from ?? '', sentence: problem.sentence }));
  return { spec: spec.spec, assumed, used, atOdds };
}

type Take = (name: string, keys: readonly string[], convert?: (value: number) => number) => number | undefined;

function suspensionOf(values: Values, family: LinkageFamily, take: Take): Record<string, number> {
  if (family === 'helve') {
    return withoutGaps({ headRadius: take('suspension.headRadius', ['helve.front-length']), rodRadius: take('suspension.rodRadius', ['helve.rear-length']) });
  }
  if (family === 'bow-spring') {
    // Half of the load at the middle hangs on each tip, and a tip moves as far as the middle does: half the rate of the bow.
    return withoutGaps({ tipRate: take('suspension.tipRate', ['bow.rate'], (rate) => rate / 2) });
  }
  const made = numberOf(values, 'coil-spring.free-length#as-made') ?? numberOf(values, 'coil-spring.free-length');
  const solid = numberOf(values, 'spring.solid-length');
  return withoutGaps({
    link: take('suspension.link', ['toggle-links.length', 'toggle-links.length@left', 'toggle-links.length@right']),
    lowerLimb: take('suspension.lowerLimb', ['toggle-arms.length', 'toggle-arms.length@left', 'toggle-arms.length@right']),
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
