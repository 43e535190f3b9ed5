import { MOTOR_JOB, motorToFit, powerInputOf, powerOf, type Power, type PowerInput } from '../../derived/power/index.ts';
import type { Block, TableRow } from '../report/block.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import { keyWords } from '../work/key-words.ts';
import { platePower } from './plate-power.ts';
import { missingOf, type OutlookGround, type SheetParts } from './sheet-parts.ts';
import { numberOf, shownOutcome, shownPlain, shownRough } from './shown.ts';
import { supplyChain } from './supply-chain.ts';

const PLATE = ['motor.power', 'motor.voltage', 'motor.phase', 'motor.current', 'motor.running-current', 'starter.isolation', 'starter.no-volt', 'starter.overload', 'phase-converter.fitted'] as const;

/** Motor, supply and drive: what the electrician is told, and what to beware of until he has been. */
export function powerSheet(ground: OutlookGround): SheetParts {
  const { picture, outlook } = ground;
  const input = powerInputOf(outlook.values, picture.known);
  const answer = powerOf(input, picture.provenance.seed);
  const power = answer.state === 'known' ? answer : undefined;
  const missing = missingOf(picture, PLATE).filter((key) => key !== 'motor.running-current' || input.runningCurrents.length === 0);
  return {
    answer: power === undefined ? { kind: 'answer', words: 'The plate cannot be as read', sentence: answer.state === 'refused' ? answer.problems.map((problem) => problem.sentence).join('. ') : '', estimate: true, rests: 'Read the plate again.' } : answerOf(ground, input, power),
    measureFirst: missing.map((key) => onceItMayRun(picture, [key], `${keyWords(key)}.`)),
    body: () => [
      ...chainBlocks(ground, input),
      ...(power === undefined ? [] : [...cautionsFound(power), ...currentBlocks(ground, input, power), ...newMotorBlocks(ground, input), ...converterBlocks(ground, power)]),
    ],
    assumed: [
      ...(power?.reckoned === undefined ? [] : [`Current by arithmetic: ${power.reckoned.standing}.`]),
      ...(input.power === undefined && input.usualPower !== undefined ? [`Motor usual for the class: ${shownRough(input.usualPower.value, 'power', picture.system)} (common practice, no source).`] : []),
      'Starting torque of such motors 0.9 to 2.3 times rated, from memory.',
    ],
    doubt: [...(power?.notKnown.map((one) => `Not known: ${one}.`) ?? []), 'The code’s table is that of the United States; other countries have their own, and the electrician’s is the one that holds.'],
    cautions: ['electrician', 'isolate', 'pinch'],
    defers: 'For a licensed electrician under the local code. These figures prepare the talk; they choose neither wire nor breaker.',
    sources: ['nec-430', 'phase-converter-rules', 'leather-belt-rules', 'nema-mg-1', 'osha-1910-218', 'page-safety', 'from-memory'],
  };
}

function answerOf({ picture }: OutlookGround, input: PowerInput, power: Power): SheetParts['answer'] {
  const { system } = picture;
  const { table, reckoned } = power;
  const found = power.cautions.filter((one) => one.found).map((one) => one.sentence);
  const running = power.running === undefined ? [] : [power.running.sentence];
  const motor = input.power === undefined ? (input.usualPower === undefined ? '' : `Usual for the class: about ${shownRough(input.usualPower.value, 'power', system)}.`) : `${platePower(input.power, system)} on the plate${power.motorShare === undefined ? '' : `, ${share(power.motorShare)} of what the class usually has`}.`;
  const planned = plannedMotor(picture);
  const wanted = planned === undefined ? '' : `A larger one is on the worksheet, ${planned.words} at the least: its wire and breaker stand below, and nothing is laid for the old one.`;
  const sentence = [...found, motor, ...running, power.startSentence ?? '', wanted].filter((one) => one !== '').join(' ');
  const thin = table.state === 'known' && power.running !== undefined && power.running.current > table.conductors ? `Wire for ${amperes(table.conductors)} does not carry the ${amperes(power.running.current)} that it draws.` : '';
  if (table.state === 'known') return { kind: 'answer', words: `${overloaded(power)}${overloaded(power) === '' ? 'Full load' : 'full load by the table'} ${amperes(table.current)}: conductors from ${amperes(table.conductors)}, breaker to ${amperes(table.breaker)}`, sentence: [thin, sentence].filter((one) => one !== '').join(' '), estimate: false, rests: `By the table for the ${table.column} V column. ${table.note}` };
  if (reckoned !== undefined) return { kind: 'answer', words: `${overloaded(power)}${overloaded(power) === '' ? 'About' : 'about'} ${reckoned.least.toFixed(0)} to ${reckoned.most.toFixed(0)} A at full load`, sentence, estimate: true, rests: `${table.state === 'outside-validity' ? `No figure by the table: ${table.because}. ` : ''}By arithmetic alone: ${reckoned.standing}.` };
  return { kind: 'answer', words: 'Current not known: read the motor’s plate', sentence, estimate: true, rests: table.state === 'not-known' ? `Missing: ${table.missing.map(keyWords).join('; ')}.` : table.because };
}

