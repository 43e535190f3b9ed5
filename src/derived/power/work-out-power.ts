import { put, workOut, type Ledger } from '../ledger.ts';
import type { Known } from '../survey/index.ts';
import type { Outcome, Value } from '../value.ts';
import { tableCurrent } from './current.ts';
import { powerInputOf } from './power-input.ts';
import { powerOf } from './power-of.ts';

const FROM = ['motor.power', 'motor.voltage', 'motor.phase'];
const FOR_THE_ELECTRICIAN = 'For the electrician; the local code governs.';

/** Currents for choosing wire and breaker, how hard the motor works, and the range that the rules give for a converter. After `workOutDrive`. */
export function workOutPower(ledger: Ledger, known: Known, seed: number): void {
  const input = powerInputOf(Object.fromEntries(ledger.values), known);
  const table = tableCurrent(input);
  const rests = ledger.values.get('motor.power')?.rests ?? 'assumed';
  const enter = (key: string, title: string, formula: string, outcome: Outcome, sources: readonly string[], words?: string): Value =>
    put(ledger, { key, title, outcome, standing: 'worked-out', rests, from: FROM, formula, sources, evidence: [], ...(words === undefined ? {} : { words }) });
  const ampere = (pick: (one: Extract<typeof table, { state: 'known' }>) => number): Outcome => (table.state === 'known' ? { state: 'known', quantity: { dimension: 'current', value: pick(table), uncertainty: 0 } } : table);
  const note = table.state === 'known' ? table.note : FOR_THE_ELECTRICIAN;
  enter('power.full-load-current', 'full-load current by the table', 'table by power, voltage and phases', ampere((one) => one.current), ['nec-430'], note);
  enter('power.conductor-current', 'least that the conductors carry', '1.25 x full-load current', ampere((one) => one.conductors), ['nec-430'], FOR_THE_ELECTRICIAN);
  enter('power.breaker-greatest', 'greatest breaker, inverse time', '2.5 x full-load current', ampere((one) => one.breaker), ['nec-430'], `${FOR_THE_ELECTRICIAN} The code lets one take the next standard size up.`);
  const legs = ['motor.running-current', 'motor.running-current@a', 'motor.running-current@b', 'motor.running-current@c'].filter((key) => ledger.values.get(key)?.outcome.state === 'known');
  workOut(ledger, {
    key: 'power.running-share', title: 'current running against full load', dimension: 'ratio', formula: 'greatest leg running / full-load current of the plate, else of the table', sources: ['nec-430'],
    inputs: ['motor.current|power.full-load-current', ...(legs.length === 0 ? ['motor.running-current@a'] : legs)], work: (full, ...running) => Math.max(...running) / full!,
  });
  const answer = powerOf(input, seed, 100);
  const converter = answer.state === 'known' ? answer.converter : ({ state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') } as const);
  const idler: Outcome = converter.state === 'known'
    ? { state: 'known', quantity: { dimension: 'power', value: (converter.flywheelStart.least + converter.hardStart.most) / 2, uncertainty: (converter.hardStart.most - converter.flywheelStart.least) / 4, interval: [converter.flywheelStart.least, converter.hardStart.most] } }
    : converter;
  enter('power.converter-idler', 'idler of a rotary converter', 'motor power x 1.5 to 2 for the start of a wheel; the rules conflict', idler, ['phase-converter-rules'], converter.state === 'known' ? converter.flywheelStart.rules.map((rule) => `${rule.says} (${rule.source})`).join('; ') : undefined);
}
