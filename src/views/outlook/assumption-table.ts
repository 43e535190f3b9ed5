import type { PrintSystem } from '../../derived/index.ts';
import type { Assumption } from '../../derived/capacity/index.ts';
import type { Block } from '../report/block.ts';
import { shownPlain } from './shown.ts';

/** Figures that nobody measures at a hammer, with their ranges and where they come from. */
export const assumptionTable = (assumed: readonly Assumption[], system: PrintSystem): Block => ({
  kind: 'table', caption: 'Figures that nobody measures at a hammer; each goes into the intervals with its whole range', columns: ['Figure', 'Likeliest', 'Range', 'Standing'], dense: true, rows: assumed.map((one) => ({ cells: cellsOf(one, system) })),
});

function cellsOf({ title, least, likely, most, unit, standing }: Assumption, system: PrintSystem): readonly string[] {
  const print = (value: number): string => {
    if (unit === 'K') return shownPlain(value, 'temperature', system, { resolution: system === 'inch' ? 50 / 9 : 5 });
    if (unit === 's') return shownPlain(value, 'time', system);
    return `${value}${unit === '' ? '' : ` ${unit}`}`;
  };
  return [title, print(likely), `${print(least).replace(` ${unit}`, '')} to ${print(most)}`, standing];
}