/** What a motor that draws more than it may is read at goes before every figure of tables: `It draws 16 A, 139 % of its plate; `. */
const overloaded = ({ running }: Power): string => (running === undefined || running.share <= 1 ? '' : `It draws ${amperes(running.current)}, ${share(running.share)} of its ${running.against === 'plate' ? 'plate' : 'full load'}; `);

const amperes = (current: number): string => `${current < 10 ? current.toFixed(1) : current.toFixed(0)} A`;
/** As the plate has it: a relay that was set to a rounded figure would let the motor burn. */
const onThePlate = (current: number): string => `${Number(current.toPrecision(4))} A`;
const share = (one: number): string => `${Math.round(100 * one)} %`;

function cautionsFound(power: Power): readonly Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Wiring: beware' },
    { kind: 'list', ordered: false, items: power.cautions.map((one) => `${one.found ? 'Found here: ' : ''}${one.sentence}`) },
  ];
}

/** Supply, isolator, starter, converter, motor and belt in one line, each as it was found. */
function chainBlocks({ picture, width }: OutlookGround, input: PowerInput): readonly Block[] {
  const { svg, words } = supplyChain(picture, input, width ?? 'sheet');
  return [{ kind: 'heading', level: 2, text: 'From the supply to the wheel' }, { kind: 'figure', svg, words, caption: 'Dotted: nobody looked. Black: to be put right before it runs.' }];
}

function currentBlocks({ picture: { system }, outlook: { values } }: OutlookGround, input: PowerInput, power: Power): readonly Block[] {
  const { table, reckoned, running } = power;
  const rows: readonly (TableRow | undefined)[] = [
    { cells: ['Plate', [input.power === undefined ? undefined : platePower(input.power, system), input.voltage === undefined ? undefined : `${input.voltage.toFixed(0)} V`, PHASES[input.phase], input.plateCurrent === undefined ? undefined : onThePlate(input.plateCurrent)].filter((one) => one !== undefined).join(', '), 'as read; what is not there was not read'] },
    { cells: ['Full-load current by the table', table.state === 'known' ? amperes(table.current) : table.state === 'not-known' ? 'not known yet' : `no figure: ${table.because}`, 'for wire and breaker'] },
    ...(table.state === 'known' ? [{ cells: ['Least that the conductors carry', amperes(table.conductors), '1.25 times the table’s current'] }, { cells: ['Greatest breaker, inverse time', amperes(table.breaker), '2.5 times it; the code lets one take the next standard size up'] }] : []),
    reckoned === undefined ? undefined : { cells: ['Full-load current by arithmetic, estimate', `${reckoned.least.toFixed(1)} to ${reckoned.most.toFixed(1)} A`, reckoned.standing] },
    { cells: ['Overload relay', input.plateCurrent === undefined ? 'not known yet: the plate’s current' : onThePlate(input.plateCurrent), 'by the plate, not by the table'] },
    running === undefined ? { cells: ['Current running', 'not read', 'each leg with a clamp meter, by whoever may open the box'] } : { cells: ['Current running', `${share(running.share)} of full load`, running.against === 'plate' ? 'against the plate' : 'against the table'] },
    power.motorShare === undefined ? undefined : { cells: ['Motor against what the class has', share(power.motorShare), `usual ${input.usualPower === undefined ? '' : shownRough(input.usualPower.value, 'power', system)}`] },
    power.beltShare === undefined ? undefined : { cells: ['Motor against what the belt carries', share(power.beltShare), power.beltShare > 1 ? 'the belt slips before the motor stalls' : `the belt carries ${shownOutcome(values['drive.belt-power'], system)}`] },
    numberOf(values, 'capacity.blow-power-share') === undefined ? undefined : { cells: ['Full blows against the motor', shownOutcome(values['capacity.blow-power-share'], system), 'above 1 the rate sinks under full blows'] },
  ];
  return [{ kind: 'heading', level: 2, text: 'Currents and loads' }, { kind: 'table', caption: 'What was read and what follows', dense: true, columns: ['What', 'Figure', 'How'], rows: rows.filter((row) => row !== undefined) }];
}

