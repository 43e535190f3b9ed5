import type { Quantity } from '../../methods/quantity/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';

type Lookup = (key: string) => Quantity | undefined;

/** Sizes that pulleys are turned to, m, the coarsest first: a size is no finer than its speed asks for. */
const STEPS: Readonly<Record<PrintSystem, readonly number[]>> = { inch: [0.0254 / 16, 0.0254 / 32, 0.0254 / 100], metric: [0.001, 0.0005, 0.0001] };
const PER_MINUTE = 60;

/** A motor pulley and the rate that it gives, the slip of the belt taken off. SI. */
export interface MotorPulley {
  readonly diameter: number;
  /** Blows a second. */
  readonly rate: number;
  /** Share that the belt loses, and whether it was counted on this hammer. */
  readonly slip: number;
  readonly counted: boolean;
  /** It is the one that is on the motor. */
  readonly fitted: boolean;
}

/**
 * The motor pulley whose rate, slip included, lies within what is wanted: the one that is on, where it does; else the next that does, and
 * no greater change than is needed. Slip counted on this hammer goes before the usual, unless its belt slips more than a good one.
 * @param wanted blows a second, least and most
 * @returns undefined where motor or driven pulley are not known, or no size that can be turned does it
 */
export function motorPulleyFor(known: Lookup, wanted: { readonly from: number; readonly to: number }, system: PrintSystem): MotorPulley | undefined {
  const driven = known('pulley.diameter')?.value;
  const speed = known('motor.speed')?.value;
  if (driven === undefined || speed === undefined || !(speed > 0) || !(driven > 0)) return undefined;
  const { slip, counted } = slipOf(known);
  const rateOf = (diameter: number): number => (speed * diameter * (1 - slip)) / driven;
  const within = (rate: number): boolean => rate >= wanted.from * (1 - 1e-9) && rate <= wanted.to * (1 + 1e-9);
  const fitted = known('motor.pulley')?.value;
  if (fitted !== undefined && within(rateOf(fitted))) return { diameter: fitted, rate: rateOf(fitted), slip, counted, fitted: true };
  const exact = (rate: number): number => (rate * driven) / (speed * (1 - slip));
  const raised = fitted !== undefined && fitted < exact(wanted.from);
  for (const step of STEPS[system]) {
    const diameter = raised ? Math.ceil(exact(wanted.from) / step - 1e-6) * step : Math.floor(exact(wanted.to) / step + 1e-6) * step;
    if (diameter > 0 && within(rateOf(diameter))) return { diameter, rate: rateOf(diameter), slip, counted, fitted: false };
  }
  return undefined;
}

/** What the belt of this hammer loses where it was counted and is no more than a good belt loses; else the usual. */
function slipOf(known: Lookup): { readonly slip: number; readonly counted: boolean } {
  const usual = known('practice.belt-slip');
  const own = known('drive.slip');
  const most = (usual?.value ?? 0) + 2 * (usual?.uncertainty ?? 0);
  return own !== undefined && own.value >= 0 && own.value <= most ? { slip: own.value, counted: true } : { slip: usual?.value ?? 0, counted: false };
}

/** The pulley in a sentence: its size where the belt runs, and what it gives. Empty where there is none to name. */
export function pulleySentence(known: Lookup, wanted: { readonly from: Quantity; readonly to: Quantity }, system: PrintSystem): string {
  const pulley = motorPulleyFor(known, { from: wanted.from.value, to: wanted.to.value }, system);
  if (pulley === undefined) return '';
  const size = printQuantity({ dimension: 'length', value: pulley.diameter, uncertainty: 0 }, system);
  const gives = `${Math.floor(pulley.rate * PER_MINUTE + 1e-6)} blows/min with ${Math.round(100 * pulley.slip)} % of slip${pulley.counted ? ' as counted' : ', as is usual'}`;
  return pulley.fitted ? ` The motor pulley that is on, ${size} where the belt runs, gives ${gives}: it stays.` : ` A motor pulley of ${size} where the belt runs gives ${gives}.`;
}
