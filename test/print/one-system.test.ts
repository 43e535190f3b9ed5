import { describe, expect, test } from 'vitest';
import { everythingSaid, FIVE, type Said } from './every-paper.ts';
import { CASES, pictureOf } from './paper-cases.ts';

/** Units of the other system with a figure before them, and lengths that are said without one. */
const OTHER = {
  metric: /(?<![\w.])\d[\d,./ ]*\s?(?:in|inch|inches|thou|ft|feet|lb|lbf|psi|psf|ksi|hp|°F|fl oz|oz)(?![\w·°])(?! \d)|\b(?:[Oo]ne|[Tt]wo|[Tt]hree|[Ff]ive|[Ss]ix|[Ss]even|[Tt]en) (?:feet|foot)\b|\b(?:[Aa]n?|[Hh]alf an|[Oo]ne|[Ee]ach|[Pp]er) (?:half )?inch\b|\bthou\b|\bthousandths?\b/gu,
  inch: /(?<![\w.])\d[\d,.]*\s?(?:mm|cm|m|kg|kPa|MPa|kN|N|kW|W|J|°C|cm³|m³)(?![\w²³/(])|\b(?:milli)?metres?\b/gu,
} as const;
/** Figures with more places than anybody means: a limit of 300 mm printed as 11.81 in. Readings and sizes to make have theirs. */
const ODD = { metric: /(?<![\w.])\d+\.\d{4,} (?:mm|kg)(?!\/)/gu, inch: /(?<![\w.])\d{2,}\.\d{2,} (?:in|ft|lb)\b/gu } as const;

/** What somebody wrote stands as he wrote it, and a source's own figure in brackets behind the reader's; a class and the name of a rule are names. */
const asWritten = (text: string): string => text.replace(/\(written [^)]*\)/gu, '').replace(/(?<=\d ?(?:in|ft|lb|psi|hp|thou|°?F)) \([^)]*\)/gu, '').replace(/\d+ lb(?: class|, (?:bow|coil|helve))/gu, '').replace(/\d+ CFR/gu, '').replace(/\bin \d+(?: |$)/gu, ' ');
const NAMES: readonly string[] = ['As written', 'How known, and when', 'Ram class and linkage', 'Ram class', 'Source', 'Where'];
/** What somebody said of a reading stands in brackets behind its name. */
const saidOfIt = (where: string, text: string): string => (/, (?:What|list)$/u.test(where) ? text.replace(/\([^)]*to the inch\)/u, '') : text);

describe.each([...CASES, ...FIVE.slice(1).filter(({ name }) => !name.startsWith('tannerwick'))])('papers of $name', ({ entries }) => {
  test.each(['inch', 'metric'] as const)('speak in one system: %s', (system) => {
    const strange = strangeIn(everythingSaid(pictureOf(entries, system), entries), OTHER[system]);
    expect(strange).toEqual([]);
  });

  test.each(['inch', 'metric'] as const)('print no figure finer than it is meant: %s', (system) => {
    const said = everythingSaid(pictureOf(entries, system), entries).filter(([where]) => !/Readings|As made|Worked out|Drawing|Order sheet|Setting/u.test(where));
    expect(strangeIn(said, ODD[system])).toEqual([]);
  });
});

const strangeIn = (said: readonly Said[], strange: RegExp): readonly string[] => said
  .filter(([where]) => !NAMES.some((name) => where.endsWith(`, ${name}`)))
  .flatMap(([where, text]) => [...asWritten(saidOfIt(where, text)).matchAll(strange)].map(({ 0: found, index }) => `${where}: ${asWritten(saidOfIt(where, text)).slice(Math.max(0, index - 40), index + found.length + 25)}`));
