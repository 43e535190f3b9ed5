import { expect, test } from 'vitest';
import { normalCdf } from '../../../src/methods/chance/index.ts';
import { threePoint, uncertainSchedule, type UncertainTask } from '../../../src/methods/ordering/index.ts';
import { digits, rowsOf, runRows } from '../row.ts';

interface Network {
  readonly tasks: readonly UncertainTask[];
  readonly within?: number;
}

const task = (id: string, after: string, least: number, likely: number, most: number): UncertainTask => ({ id, after: [...after], least, likely, most });

const scheduled = (network: Network) => {
  const outcome = uncertainSchedule(network.tasks);
  if (outcome.state !== 'scheduled') throw new Error(`a cycle: ${outcome.cycle.join(', ')}`);
  return outcome;
};

const figure = (network: Network, name: string): number => {
  const outcome = scheduled(network);
  if (name === 'expected') return outcome.expected;
  if (name === 'variance') return outcome.variance;
  if (name === 'z') return (network.within! - outcome.expected) / Math.sqrt(outcome.variance);
  if (name === 'chance in time') return outcome.chanceWithin(network.within!);
  // The book reads its normal table at z of two decimals.
  if (name === 'chance in time by the table') return normalCdf(Math.round(100 * figure(network, 'z')) / 100);
  throw new Error(`no figure ${name}`);
};

test('expected length, variance and chance of being in time', () => {
  const chain: Network = { tasks: [task('1', '', 5, 8, 17), task('3', '1', 3, 5, 7), task('5', '3', 4, 6, 8), task('7', '5', 3, 4, 5)], within: 28 };
  const four: Network = { tasks: [task('A', '', 2, 5, 8), task('B', 'A', 1, 2, 9), task('E', 'B', 1, 2, 9), task('F', 'E', 1, 3, 11)] };
  const taylor = 'Taylor, Introduction to Management Science, path 1-3-5-7';
  runRows('three-point chains', [
    ...rowsOf<Network>(taylor, 'read', chain, [['expected', '24'], ['variance', '5.0'], ['z', '1.79'], ['chance in time by the table', '.9633']]),
    ...rowsOf<Network>(taylor, 'recomputed', chain, [['chance in time', '.96318']]),
    ...rowsOf<Network>('inputs of pmknowledgecenter.be, path A-B-E-F', 'recomputed', four, [['expected', '15'], ['variance', '7.333']]),
  ], (network, row) => figure(network, row.figure));
});

// Fourteen tasks, wizedu.com/questions/717873: least, likely and most in days, with what each waits for.
const FOURTEEN: Network = {
  tasks: [
    task('A', '', 5, 5, 7), task('B', '', 1, 2, 5), task('C', 'A', 5, 5, 5), task('D', 'A', 4, 8, 13), task('E', 'BC', 1, 10, 17), task('F', 'D', 1, 5, 7), task('G', 'D', 2, 6, 9),
    task('H', 'EF', 4, 4, 6), task('I', 'GH', 2, 7, 10), task('J', 'I', 2, 4, 7), task('K', 'I', 6, 10, 13), task('L', 'J', 2, 6, 6), task('M', 'K', 2, 2, 3), task('N', 'LM', 7, 7, 12),
  ],
  within: 55,
};
const SOURCE = 'worked network of fourteen tasks, wizedu.com/questions/717873';

test('a network of fourteen tasks', () => {
  expect(scheduled(FOURTEEN).schedule.critical.join('-')).toBe('A-C-E-H-I-K-M-N');
  runRows('three-point network', [
    ...rowsOf(SOURCE, 'read', FOURTEEN, [['expected', '50.83'], ['variance', '11.19'], ['chance in time', '.8935']]),
    ...rowsOf(SOURCE, 'recomputed', FOURTEEN, [['expected', '50.8333'], ['variance', '11.1944']]),
  ], (network, row) => figure(network, row.figure));
});

test('its tasks: expected time, deviation, early and late times, slack', () => {
  const means = '5.33 2.33 5.00 8.17 9.67 4.67 5.83 4.33 6.67 4.17 9.83 5.33 2.17 7.83'.split(' ');
  const deviations = '0.33 0.67 0.00 1.50 2.67 1.00 1.17 0.33 1.33 0.83 1.17 0.67 0.17 0.83'.split(' ');
  // Early start and finish, late start and finish, slack, of the first six.
  const times: Readonly<Record<string, readonly string[]>> = {
    A: ['0.00', '5.33', '0.00', '5.33', '0.00'], B: ['0.00', '2.33', '8.00', '10.33', '8.00'], C: ['5.33', '10.33', '5.33', '10.33', '0.00'],
    D: ['5.33', '13.50', '7.17', '15.33', '1.83'], E: ['10.33', '20.00', '10.33', '20.00', '0.00'], F: ['13.50', '18.17', '15.33', '20.00', '1.83'],
  };
  const { schedule } = scheduled(FOURTEEN);
  const rows = [
    ...FOURTEEN.tasks.flatMap((one, i) => {
      const { expected, variance } = threePoint(one);
      return [...rowsOf(SOURCE, 'read', expected, [[`expected ${one.id}`, means[i]!]]), ...rowsOf(SOURCE, 'read', Math.sqrt(variance), [[`deviation ${one.id}`, deviations[i]!]])];
    }),
    ...Object.entries(times).flatMap(([id, printed]) => {
      const one = schedule.tasks.find((candidate) => candidate.id === id)!;
      const computed = [one.earliestStart, one.earliestFinish, one.latestStart, one.latestFinish, one.slack];
      return printed.map((text, i) => ({ source: SOURCE, status: 'read' as const, figure: `${id} ${['early start', 'early finish', 'late start', 'late finish', 'slack'][i]!}`, inputs: computed[i]!, expected: Number(text), tolerance: digits(text) }));
    }),
  ];
  runRows('tasks of the network', rows, (actual) => actual);
});
