/** Which die a job takes out of its seat. `as-found` is the end that its findings name, both where they name none. */
export type DieTaken = 'lower' | 'upper' | 'both' | 'as-found';

/**
 * Jobs during which a die is out, so that the ram has further to fall than with both in: common practice. Driving and fitting keys
 * is not among them: the dies stand in their seats then.
 */
export const DIES_OUT: Readonly<Record<string, DieTaken>> = {
  'seat.file': 'lower', 'seat.mill': 'lower', 'seat.grind-with-plate-jig': 'lower', 'seat.fit-filler-plate': 'lower', 'seat.mend-ear': 'lower', 'sow-block.put-back': 'lower', 'sow-block.re-true': 'lower',
  'dovetail.file-flanks': 'as-found', 'dovetail.machine-flanks': 'as-found', 'dovetail.mend-lip': 'as-found',
  'dies.new-lower': 'lower', 'dies.new-upper': 'upper', 'dies.grind-pair': 'both', 'dies.dress': 'both', 'dies.temper': 'both',
};
