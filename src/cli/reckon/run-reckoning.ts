import { propagate } from '../../methods/chance/index.ts';
import { formatQuantity, quantity, readQuantity, type Quantity, type System, type UnitName } from '../../methods/quantity/index.ts';
import { BadInput } from '../door.ts';
import type { Given, Reckoning, ReckonOutcome } from './reckoning.ts';

/** One line of the answer with its doubt. */
export type ReckonedLine =
  | { readonly words: string; readonly quantity: Quantity; readonly unit?: UnitName }
  | { readonly words: string; readonly says: string };

export type Reckoned =
  | { readonly state: 'known'; readonly lines: readonly ReckonedLine[]; readonly warnings: readonly string[]; readonly given: readonly { readonly name: string; readonly text: string; readonly usual: boolean }[] }
  | { readonly state: 'outside-validity'; readonly because: string };

/** Where a doubt was written: elsewhere a figure handed to a handbook is taken as exact. */
const DOUBT_WRITTEN = /±|\+\s*\/?\s*[-−–]|plus or minus|about|~|\?/i;

interface ReadInputs {
  readonly quantities: ReadonlyMap<string, Quantity>;
  readonly choices: ReadonlyMap<string, string>;
  readonly given: readonly { readonly name: string; readonly text: string; readonly usual: boolean }[];
}

/**
 * Runs a calculation on inputs in shop notation; written doubts are carried through (JCGM 100:2008, 5.1.2).
 * @param texts by name of the input
 * @throws BadInput with every input that cannot be read
 */
export function runReckoning(reckoning: Reckoning, texts: Readonly<Record<string, string | undefined>>): Reckoned {
  const inputs = readInputs(reckoning, texts);
  const outcome = attempt(reckoning, inputs, new Map());
  if (outcome.state !== 'known') return outcome;
  const doubtful = [...inputs.quantities].filter(([, one]) => one.uncertainty > 0);
  const lines = outcome.lines.map((line, index): ReckonedLine => {
    if ('says' in line) return line;
    if (!Number.isFinite(line.value)) throw new BadInput(`${line.words} comes out without bound; other values are wanted: ${reckoning.name}`);
    const formula = (values: number[]): number => valueAt(attempt(reckoning, inputs, new Map(doubtful.map(([name], place) => [name, values[place] ?? Number.NaN]))), index);
    const { uncertainty } = doubtful.length === 0 ? { uncertainty: 0 } : propagate(formula, doubtful.map(([, one]) => one));
    return { words: line.words, quantity: quantity(line.value, line.dimension, Number.isFinite(uncertainty) ? uncertainty : 0), ...(line.unit === undefined ? {} : { unit: line.unit }) };
  });
  return { state: 'known', lines, warnings: outcome.warnings, given: inputs.given };
}

function valueAt(outcome: ReckonOutcome, index: number): number {
  const line = outcome.state === 'known' ? outcome.lines[index] : undefined;
  return line !== undefined && 'value' in line ? line.value : Number.NaN;
}

function attempt(reckoning: Reckoning, inputs: ReadInputs, moved: ReadonlyMap<string, number>): ReckonOutcome {
  const given: Given = {
    of: (name) => moved.get(name) ?? inputs.quantities.get(name)?.value ?? missing(reckoning, name),
    choice: (name) => inputs.choices.get(name) ?? missing(reckoning, name),
  };
  try {
    return reckoning.run(given);
  } catch (failure) {
    // The methods throw where a number is out of all range; here the number came from a person.
    throw new BadInput(failure instanceof Error ? failure.message : String(failure));
  }
}

const missing = (reckoning: Reckoning, name: string): never => {
  throw new Error(`${reckoning.name} asks for an input that it does not list: ${name}`);
};

function readInputs(reckoning: Reckoning, texts: Readonly<Record<string, string | undefined>>): ReadInputs {
  const quantities = new Map<string, Quantity>();
  const choices = new Map<string, string>();
  const problems: string[] = [];
  const given = reckoning.inputs.flatMap((input) => {
    const text = texts[input.name] ?? input.usual;
    if (text === undefined) {
      problems.push(`--${input.name} is missing; ${input.words}, such as ${reckoning.inputs.find((one) => one.kind === input.kind && one.usual !== undefined)?.usual ?? EXAMPLES[input.kind] ?? 'a number with its unit'}`);
      return [];
    }
    if (input.kind === 'choice') {
      if (input.choices !== undefined && !input.choices.includes(text)) problems.push(`--${input.name} cannot be used; one of ${input.choices.join(', ')}: ${text}`);
      choices.set(input.name, text);
    } else {
      const read = readQuantity(text, { dimension: input.kind, field: `--${input.name}`, ...(MAY_BE_BELOW_NOTHING.includes(input.kind) ? {} : { min: 0 }) });
      if (read.ok) quantities.set(input.name, DOUBT_WRITTEN.test(text) ? read.quantity : { ...read.quantity, uncertainty: 0 });
      else problems.push(`--${input.name}: ${read.problem.message}; ${read.problem.expected}: ${read.problem.value}`);
    }
    return [{ name: input.name, text, usual: texts[input.name] === undefined }];
  });
  if (problems.length > 0) throw new BadInput(problems.join('\n'));
  return { quantities, choices, given };
}

/** What a person may rightly give below nothing. */
const MAY_BE_BELOW_NOTHING: readonly string[] = ['temperature', 'angle', 'level', 'taper', 'velocity'];

const EXAMPLES: Readonly<Partial<Record<string, string>>> = { length: '2 3/4 in', mass: '65 lb', force: '200 lbf', rotation: '320 rpm', power: '2 hp', pressure: '100 MPa', stiffness: '400 lbf/in', temperature: '1000 °C', count: '8', energy: '150 J', voltage: '230 V', level: '96 dB', velocity: '4 m/s', angle: '30 deg' };

/** The answer as text. */
export function reckonedText(reckoning: Reckoning, reckoned: Reckoned, system: System): string {
  const tail = `\nformula: ${reckoning.formula}\nsource: ${reckoning.source}\nholds for: ${reckoning.validity}\n`;
  if (reckoned.state !== 'known') return `${reckoning.title}\n\nNo figure: ${reckoned.because}.\n${tail}`;
  const width = Math.max(...reckoned.lines.map((line) => line.words.length));
  const lines = reckoned.lines.map((line) => `  ${line.words.padEnd(width)}  ${'says' in line ? line.says : formatQuantity(line.quantity, { system, ...(line.unit === undefined ? {} : { unit: line.unit }) })}`);
  const given = reckoned.given.map((one) => `${one.name} ${one.text}${one.usual ? ' (usual)' : ''}`).join(', ');
  return `${reckoning.title}\n\n${lines.join('\n')}\n${reckoned.warnings.map((warning) => `\nWARNING: ${warning}\n`).join('')}\ngiven: ${given}${DOUBT_WRITTEN.test(given) ? '' : '\nWhat was given is taken as exact; write it with ± to see what its doubt does.'}${tail}`;
}
