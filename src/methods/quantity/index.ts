export { DIMENSIONS, DIMENSION_WORDS, SI_UNIT, type Dimension } from './dimension.ts';
export { halfWidth, quantity, type Quantity } from './quantity.ts';
export { withPositiveInterval } from './positive.ts';
export type { Problem } from './problem.ts';
export { UNITS, unitsFor, type Unit, type UnitName } from './units.ts';
export { TOOLS, canRead, toolHalfWidth, toolsFor, type Tool, type ToolName } from './tools.ts';
export { ABOUT, doubtOf, type DoubtSources } from './doubt.ts';
export { readQuantity, type Reading, type ReadOptions } from './read-quantity.ts';
export { formatParts, formatQuantity, type FormatOptions, type NumberParts, type QuantityParts, type System } from './format-quantity.ts';
