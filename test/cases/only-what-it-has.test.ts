import { describe, expect, it, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { oilingLimit } from '../../src/derived/duty/index.ts';
import { oilingRound } from '../../src/derived/oiling/index.ts';
import { settingSheet } from '../../src/derived/upkeep/index.ts';
import { saysLeftOut } from '../../src/hammer/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { partConditions } from '../../src/views/elevation/index.ts';
import { handOverSheet, type SheetId } from '../../src/views/work/index.ts';
import { EXAMPLE_PICTURES } from './example-pictures.ts';
import { LogOf } from './log-of.ts';

const CLUTCH = ['clutch-facing', 'clutch-pulley', 'shipper'];
const jobOf = (id: string) => knowledge.jobs.find((job) => job.id === id);

/** A helve whose slack belt is the clutch, everything else not looked at. */
function slackBelt(...looks: readonly (readonly [string, string])[]) {
  const log = new LogOf('150 lb', 'helve');
  log.look('drive-line.kind', 'idler-belt').look('belt-idler.fitted', 'yes').look('clutch-facing.kind', 'none');
  for (const [look, answer] of looks) log.look(look, answer);
  const found = picture(log.entries, knowledge, '2027-01-01T00:00:00Z', 1);
  if (found === undefined) throw new Error('no hammer');
  return found;
}

describe.each(EXAMPLE_PICTURES)('$tag', ({ found, entries }) => {
  const { looks } = found.known;
  const leftOut = (part: string): boolean => saysLeftOut(part, looks) !== undefined;

  it('asks for no job that is nothing without a part that it has not got', () => {
    const wrong = [...found.worksheet.jobs, ...(found.worksheet.mayBe ?? [])].filter((one) => jobOf(one.job)?.otherwise !== undefined && leftOut(one.part));
    expect(wrong.map((one) => one.job)).toEqual([]);
  });

  it('asks nobody to check a part that it has not got', () => {
    expect(found.notChecked.filter((row) => leftOut(row.part)).map((row) => row.part)).toEqual([]);
  });

  it('has a finding on such a part only where the look itself is judged', () => {
    const judged = found.findings.filter((one) => leftOut(one.part) && one.grade !== 'does-not-apply');
    expect(judged.filter((one) => !one.from.includes(saysLeftOut(one.part, looks) ?? '')).map((one) => one.criterion)).toEqual([]);
  });

  it('has no point of the oiling round and no setting on such a part', () => {
    expect(oilingRound(found.known).points.filter((one) => leftOut(one.point.part)).map((one) => one.point.id)).toEqual([]);
    expect(settingSheet({ known: found.known, values: found.values }).filter((line) => leftOut(line.id === 'clutch' ? 'clutch-pulley' : line.id)).map((line) => line.id)).toEqual([]);
  });

  it('prints no paper that speaks of facing, cone or clutch pulley where there is none', () => {
    if (!leftOut('clutch-facing')) return;
    for (const id of ['worksheet', 'order', 'settings', 'upkeep'] as const satisfies readonly SheetId[]) {
      const words = JSON.stringify(handOverSheet(id, { picture: found, entries, knowledge }).blocks);
      expect(words.match(/[^".]*(?:cone with solvent|clutch pulley|clutch facing)[^".]*/giu) ?? [], id).toEqual([]);
    }
  });

  it('speaks of a new pour only where one is asked for or was looked at', () => {
    const asked = found.worksheet.jobs.some((one) => one.job === 'bearings.pour') || Object.keys({ ...looks, ...found.known.history }).some((key) => key.startsWith('pouring.'));
    expect(found.findings.some((one) => one.part === 'pouring' && one.grade === 'not-known') && !asked).toBe(false);
  });
});

describe('a belt that is the clutch', () => {
  const cures = (found: ReturnType<typeof slackBelt>, criterion: string) => found.findings.find((one) => one.criterion === criterion)?.cures;

  test('is cleaned and its idler set where it slips, grabs or lets the ram creep', () => {
    expect(cures(slackBelt(['running.chatter', 'slips']), 'running.chatter')).toEqual(['belt.dress', 'idler.set']);
    expect(cures(slackBelt(['running.chatter', 'grabs']), 'running.chatter')).toEqual(['belt.dress', 'idler.set']);
    expect(cures(slackBelt(['running.creep', 'creeps']), 'running.creep')).toEqual(['idler.set']);
  });

  test('has parts of a clutch that are not there, unless somebody saw a facing all the same', () => {
    const { looks } = slackBelt().known;
    expect(CLUTCH.filter((part) => saysLeftOut(part, looks) === undefined)).toEqual([]);
    expect(saysLeftOut('clutch-facing', { 'drive-line.kind': { answer: 'idler-belt' }, 'clutch-facing.kind': { answer: 'leather' } })).toBeUndefined();
    expect(saysLeftOut('clutch-facing', {})).toBeUndefined();
  });

  test('is oiled at the pin of its idler, and set there', () => {
    const { known, values } = slackBelt();
    expect(oilingRound(known).points.map((one) => one.point.id)).toContain('idler');
    expect(settingSheet({ known, values }).map((line) => line.id)).toContain('idler');
  });
});

test('what does in the place of another job is a job, on a part of every family that has the other', () => {
  for (const job of knowledge.jobs) for (const id of job.otherwise ?? []) {
    const other = jobOf(id);
    expect(other, `${job.id}: ${id}`).toBeDefined();
    expect(job.families.filter((family) => other?.families.includes(family) !== true), `${job.id}: ${id}`).toEqual([]);
  }
});

describe('the guard', () => {
  const FIT = 'Fit the guard in front of the linkage before anybody else comes near.';
  const KEEP = 'Keep the guard on; nobody stands in front of it while it runs.';
  const clash = (guard: string) => picture(new LogOf('50 lb', 'coil-and-toggle').look('guards.front', guard).look('coil-spring.clash', 'touch').entries, knowledge, '2027-01-01T00:00:00Z', 1)?.duty.limits.map((limit) => limit.sentence) ?? [];

  it('is to be fitted where it is missing, and kept on where it is there', () => {
    expect(clash('missing-alone')).toContain(FIT);
    expect(clash('fitted')).toContain(KEEP);
    expect(clash('fitted')).not.toContain(FIT);
  });

  test.each(EXAMPLE_PICTURES)('of $tag is never asked for where it stands, nor lifted in words', ({ found, entries }) => {
    const fitted = found.known.looks['guards.front']?.answer === 'fitted';
    expect(found.duty.limits.some((limit) => limit.kind === (fitted ? 'guard-first' : 'guard-kept'))).toBe(false);
    expect(JSON.stringify(handOverSheet('worksheet', { picture: found, entries, knowledge }).blocks)).not.toMatch(/No longer: [^"]*Keep the guard on/u);
  });
});

describe('a helve', () => {
  test('is never told of a spring’s preload or of setting a spring', () => {
    for (const { found, entries } of EXAMPLE_PICTURES.filter((one) => one.found.known.identity.family === 'helve')) {
      expect(found.worksheet.jobs.flatMap((job) => job.cautions)).not.toContain('spring-unload');
      expect(found.findings.flatMap((finding) => finding.cautions)).not.toContain('spring-unload');
      for (const id of ['worksheet', 'order', 'settings', 'upkeep', 'inspection'] as const satisfies readonly SheetId[]) {
        const words = JSON.stringify(handOverSheet(id, { picture: found, entries, knowledge }).blocks);
        // Its treadle has a return spring, and rubber springs back.
        expect(words.match(/[^".]*(?<!return |bow-)\bspring\b[^".]*/giu) ?? [], id).toEqual([]);
      }
    }
  });
});

describe.each(EXAMPLE_PICTURES)('oil on $tag', ({ found }) => {
  test('is never put on less often than the strictest limit in force allows', () => {
    const limit = Math.min(...found.findings.flatMap((finding) => finding.limits).filter((one) => one.kind === 'oil-every').map((one) => one.quantity?.value ?? Number.POSITIVE_INFINITY));
    const round = oilingRound(found.known, undefined, oilingLimit(found.duty));
    for (const { point } of round.points) expect(point.every?.[1] ?? 0, point.id).toBeLessThanOrEqual(limit);
    if (limit === 600) expect(round.card).toContain('Every 10 min of running:');
  });

  test('dovetails are dried only where oil was seen on its way to them', () => {
    const oily = found.known.looks['keys.dovetail-oil']?.answer !== 'dry' || found.known.looks['running.oil']?.answer === 'on-dies';
    expect(found.worksheet.jobs.some((job) => job.job === 'keys.dry') && !oily).toBe(false);
  });
});

describe.each(EXAMPLE_PICTURES)('what was not checked on $tag', ({ found }) => {
  const open = found.findings.filter((one) => one.grade === 'not-known');

  it('is counted the same by list, findings and drawing', () => {
    expect(found.notChecked.flatMap((row) => row.criteria).length).toBe(open.length);
    expect(found.notChecked.map((row) => row.part).sort()).toEqual([...new Set(open.map((one) => one.part))].sort());
    const drawn = [...partConditions(found)].filter(([, one]) => one.condition === 'not-known' || one.condition === 'not-checked' || one.inPart).map(([part]) => part);
    const listed = new Set([...found.notChecked.map((row) => row.part), ...(open.some((one) => one.criterion === 'toggles.crack') ? ['toggle-links', 'toggle-pins'] : [])]);
    expect(drawn.filter((part) => !listed.has(part))).toEqual([]);
  });

  it('asks for no plate where there is none, and for no converter on one phase', () => {
    const asked = open.map((one) => one.criterion);
    if (found.known.looks['filler-plate.state']?.answer === 'none') expect(asked).not.toContain('filler.parallel');
    if (found.known.looks['motor.phase']?.answer === 'single') expect(asked.filter((id) => id.startsWith('converter.'))).toEqual([]);
  });
});
