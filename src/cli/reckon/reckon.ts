import type { Command } from 'commander';
import { nearestName } from '../../entries/index.ts';
import { BadInput, EXIT, type Door } from '../door.ts';
import { table } from '../words.ts';
import { RECKONINGS } from './catalogue.ts';
import type { Reckoning } from './reckoning.ts';
import { reckonedText, runReckoning } from './run-reckoning.ts';

type Options = Readonly<Record<string, string | boolean | undefined>>;

/** `reckon NAME`: one handbook calculation by itself. */
export const reckonCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  const reckon = program.command('reckon')
    .description('one handbook calculation by itself, with units, formula, source and where it holds; inputs in shop notation')
    .option('--list', 'list the calculations')
    .option('--json', 'write for machines')
    .argument('[name]', 'calculation')
    .action((name: string | undefined, options: Options) => {
      if (name !== undefined) throw new BadInput(`no such calculation is known; ${nearWords(name)}: ${name}`);
      if (options['json'] === true) door.out(`${JSON.stringify({ reckonings: RECKONINGS.map(({ run: _run, ...rest }) => rest) }, null, 2)}\n`);
      else door.out(`${table(RECKONINGS.map((one) => [one.name, one.title]))}\n\nreckon NAME --help shows what one of them must be told.\n`);
      ended(EXIT.fine);
    });
  for (const one of RECKONINGS) addReckoning(reckon, one, door, ended);
};

function nearWords(name: string): string {
  const near = nearestName(name, RECKONINGS.map((one) => one.name));
  return near === undefined ? 'one that reckon --list names' : `did you mean ${near}`;
}

function addReckoning(reckon: Command, one: Reckoning, door: Door, ended: (exit: number) => void): void {
  const command = reckon.command(one.name).description(one.title);
  for (const input of one.inputs) {
    const kind = input.kind === 'choice' ? 'word' : input.kind;
    const choices = input.choices === undefined ? '' : `: ${input.choices.join(', ')}`;
    // The usual value is put in by the calculation itself, so that the answer can say which were taken.
    command.option(`--${input.name} <${kind}>`, `${input.words}${choices}${input.usual === undefined ? '' : ` (usual: ${input.usual})`}`);
  }
  command
    .option('--metric', 'print in metric units')
    .option('--json', 'write for machines')
    .addHelpText('after', `\nformula: ${one.formula}\nsource: ${one.source}\nholds for: ${one.validity}`)
    .action((_options: Options, self: Command) => {
      const options = self.optsWithGlobals<Options>();
      const texts = Object.fromEntries(one.inputs.map((input) => [input.name, textOf(options, input.name)]));
      const reckoned = runReckoning(one, texts);
      if (options['json'] === true) {
        const { run: _run, inputs: _inputs, ...about } = one;
        door.out(`${JSON.stringify({ ...about, ...reckoned }, null, 2)}\n`);
      } else door.out(reckonedText(one, reckoned, options['metric'] === true ? 'metric' : 'inch'));
      ended(reckoned.state === 'known' ? EXIT.fine : EXIT.notKnownYet);
    });
}

/** commander keeps `--free-length` as `freeLength`. */
function textOf(options: Options, name: string): string | undefined {
  const value = options[name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())];
  return typeof value === 'string' ? value : undefined;
}
