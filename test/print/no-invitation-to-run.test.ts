import { describe, expect, test } from 'vitest';
import { judgementText } from '../../src/cli/judge.ts';
import type { Entry } from '../../src/entries/index.ts';
import { needsRun, PARTS } from '../../src/hammer/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { everythingSaid, FIVE } from './every-paper.ts';
import { pictureOf } from './paper-cases.ts';

/** Hammers that something stops: the two of the yard, and one of each family of which little more is known than a crack. */
const cracked = (family: 'coil-and-toggle' | 'bow-spring' | 'helve'): readonly Entry[] => new LogOf('50 lb', family).look('frame.crack', 'present').read('upper-die.height', '3 in').entries;
const STOPPED: readonly { readonly name: string; readonly entries: readonly Entry[] }[] = [
  ...FIVE.filter(({ name }) => name.startsWith('sallowfield') || name.startsWith('dunmarrow')),
  ...(['coil-and-toggle', 'bow-spring', 'helve'] as const).map((family) => ({ name: `a cracked ${family}`, entries: cracked(family) })),
];

/** How to take what only a running hammer shows, each sentence as the vocabulary has it. */
const HOWS = PARTS.flatMap((part) => [...part.places, ...part.looks]).filter((one) => needsRun(one.id)).map((one) => one.how);
/** Words that send somebody to the switch or the treadle. */
const INVITES = /full tread|light tread|while the hammer works|minutes? of running|under load|\brun (?:it|light|for an?|five)\b|the test bar|hot test bar after|\bfilm it\b/iu;
/** What stands beside them where it is no invitation: a wait, a limit, a step behind the work that cures it, a name of a reading with its value. */
const WAITS = /when it may run again|once it may run|may run again|nothing on this sheet lets it run|do not run it|full tread, as made/iu;
/** Tables of what was read or found, and names of points that were not done, ask for nothing. */
const RECORDS = ['What', 'Found', 'Point', 'What, and what was found', 'Look', 'Answers', 'Place', 'Source', 'Job', 'How known, and when', 'As written', 'Where', 'How'];

describe.each(STOPPED)('papers of $name, which something stops', ({ entries }) => {
  const picture = pictureOf(entries, 'inch');
  const said = everythingSaid(picture, entries);

  test('it is stopped', () => { expect(picture.duty.verdict).toBe('stand-down'); });

  test('ask for nothing that only a running hammer shows, but for when it may run again', () => {
    const asked = [...said, ...judgementText(picture).split('\n').map((line) => ['judge', line] as const)]
      .filter(([, text]) => HOWS.some((how) => text.includes(how)) && !WAITS.test(text));
    expect(asked).toEqual([]);
  });

  test('send nobody to the switch', () => {
    const sent = said.filter(([where, text]) => INVITES.test(text) && !WAITS.test(text) && !/Step \d+|Cautions|Readings|As made/u.test(where) && !RECORDS.some((column) => where.endsWith(`, ${column}`)));
    expect(sent).toEqual([]);
  });
});
