import { formatQuantity } from '../../methods/quantity/index.ts';
import { printQuantity, type PrintSystem } from '../../derived/index.ts';
import { isLoose, type PartToMake } from '../../derived/making/index.ts';

/** Micrometres and microinches that drawings use for the same roughness. */
const STEPS: readonly (readonly [micrometres: number, microinches: number])[] = [[0.2, 8], [0.4, 16], [0.8, 32], [1.6, 63], [3.2, 125], [6.3, 250], [12.5, 500]];

/** Roughness Ra, m, in the figures that drawings use: micrometres, or microinches in an inch shop. */
export function roughnessWords(roughness: number, system: PrintSystem): string {
  const step = STEPS.find(([micrometres]) => roughness * 1e6 <= micrometres * 1.001) ?? STEPS[STEPS.length - 1]!;
  return `Ra ${system === 'metric' ? step[0] : step[1]}`;
}

/** What a surface may be out, m, without its unit: thousandths of an inch, hundredths of a millimetre. */
export const withinWords = (within: number, system: PrintSystem): string =>
  formatQuantity({ dimension: 'length', value: within, uncertainty: 0 }, { unit: system === 'inch' ? 'in' : 'mm', resolution: system === 'inch' ? 0.0254e-3 : 1e-5, doubt: false }).replace(/ (in|mm)$/, '');

/** One unit of weight that a shop reckons blanks in: half a pound, a tenth of a kilogram. */
const HALF_POUND = 0.45359237 / 2;
const TENTH = 0.1;

/** Weight of one part in words, rounded as a blank is weighed; a dash where it says nothing. */
export function massWords({ mass }: PartToMake, system: PrintSystem): string {
  if (mass === undefined) return '–';
  const whole = system === 'inch' ? HALF_POUND : TENTH;
  // Below two pounds a tenth of that, below one pound half ounces; below four tenths of a kilogram ten grams.
  const step = mass >= 4 * whole ? whole : system === 'metric' || mass >= 2 * whole ? whole / 10 : whole / 16;
  return printQuantity({ dimension: 'mass', value: Math.max(step, Math.round(mass / step) * step), uncertainty: 0 }, system);
}

/** Red only where something is open: an eye that sees red on every sheet learns to skip it. */
export const checkClass = ({ unknowns, warnings, dimensions }: PartToMake): 'limit-note' | 'strong' => (unknowns.length > 0 || warnings.length > 0 || dimensions.some((one) => one.estimate || isLoose(one)) ? 'limit-note' : 'strong');

/** Roughness of all that carries no sign; a dash where nothing is machined. */
export const finishWords = ({ roughness }: PartToMake, system: PrintSystem): string => (roughness === undefined ? '–' : `${roughnessWords(roughness, system)} ${system === 'metric' ? 'µm' : 'µin'}`);
