import { CORNERS } from '../../hammer/index.ts';
import { STRIKE_TEST } from '../../knowledge/index.ts';
import { normalCdf, type Estimate } from '../../methods/chance/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import { estimatesOf, heatOfTestBar, STRIKE_DRAWS, strikeTestEnergy, type Ranged } from '../capacity/index.ts';
import type { Ledger } from '../ledger.ts';
import type { PrintSystem } from '../print-system.ts';
import type { AcceptanceInputs, AcceptancePoint, ExpectedBlow } from './acceptance-point.ts';
import { shopQuantity } from './shop-quantity.ts';

const PLACE = 'running.test-bar-thickness';
/** Standard doubt of the length under the dies, m, where nobody wrote it down. */
const BITE_DOUBT = 0.003;
/** Standard deviations between the middle and the end of an interval that holds 95 and 90 in 100. */
const OF_95 = 1.96;
const OF_90 = 1.645;
/** Chance below which the blow is called weaker, or stronger, than expected: one end of the usual 95 %. */
const UNLIKELY = 0.025;
const MILD = 0.002;

/**
 * The strike test read back as the energy of a full blow, against what the motion of this very hammer lets expect: red
 * where it is weaker and chance hardly explains it. A blow that reads far stronger says that the test was not as said.
 * @param since instant from which readings count
 */
export function strikeEnergy(inputs: AcceptanceInputs, since: string | undefined): AcceptancePoint {
  const { known, expected, system = 'inch' } = inputs;
  const common = { id: 'strike-energy', title: 'Blow as strong as its motion lets expect', source: 'hot-flow-stress' };
  const of = (key: string) => known.history[key]?.filter((one) => since === undefined || one.when >= since).at(-1);
  const corners = CORNERS.map((corner) => `${PLACE}@${corner}`);
  const read = corners.flatMap((key) => of(key) ?? []);
  const missing = corners.filter((key) => of(key) === undefined);
  if (missing.length > 0) return { ...common, state: 'not-done', reason: 'Not tried: five full blows on a hot bar, measured at all four corners, tell the energy of a blow.', shown: '', missing };
  const mean = read.reduce((sum, one) => sum + one.value, 0) / read.length;
  const scatter = Math.sqrt(read.reduce((sum, one) => sum + (one.value - mean) ** 2, 0) / (read.length * (read.length - 1)));
  const energy = readBack(inputs, { value: mean, uncertainty: Math.hypot(Math.max(...read.map((one) => one.uncertainty)), scatter) });
  if (energy.state !== 'known') return { ...common, state: 'not-done', reason: `Tried, and cannot be read back: ${energy.because}.`, shown: '', missing: energy.missing ?? [] };
  const figure = (value: number): string => energyWords(value, system);
  const shown = `${figure(energy.value)} a blow, 95 % between ${figure(energy.low)} and ${figure(energy.high)}`;
  if (expected === undefined) return { ...common, state: 'not-done', reason: 'Read back; what its motion lets expect is not reckoned here.', shown, missing: [] };
  const wanted = `its motion as set lets expect ${figure(expected.middle)}, nine in ten between ${figure(expected.low)} and ${figure(expected.high)}`;
  const less = chanceLess(energy, expected);
  if (less < UNLIKELY) return { ...common, state: 'red', reason: `Weaker than ${wanted}. Look at speed, belt slip, clutch and what springs before anything else is blamed.`, shown, missing: [] };
  if (less > 1 - UNLIKELY) return { ...common, state: 'green', reason: `Stronger than ${wanted}: rather was the test not as said. Had only half the length lain under the dies, the energy would be about half.`, shown, missing: [] };
  return { ...common, state: 'green', reason: `As strong as it should be: ${wanted}.`, shown, missing: [] };
}

/** Chance that two like hammers would differ this way round and as much, the doubts of both as lognormal. */
function chanceLess(read: Extract<Ranged, { state: 'known' }>, expected: ExpectedBlow): number {
  const width = (high: number, low: number, deviations: number): number => Math.log(high / low) / (2 * deviations);
  const doubt = Math.hypot(width(read.high, read.low, OF_95), width(expected.high, Math.max(expected.low, expected.high * 1e-3), OF_90));
  return doubt > 0 ? normalCdf(Math.log(read.value / expected.middle) / doubt) : read.value < expected.middle ? 0 : 1;
}

type ReadBack = Extract<Ranged, { state: 'known' }> | { readonly state: 'not-known'; readonly because: string; readonly missing?: readonly string[] };

function readBack({ known, values, seed = 1 }: AcceptanceInputs, thickness: Estimate): ReadBack {
  const ledger: Ledger = { family: known.identity.family, values: new Map(Object.entries(values)) };
  const estimates = estimatesOf(ledger, { ramMass: 'ram.mass|class.ram-mass', anvilRatio: 'capacity.anvil-ratio|class.anvil-ratio', rate: 'running.rate|drive.rate|class.working-rate', restitution: 'practice.restitution-hot' });
  if (!estimates.ok) return { state: 'not-known', because: 'something that it rests on is not known', missing: estimates.outcome.state === 'not-known' ? estimates.outcome.missing : [] };
  const own = (key: string, usual: string): Estimate => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? { value: outcome.quantity.value, uncertainty: outcome.quantity.uncertainty } : { value: shopQuantity(usual, 'length', key).value, uncertainty: BITE_DOUBT };
  };
  const blows = values['running.test-bar-blows']?.outcome;
  const answer = strikeTestEnergy({
    side: own('running.test-bar-side', STRIKE_TEST.side).value, bite: own('running.test-bar-length', STRIKE_TEST.underDies), blows: blows?.state === 'known' ? Math.round(blows.quantity.value) : STRIKE_TEST.blows,
    thickness, temperature: heatOfTestBar(known.looks), carbon: MILD, ...estimates.of,
  }, seed, STRIKE_DRAWS);
  if (answer.state === 'refused') return { state: 'not-known', because: answer.problems.map((problem) => problem.sentence).join('; ') };
  return answer.blowEnergy.state === 'known' ? answer.blowEnergy : { state: 'not-known', because: answer.blowEnergy.because };
}

/** Three figures; the interval says what they are worth. */
const energyWords = (value: number, system: PrintSystem): string => formatQuantity({ dimension: 'energy', value: Number(value.toPrecision(3)), uncertainty: 0 }, { system, doubt: false, resolution: 2 });