/** Wire, breaker and overload of the motor that an open job fits: nobody lays a cable for the old one. */
function newMotorBlocks({ picture }: OutlookGround, input: PowerInput): readonly Block[] {
  const planned = plannedMotor(picture);
  if (planned === undefined) return [];
  const { plateCurrent: _old, startTime: _start, ...rest } = input;
  const power = powerOf({ ...rest, power: planned.power, runningCurrents: [] }, picture.provenance.seed, 10);
  if (power.state !== 'known') return [];
  const { table, reckoned } = power;
  const current = table.state === 'known' ? amperes(table.current) : reckoned === undefined ? 'not known: supply and voltage first' : `about ${reckoned.least.toFixed(0)} to ${reckoned.most.toFixed(0)} A, by arithmetic`;
  return [
    { kind: 'heading', level: 2, text: 'The new motor' },
    { kind: 'table', caption: `A larger motor is on the worksheet, ${planned.words} at the least, on the supply that is there now: wire, breaker and belt are for it and not for the old one`, dense: true, columns: ['What', 'Figure', 'How'], rows: [
      { cells: ['Full-load current', current, table.state === 'known' ? 'by the table' : 'an estimate'] },
      ...(table.state === 'known' ? [{ cells: ['Least that the conductors carry', amperes(table.conductors), '1.25 times the table’s current'] }, { cells: ['Greatest breaker, inverse time', amperes(table.breaker), '2.5 times it; the code lets one take the next standard size up'] }] : []),
      { cells: ['Overload relay', 'by the new motor’s own plate', 'set anew when it is fitted'] },
      ...(power.beltShare === undefined ? [] : [{ cells: ['New motor against what the belt carries', share(power.beltShare), power.beltShare > 1 ? 'this belt slips first: a wider one with the new motor' : 'the belt that is there carries it'] }]),
    ] },
  ];
}

/** The motor to fit, where the worksheet still has that job. */
const plannedMotor = ({ worksheet, known, system }: OutlookGround['picture']) =>
  worksheet.jobs.some((job) => job.job === MOTOR_JOB && job.state !== 'done' && job.state !== 'dropped') ? motorToFit(known.identity.ramClass.quantity.value, system) : undefined;

const PHASES: Readonly<Record<PowerInput['phase'], string | undefined>> = { single: 'single-phase', three: 'three-phase', 'three-from-converter': 'three-phase from a converter', 'direct-current': 'direct current', 'not-known': undefined };

function converterBlocks({ picture: { system } }: OutlookGround, { converter }: Power): readonly Block[] {
  if (converter.state === 'does-not-apply') return [{ kind: 'paragraph', tone: 'small', text: `Converter: not wanted; ${converter.because}.` }];
  if (converter.state === 'not-known') return [{ kind: 'paragraph', tone: 'small', text: `Whether it wants a converter is not known: ${converter.missing.map(keyWords).join('; ')}.` }];
  const watts = (value: number): string => shownPlain(value, 'power', system, { resolution: system === 'inch' ? 745.7 / 4 : 50 });
  const microfarads = (range: { readonly least: number; readonly most: number }): string => `${(range.least * 1e6).toFixed(0)} to ${(range.most * 1e6).toFixed(0)} µF`;
  return [
    { kind: 'heading', level: 2, text: 'Converter' },
    { kind: 'paragraph', text: converter.sentence },
    { kind: 'table', caption: 'Idler of a rotary converter: the rules of practice do not agree, so each is shown', columns: ['Rule', 'Idler', 'From'], rows: [...converter.flywheelStart.rules, ...converter.hardStart.rules].filter((rule, index, all) => all.findIndex((one) => one.says === rule.says) === index).map((rule) => ({ cells: [rule.says, rule.least === rule.most ? watts(rule.least) : `${watts(rule.least)} to ${watts(rule.most)}`, rule.source] })) },
    { kind: 'facts', rows: [['Capacitors at 230 V, 60 Hz', `start ${microfarads(converter.capacitors.start)}, self-start ${microfarads(converter.capacitors.selfStart)}, balance ${microfarads(converter.capacitors.balance)}; settled by reading the voltages of the three legs under load`]] },
  ];
}
