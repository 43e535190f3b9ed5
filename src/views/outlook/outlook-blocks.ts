import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Outlook, PrintSystem, Value } from '../../derived/index.ts';
import type { Block, TableRow } from '../report/block.ts';

const SECTIONS: readonly (readonly [prefix: string, title: string, caption: string])[] = [
  ['capacity.', 'What the blow does', 'From the motion of this hammer within the doubt of its readings, and two published laws of hot steel; an estimate wherever a figure was not read'],
  ['ground.', 'Ground and neighbours', 'Block and machine as two masses on the soil, both modes together; without damping, so an upper bound'],
  ['power.', 'Power', 'For the electrician: local codes govern'],
  ['moving.', 'Moving it', 'Weights and tipping, from the class where nothing was weighed; above 2,000 lb a rigger moves it'],
];

/** The outlook as blocks of a report or of a sheet by itself. */
export function outlookBlocks(outlook: Outlook, system: PrintSystem): readonly Block[] {
  const values = Object.values(outlook.values);
  const tables = SECTIONS.flatMap(([prefix, title, caption]): readonly Block[] => {
    const rows = values.filter((value) => value.key.startsWith(prefix) && value.outcome.state !== 'does-not-apply').map((value) => rowOf(value, system));
    return rows.length === 0 ? [] : [{ kind: 'heading', level: 2, text: title }, { kind: 'table', caption, columns: ['What', 'Value', 'How'], rows }];
  });
  return [...tables, { kind: 'heading', level: 2, text: 'Oiling round' }, ...(outlook.oiling.first.length === 0 ? [] : [{ kind: 'list', ordered: false, items: outlook.oiling.first } as const]), { kind: 'list', ordered: false, items: outlook.oiling.card }];
}

function rowOf(value: Value, system: PrintSystem): TableRow {
  const estimate = value.rests === 'assumed' ? ', estimate' : '';
  const shown = (): string => {
    switch (value.outcome.state) {
      case 'known':
        return `${formatQuantity(value.outcome.quantity, { system })}${estimate}`;
      case 'not-known':
        return `not known: ${value.outcome.missing.join(', ')}`;
      case 'outside-validity':
      case 'does-not-apply':
        return `no figure: ${value.outcome.because}`;
    }
  };
  return { cells: [value.title, shown(), [value.formula, value.words, value.warning].filter((words) => words !== undefined && words !== '').join('. ')] };
}
