import type { MeasuringPlace } from '../../hammer/index.ts';
import { canRead, formatQuantity, readQuantity, toolHalfWidth, TOOLS, type Quantity, type ToolName } from '../../methods/quantity/index.ts';

const IN_FRACTIONS = /^[^.,]*$/;
const DIVIDED_IN_FRACTIONS: readonly ToolName[] = ['rule', 'tape'];

/**
 * The tool that a reading was most likely taken with, until somebody says so: a fraction off a rule where the place lists one,
 * and never a tool that could not have read so small a thing.
 */
export function usualTool(place: MeasuringPlace, text: string): ToolName | undefined {
  const [first] = place.tools;
  const read = readQuantity(text, { dimension: place.dimension, ...(place.dimension === 'length' ? { defaultUnit: 'in' as const } : {}) });
  if (!read.ok) return first;
  const size = Math.abs(read.quantity.value);
  const fit = place.tools.filter((one) => canRead(one, place.dimension) && (size === 0 || toolHalfWidth(one, place.dimension, size) <= size / 2));
  const divided = place.dimension === 'length' && IN_FRACTIONS.test(text) && !/thou|mil/i.test(text) ? fit.find((one) => DIVIDED_IN_FRACTIONS.includes(one)) : undefined;
  return divided ?? fit[0] ?? first;
}

/** A sentence where the tool cannot have read what was written; empty otherwise. */
export function tooCoarse(quantity: Quantity, tool: ToolName): string {
  const half = toolHalfWidth(tool, quantity.dimension, quantity.value);
  if (quantity.value === 0 || half <= Math.abs(quantity.value) / 2) return '';
  return `Read with this (${TOOLS[tool].us}) it would be ${formatQuantity({ ...quantity, uncertainty: half / 2 })}: choose the tool that read it.`;
}
