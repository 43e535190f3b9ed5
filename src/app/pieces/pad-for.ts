import type { MeasuringPlace } from '../../hammer/index.ts';
import type { ToolName, System } from '../../methods/quantity/index.ts';

/** What a hand touches to write a reading: the marks of a rule, or digits in one unit; none where it is typed. */
export type Pad = 'rule' | 'in' | 'thou' | 'mm' | 'none';

/** Tools that are read as fractions of an inch. */
const IN_MARKS: readonly ToolName[] = ['rule', 'tape', 'radius-gauge', 'camera'];
/** Tools that are read in thou whatever they measure. */
const IN_THOU: readonly ToolName[] = ['feeler', 'dial-indicator', 'plastic-thread-gauge', 'straightedge', 'level'];
/** Nothing of this size, m, and below is written in whole inches. */
const SMALL = 0.02;

/**
 * The pad that suits the tool in the hand.
 * @param tool in use, or the first that the place names
 */
export function padFor(place: Pick<MeasuringPlace, 'dimension' | 'plausible'>, tool: ToolName | undefined, system: System): Pad {
  if (place.dimension !== 'length') return 'none';
  if (system === 'metric') return 'mm';
  if (tool !== undefined && IN_MARKS.includes(tool)) return 'rule';
  if (tool !== undefined && IN_THOU.includes(tool)) return 'thou';
  return place.plausible[1] > SMALL ? (tool === undefined ? 'rule' : 'in') : 'thou';
}
