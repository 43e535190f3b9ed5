import type { Command } from 'commander';
import { CORNERS, LINKAGE_FAMILIES, lookOf, partsFor, placeOf, type LinkageFamily, type Look, type MeasuringPlace, type Part } from '../hammer/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { readQuantity } from '../methods/quantity/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import { writeText } from './write-text.ts';

interface NewOptions {
  readonly family: string;
  readonly class: string;
  readonly tag: string;
  readonly by: string;
  readonly output?: string;
}

/** `new`: a blank survey to fill in, what the verdict waits for first, everything else behind it as lines to uncover. */
export const newCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program.command('new')
    .description('write a blank survey file to fill in with a text editor: what the verdict waits for first, then every reading and look, each with how to take it')
    .option('--family <family>', `linkage: ${LINKAGE_FAMILIES.join(', ')}`, 'coil-and-toggle')
    .option('--class <weight>', 'nominal ram weight', '50 lb')
    .option('--tag <tag>', 'tag that hangs on the hammer', 'HAMMER-1')
    .option('--by <name>', 'who surveys it', 'your name')
    .option('-o, --output <file>', 'file to write; standard output where it is left out')
    .action(async (options: NewOptions) => {
      const family = LINKAGE_FAMILIES.find((one) => one === options.family);
      if (family === undefined) throw new BadInput(`no such linkage is known; one of ${LINKAGE_FAMILIES.join(', ')}: ${options.family}`);
      const ram = readQuantity(options.class, { dimension: 'mass', field: '--class' });
      if (!ram.ok) throw new BadInput(`--class: ${ram.problem.message}; ${ram.problem.expected}: ${ram.problem.value}`);
      await writeText(options.output, blankSurvey(family, options, door.now().slice(0, 10)), door);
      ended(EXIT.fine);
    });
};

/** The blank survey as YAML. Lines that begin with a number sign are uncovered by taking it away. */
export function blankSurvey(family: LinkageFamily, about: { readonly class: string; readonly tag: string; readonly by: string }, day: string): string {
  const gates = knowledge.criteria.filter((criterion) => criterion.gate && criterion.families.includes(family));
  const wanted = new Set(gates.map((gate) => (gate.rule.kind === 'seen' ? gate.rule.look : gate.rule.value === 'stack.rest-gap' ? 'upper-die.rest-gap' : gate.rule.value)));
  const parts = partsFor(family);
  const looksFirst = [...wanted].flatMap((id) => lookOf(id)?.look ?? []);
  const placesFirst = [...wanted].flatMap((id) => placeOf(id)?.place ?? []);
  const made = parts.flatMap((part) => part.places.filter((place) => place.asMade === true));
  return [
    '# A survey of one hammer. Fill in what you know; a line that begins with # counts only once the # is gone.',
    '# Readings in shop notation: 2 3/4 in, 12 thou, 47.5 mm, 1 7/8 in ± 1/32. Check it: tupwise check FILE',
    'tupwise: 1', 'hammer:', `  tag: ${quoted(about.tag)}`, `  family: ${family}`, `  class: ${quoted(about.class)}`, '  # maker: ', '  # serial: ""', '  # year: ', '  # place: ', '',
    '# as made:', ...made.map((place) => `#   ${place.id}: `), '',
    'visits:', `  - date: ${day}`, `    by: ${quoted(about.by)}`, '',
    '    # Power off and locked, belt thrown off, ram blocked on hardwood.',
    '    # First what the verdict waits for.',
    '    looks:', ...looksFirst.flatMap((look) => lookLines(look, '      ')), '      # the rest:',
    ...rest(parts, (part) => part.looks, wanted).flatMap((look) => lookLines(look, '      ')),
    '      # only where a part is made new, so that it can be drawn:',
    ...forMaking(parts, (part) => part.looks).flatMap((look) => lookLines(look, '      ')), '',
    '    readings:', ...placesFirst.flatMap((place) => placeLines(place, '      ')), '      # the rest:',
    ...rest(parts, (part) => part.places, wanted).flatMap((place) => placeLines(place, '      ')),
    '      # only where a part is made new, so that it can be drawn:',
    ...forMaking(parts, (part) => part.places).flatMap((place) => placeLines(place, '      ')), '',
    '    # told:', '    #   - {words: "...", by: "..."}', '    # prices:', '    #   - {of: spring.renew, price: 95, source: quoted}', '',
  ].join('\n');
}

interface Asked {
  readonly id: string;
  readonly forMaking?: true;
}

const rest = <T extends Asked>(parts: readonly Part[], of: (part: Part) => readonly T[], wanted: ReadonlySet<string>): readonly T[] => parts.flatMap(of).filter((one) => one.forMaking !== true && !wanted.has(one.id));
const forMaking = <T extends Asked>(parts: readonly Part[], of: (part: Part) => readonly T[]): readonly T[] => parts.flatMap(of).filter((one) => one.forMaking === true);

function lookLines(look: Look, indent: string): readonly string[] {
  const answers = look.answers.map((answer) => `${answer.id} (${answer.words})`).join(' | ');
  const value = look.at.length === 0 ? '' : `{${look.at.map((at) => `${at}: `).join(', ')}}`;
  return [`${indent}# ${look.question} ${look.how}`, `${indent}#   one of: ${answers}`, `${indent}# ${look.id}: ${value}`];
}

function placeLines(place: MeasuringPlace, indent: string): readonly string[] {
  const each = place.at.filter((at) => !CORNERS.includes(at));
  const ways = place.ways === undefined ? [] : [`${indent}#   way: ${place.ways.map((way) => `${way.id} (${way.words})`).join(' | ')}`];
  return [`${indent}# ${place.name}: ${place.how}`, ...ways, `${indent}# ${place.id}: ${each.length === 0 ? '' : `{${each.map((at) => `${at}: `).join(', ')}}`}`];
}

const quoted = (text: string): string => JSON.stringify(text);
