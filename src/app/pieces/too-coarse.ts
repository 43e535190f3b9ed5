import { formatQuantity, toolHalfWidth, TOOLS, type Quantity, type ToolName } from '../../methods/quantity/index.ts';

/** A sentence where the tool cannot have read what was written; empty otherwise. */
export function tooCoarse(quantity: Quantity, tool: ToolName): string {
  const half = toolHalfWidth(tool, quantity.dimension, quantity.value);
  if (quantity.value === 0 || half <= Math.abs(quantity.value) / 2) return '';
  return `Read with this (${TOOLS[tool].us}) it would be ${formatQuantity({ ...quantity, uncertainty: half / 2 })}: choose the tool that read it.`;
}
