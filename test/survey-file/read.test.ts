import { describe, expect, it } from 'vitest';
import { canonicalJson, decodeEntry, logHash, readSurveyFile, type EntryOf, type KnownEntry } from '../../src/entries/index.ts';

const inch = 0.0254;

const SURVEY = `tupwise: 1
hammer: {tag: T-65, family: coil-and-toggle, class: 65 lb, maker: Anywhere Works, serial: "0187", year: about 1912, place: north bay, invented: true}
as made:
  upper-die.height: 3 in
  lower-die.height: {value: 3 in, from: a drawing in the drawer}
visits:
  - date: 2026-04-11
    time: 9:30
    zone: -05:00
    by: Ada Quill
    readings:
      upper-die.height: 2 3/4 in
      lower-die.height: {value: 1 7/8 in, tool: caliper, way: above-seat-base, words: "net: from the seat floor"}
      main-bearings.clearance: {front: 9 thou, rear: {value: 4 thou, words: cap off}, tool: dial-indicator}
      toggle-pins.play@upper-left: .011
      running.rate: {value: 305 rpm, told by: the last owner}
    looks:
      frame.crack: none
      keys.state: {upper: mushroomed, lower: {answer: good, told by: the last owner}}
    settings:
      coil-spring.installed-length: {value: 8 in, before: 8 1/4 in, words: slacked one turn}
    told:
      - it always ran
      - {words: never welded, by: the seller, part: frame}
    photographs:
      - {sha256: ${'ab'.repeat(32)}, type: image/jpeg, words: rear of the column, part: frame}
    recordings:
      - {sha256: ${'cd'.repeat(32)}, type: audio/wav, run: idle}
    hours: 6 h
    jobs:
      clutch-reline: {state: done, hours: 7 h}
      pour-bearings: planned
    prices:
      - {of: upper-die, price: 120 USD, source: quoted, lead days: 21}
      - {of: babbitt, price: 80}
    overrides:
      guide.play@top: {from: 0.040 in, grade: limited, author: B. Oake, reason: light work only}
  - date: 2026-05-02
    by: Ada Quill
    corrections:
      - {visit: 2026-04-11, of: main-bearings.clearance@rear, why: read with the cap loose}
`;

const of = <K extends KnownEntry['kind']>(entries: readonly { kind: string }[], kind: K): readonly EntryOf<K>[] => entries.filter((entry) => entry.kind === kind) as EntryOf<K>[];

describe('reading a survey file', () => {
  const { entries, problems } = readSurveyFile(SURVEY);

  it('reads every section without a problem, into entries that decode', () => {
    expect(problems).toEqual([]);
    for (const entry of entries) expect(decodeEntry(entry)).toEqual({ ok: true, entry });
    const count = (kind: KnownEntry['kind']): number => of(entries, kind).length;
    expect({ enrol: count('enrol'), made: count('as-made'), read: count('reading'), seen: count('sighting'), set: count('setting'), said: count('statement'), photographs: count('photograph'), recordings: count('recording'), hours: count('hours'), jobs: count('job-progress'), prices: count('price'), overrides: count('override'), corrections: count('correction') })
      .toEqual({ enrol: 1, made: 2, read: 6, seen: 3, set: 1, said: 2, photographs: 1, recordings: 1, hours: 1, jobs: 2, prices: 2, overrides: 1, corrections: 1 });
  });

  it('keeps the identity as written, leading noughts and all', () => {
    expect(of(entries, 'enrol')[0]?.body).toMatchObject({ tag: 'T-65', serial: '0187', year: 'about 1912', invented: true, ramClass: { asWritten: '65 lb' } });
    expect(new Set(entries.map((entry) => entry.hammer))).toEqual(new Set([of(entries, 'enrol')[0]?.id]));
  });

  it('reads short, long and several places, in SI with the text beside it', () => {
    const read = Object.fromEntries(of(entries, 'reading').map(({ body }) => [body.at === undefined ? body.place : `${body.place}@${body.at}`, body]));
    expect(read['upper-die.height']?.quantity.value).toBeCloseTo(2.75 * inch, 9);
    expect(read['lower-die.height']).toMatchObject({ asWritten: '1 7/8 in', tool: 'caliper', way: 'above-seat-base', standing: 'measured' });
    expect(read['main-bearings.clearance@front']).toMatchObject({ asWritten: '9 thou', tool: 'dial-indicator' });
    expect(read['main-bearings.clearance@rear']).toMatchObject({ words: 'cap off', tool: 'dial-indicator' });
    expect(read['toggle-pins.play@upper-left']?.quantity.value).toBeCloseTo(0.011 * inch, 9);
    expect(read['running.rate']).toMatchObject({ standing: 'told', saidBy: 'the last owner' });
  });

  it('lets the tool give the doubt where a fraction does not say how finely it was read', () => {
    const doubt = (text: string, tool?: string): number | undefined => {
      const read = readSurveyFile(SURVEY.replace('upper-die.height: 2 3/4 in', `upper-die.height: {value: ${text}${tool === undefined ? '' : `, tool: ${tool}`}}`));
      return of(read.entries, 'reading').find((entry) => entry.body.place === 'upper-die.height')?.body.quantity.uncertainty;
    };
    // A rule carries 1/32 in at 95 %, a calliper 3 thou: half of each is the standard uncertainty.
    expect(doubt('2 3/4 in', 'rule')).toBeCloseTo(inch / 64, 9);
    expect(doubt('2 3/4 in', 'caliper')).toBeCloseTo(0.0015 * inch, 9);
    expect(doubt('2 3/4 in')).toBeCloseTo(inch / 64, 9);
    expect(doubt('2 3/4 ± 1/16 in', 'caliper')).toBeCloseTo(inch / 32, 9);
    expect(doubt('about 2 3/4 in', 'rule')).toBeCloseTo(inch / 32, 9);
    // A decimal says how finely it was read: half of the last place as a rectangular limit, where that is coarser than the tool.
    expect(doubt('2.7 in', 'caliper')).toBeCloseTo((0.1 * inch) / 2 / Math.sqrt(3), 9);
  });

  it('gives the visit its hour and zone, and points a correction at its entry', () => {
    expect(of(entries, 'hours')[0]?.at).toBe('2026-04-11T09:30:00-05:00');
    const wrong = of(entries, 'reading').find((entry) => entry.body.at === 'rear');
    expect(of(entries, 'correction')[0]?.body).toEqual({ entry: wrong?.id, why: 'read with the cap loose' });
  });

  it('gives equal entries when it reads twice, and other ids as soon as a word changes', () => {
    expect(canonicalJson(readSurveyFile(SURVEY).entries)).toBe(canonicalJson(entries));
    const changed = readSurveyFile(SURVEY.replace('slacked one turn', 'slacked two turns')).entries;
    expect(logHash(changed)).not.toBe(logHash(entries));
    const ids = new Set(entries.map((entry) => entry.id));
    expect(changed.filter((entry) => !ids.has(entry.id))).toHaveLength(1);
  });

  it('keeps two equal statements of one visit apart', () => {
    const twice = readSurveyFile(SURVEY.replace('      - it always ran\n', '      - it always ran\n      - it always ran\n'));
    expect(twice.problems).toEqual([]);
    expect(twice.entries).toHaveLength(entries.length + 1);
  });
});
