import type { Known } from '../survey/index.ts';
import { bushEdges, bushOutside, type BushEdges } from './bush-edges.ts';
import { FigureReader, reckon, type Figure, type Values } from './figure.ts';
import type { MakingContext } from './making-context.ts';
import { nextReamer } from './reamer.ts';
import { nearestFit, type RunningFit } from './running-fit.ts';
import { shopNumber } from './shop-figures.ts';

/** Where a new crank pin runs in its rod: diameter and the fit of the bush. */
export interface CrankPinSize {
  readonly diameter: Figure;
  readonly why: string;
  readonly fit: RunningFit;
  /** Fillets at the collar, and the chamfers over them at the mouths of plate and bush. */
  readonly edges: BushEdges;
}

/**
 * As made where that is known, else the next reamer size over the pin where the rod does not rub; the bush is bored to it.
 * @returns undefined where no pin was measured, or where the size lies outside the table of fits
 */
export function crankPinSize(values: Values, _known: Known, context: MakingContext): CrankPinSize | undefined {
  const reader = new FigureReader(values);
  const made = reader.find('crank.pin-diameter#as-made');
  const read = reader.find('crank.pin-diameter');
  const diameter = made ?? (read === undefined ? undefined : { ...reckon('length', [read], (size) => nextReamer(size!, context)), estimate: read.estimate });
  if (diameter === undefined) return undefined;
  const exact = made === undefined ? { ...diameter, quantity: { ...diameter.quantity, uncertainty: 0 } } : diameter;
  const fit = nearestFit(exact.quantity.value, shopNumber('rod-clearance-least'), shopNumber('rod-clearance-most'));
  const [eye, hole] = ['connecting-rod.eye-outside', 'connecting-rod.eye-bore'].map((key) => reader.find(key)?.quantity.value);
  const bore = exact.quantity.value;
  const edges = bushEdges((bushOutside(bore, eye, shopNumber('rod-bush-wall'), context, hole) - bore) / 2, true);
  return fit === undefined ? undefined : { edges, diameter: exact, why: made === undefined ? 'the next reamer size over the old pin; the bush is bored to it' : 'as made; the bush is bored to it', fit };
}
