import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestUse, dutyAfter, dutyBurden, dutyLadder, worksheetOf, type Finding } from '../../src/derived/index.ts';
import { VERDICT_ORDER, limitBurden } from '../../src/derived/worksheet/limit-burden.ts';
import { chooseBest } from '../../src/derived/worksheet/choose-best.ts';
import { compareChoices } from '../../src/derived/worksheet/best-choice.ts';
import { beforeAnyHand, beforeAnyRun } from '../../src/derived/worksheet/safety-first.ts';
import { LIMIT_WEIGHTS, knowledge } from '../../src/knowledge/index.ts';
import { nextBelow, seeded } from '../../src/methods/chance/index.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';
import { LogOf } from '../cases/log-of.ts';
import { feasible, randomChoice } from './random-choice.ts';
import { gatesSound, pictureOf, wornHammer } from './worn-hammer.ts';

const worn = pictureOf(wornHammer());
const use = (money: number, hours?: number) => bestUse(worn.known, worn.findings, worn.worksheet, knowledge, { money, ...(hours === undefined ? {} : { hours }) });
const POINTS: Readonly<Record<string, number>> = { 'stand-down': 100, limited: 10, watch: 1 };
const pointsOf = (cured: readonly string[]): number => cured.reduce((sum, key) => sum + (POINTS[worn.findings.find((finding) => (finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`) === key)?.grade ?? ''] ?? 0), 0);

test('nothing buys nothing, little buys what stands the hammer down, enough buys a fit hammer', () => {
  expect(use(0)).toMatchObject({ jobs: [], cost: 0 });
  expect(worn.duty.verdict).toBe('stand-down');
  const run = use(0).toRun ?? Number.NaN;
  expect(use(run).duty.after.verdict).toBe('fit-within-limits');
  expect(use(run - 0.01).duty.after.verdict).toBe('stand-down');
  const all = use(0).toCureAll ?? Number.NaN;
  expect(use(all)).toMatchObject({ stays: [], cost: all });
  expect(use(all).duty.after.verdict).toBe('fit');
  expect(use(1e6).cost).toBe(all);
});

test('more budget never buys less, and no choice breaks the budget, the order or the trial', () => {
  let last = use(0);
  for (let money = 0; money <= 1_000; money += 20) {
    const next = use(money);
    expect(next.cost).toBeLessThanOrEqual(money);
    expect(next.proven).toBe(true);
    const order = worn.worksheet.jobs.map((job) => job.job);
    expect([...next.jobs].sort((a, b) => order.indexOf(a) - order.indexOf(b))).toEqual(next.jobs);
    if (next.jobs.length > 0) expect(next.jobs.includes('trial.run')).toBe(next.duty.after.verdict !== 'stand-down');
    if (next.jobs.includes('trial.run')) expect(next.jobs.at(-1)).toBe('trial.run');
    for (const job of worn.worksheet.jobs) if (next.jobs.includes(job.job) && job.job !== 'trial.run') for (const before of job.after) expect(next.jobs).toContain(before);
    const better = VERDICT_ORDER.indexOf(next.duty.after.verdict) - VERDICT_ORDER.indexOf(last.duty.after.verdict) || dutyBurden(last.duty.after) - dutyBurden(next.duty.after) || pointsOf(next.duty.cured) - pointsOf(last.duty.cured);
    expect(better).toBeGreaterThanOrEqual(0);
    last = next;
  }
});

test('isolator and guards come first in every choice, the trial comes only where it may run, and its money is kept back', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('keys.secure', 'loose').look('belt.state', 'cracked').look('starter.no-volt', 'restarts').look('guards.belt', 'open').look('treadle.guard', 'open');
  const found = pictureOf(log);
  const bought = (money: number, wanted: 'best duty' | 'safe to run' = 'best duty') => bestUse(found.known, found.findings, found.worksheet, knowledge, { money, wanted });
  const safety = ['guards.belt', 'starter.isolator', 'treadle.guard'];
  for (let money = 0; money <= 1_000; money += 10) {
    const { jobs, duty, cost, proven } = bought(money);
    expect(proven).toBe(true);
    if (jobs.some((job) => !safety.includes(job))) expect(jobs, `${money}`).toEqual(expect.arrayContaining(safety));
    expect(jobs.includes('trial.run'), `${money}: ${jobs.join()}`).toBe(jobs.length > 0 && duty.after.verdict !== 'stand-down');
    expect(cost).toBeCloseTo(found.worksheet.jobs.filter((job) => jobs.includes(job.job)).reduce((sum, job) => sum + job.cost.likely, 0), 6);
  }
  // Least money that lets it run: the three, the key and the trial, and no belt.
  expect([...bought(1e9, 'safe to run').jobs].sort()).toEqual([...safety, 'keys.renew', 'trial.run'].sort());
  expect(bought(0).toRun).toBe(bought(1e9, 'safe to run').cost);
});

test('what must be safe before a hand goes near comes before the guards too', () => {
  const found = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('starter.live-parts', 'exposed').look('guards.belt', 'open').look('guards.scale', 'missing'));
  for (let money = 0; money <= 600; money += 10) {
    const { jobs } = bestUse(found.known, found.findings, found.worksheet, knowledge, { money });
    if (jobs.length > 0) expect(jobs[0], `${money}`).toBe('electrics.make-safe');
  }
});

test('a plan with the trial in it counts on the trial for what only running shows, says so, and on nothing else', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('upper-die.rest-gap', '3/4 in').look('belt.state', 'cracked');
  const told = (look: string, answer: string): void => void log.put('sighting', { look, answer, standing: 'told', saidBy: 'the last owner' });
  // What was seen goes before what is told, so the two that are told here were never seen.
  const unseen = (look: string): void => void log.entries.splice(log.entries.findIndex((entry) => entry.kind === 'sighting' && (entry.body as { look: string }).look === look), 1);
  unseen('running.creep');
  told('running.creep', 'still');
  const found = pictureOf(log);
  expect(found.duty.missing.map((one) => one.criterion)).toEqual(['running.creep']);
  expect(found.duty.verdict).toBe('not-known-yet');
  const all = found.worksheet.jobs.map((job) => job.job);
  const after = dutyAfter(found.known, found.findings, all, knowledge);
  expect(after.after.verdict).toBe('not-known-yet');
  expect(after.toSettle).toEqual([{ finding: 'running.creep', title: 'Ram with the treadle up', job: 'trial.run', jobTitle: 'Run the trial' }]);
  expect(after.ifSettledGood.verdict).toBe('fit');
  expect(dutyAfter(found.known, found.findings, all.filter((job) => job !== 'trial.run'), knowledge)).toMatchObject({ toSettle: [], ifSettledGood: { verdict: 'not-known-yet' } });
  const ladder = dutyLadder(found.known, found.findings, found.worksheet, knowledge);
  expect(ladder.at(-2)?.duty.verdict).toBe('not-known-yet');
  expect(ladder.at(-1)).toMatchObject({ job: 'trial.run', duty: { verdict: 'fit' }, ifGood: ['Ram with the treadle up'] });
  // Keys are looked at before the running, so no trial makes up for keys that were only told.
  unseen('keys.secure');
  told('keys.secure', 'tight');
  const keys = pictureOf(log);
  const later = dutyAfter(keys.known, keys.findings, all, knowledge);
  expect(later.toSettle.map((one) => one.finding)).toEqual(['running.creep']);
  expect(later.ifSettledGood.verdict).toBe('not-known-yet');
});

test('hours bind as money does', () => {
  const short = use(1e6, 10);
  expect(short.hours).toBeLessThanOrEqual(10);
  expect(short.jobs.length).toBeGreaterThan(1);
  expect(short.jobs.length).toBeLessThan(use(1e6).jobs.length);
});

test('the choice for a hammer is the best of all sets of its jobs, by the duty that each would give', { timeout: 120_000 }, () => {
  let hammers = 0;
  let tried = 0;
  for (let seed = 0; hammers < 40; seed++) {
    const generator = seeded(seed, 'fewer-faults');
    const findings = worn.findings.filter((finding) => finding.cures.length === 0 || nextBelow(generator, 3) === 0);
    const worksheet = worksheetOf(worn.known, findings, knowledge);
    const open = worksheet.jobs.filter((job) => job.job !== 'trial.run');
    if (open.length < 3 || open.length > 9) continue;
    hammers += 1;
    const trial = worksheet.jobs.find((job) => job.job === 'trial.run')?.cost.likely ?? Number.NaN;
    const asked = (which: (finding: Finding) => boolean): ReadonlySet<string> => new Set(findings.filter((finding) => finding.grade !== 'sound' && which(finding)).flatMap((finding) => finding.cures));
    const touch = asked((finding) => beforeAnyHand(finding, knowledge));
    const safety = new Set([...touch, ...asked(beforeAnyRun)]);
    const today = worthOf(findings, [], 0);
    const sets = Array.from({ length: 2 ** open.length }, (_, mask) => open.filter((__, index) => (mask & (1 << index)) !== 0))
      // Nothing is bought before what the matters of safety ask for.
      .filter((set) => set.every((job) => touch.has(job.job)) || open.every((job) => !touch.has(job.job) || set.includes(job)))
      .filter((set) => set.every((job) => safety.has(job.job)) || open.every((job) => !safety.has(job.job) || set.includes(job)))
      .filter((set) => set.every((job) => job.after.every((before) => set.some((other) => other.job === before) || !open.some((other) => other.job === before))))
      // What a job opens is closed with it, and what is done for another's sake is done with that.
      .filter((set) => set.every((job) => open.every((other) => set.includes(other) || !goesWith(job.job, other.job))))
      .map((set) => worthOf(findings, set.map((job) => job.job), set.reduce((sum, job) => sum + job.cost.likely, set.length > 0 ? trial : 0)));
    tried += sets.length;
    // The trial is run where the hammer may run, guarded, and runs better than today; else its money is kept back.
    const isTried = (best: ReturnType<typeof worthOf>, jobs: readonly string[]): boolean => best.verdict > 0 && open.every((job) => !safety.has(job.job) || jobs.includes(job.job)) && (best.verdict !== today.verdict || best.burden < today.burden);
    for (const share of [0, 0.15, 0.3, 0.5, 0.7, 0.9, 1]) {
      const money = Math.round(worksheet.cost.likely * share);
      const best = sets.filter((set) => set.cost <= money + 1e-9).sort((a, b) => b.verdict - a.verdict || a.burden - b.burden || b.points - a.points || a.cost - b.cost)[0];
      const got = bestUse(worn.known, findings, worksheet, knowledge, { money });
      expect(worthOf(findings, got.jobs, got.cost), `hammer ${seed}, budget ${money}`).toEqual({ ...best, cost: expect.closeTo(best === undefined ? Number.NaN : best.cost - (best.cost > 0 && !isTried(best, got.jobs) ? trial : 0), 6) });
    }
  }
  console.log(`${hammers} hammers of 3 to 9 open jobs, ${tried} sets of jobs tried, seven budgets each`);
});

const jobOf = (id: string) => knowledge.jobs.find((one) => one.id === id);
const goesWith = (job: string, other: string): boolean => jobOf(job)?.closedBy?.includes(other) === true || jobOf(other)?.mendsFirst?.includes(job) === true;

function worthOf(findings: readonly Finding[], jobs: readonly string[], cost: number) {
  const duty = dutyAfter(worn.known, findings, jobs, knowledge);
  return { cost, verdict: VERDICT_ORDER.indexOf(duty.after.verdict), burden: dutyBurden(duty.after), points: pointsOf(duty.cured) };
}

test('on chance worksheets too: feasible, and more money or time never worse', () => {
  fc.assert(fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 3, max: 25 }), fc.integer({ min: 0, max: 20_000 }), (seed, jobs, more) => {
    const problem = randomChoice(seed, jobs);
    const choice = chooseBest(problem);
    expect(feasible(problem, problem.jobs.map((_, index) => choice.jobs.includes(index)))).toBe(true);
    const richer = chooseBest({ ...problem, budget: problem.budget + more });
    expect(compareChoices(richer.value, choice.value)).toBeLessThanOrEqual(0);
    expect(compareChoices(chooseBest({ ...problem, hoursBudget: problem.hoursBudget + more }).value, choice.value)).toBeLessThanOrEqual(0);
  }), { numRuns: 150 });
});

test('a search that is stopped says so', () => {
  const problem = randomChoice(4_242, 40);
  expect(chooseBest(problem).proven).toBe(true);
  const stopped = chooseBest(problem, 1);
  expect(stopped.proven).toBe(false);
  expect(feasible(problem, problem.jobs.map((_, index) => stopped.jobs.includes(index)))).toBe(true);
});

test('a budget that cannot be buys nothing and is said', () => {
  expect(use(-5)).toMatchObject({ jobs: [], problems: ['A budget is a number not below zero, and nothing is chosen: -5'] });
  expect(use(Number.NaN).jobs).toEqual([]);
  expect(use(100, -1).problems).toEqual(['The hours of a budget are not below zero, and nothing is chosen: -1']);
});

test('every kind of limit has a weight, and a stricter figure never weighs less', () => {
  const kinds = new Set(knowledge.criteria.flatMap((criterion) => (criterion.rule.kind === 'measured' ? criterion.rule.steps : Object.values(criterion.rule.answers)).flatMap((step) => (step.limits ?? []).map((limit) => limit.kind))));
  for (const kind of kinds) expect(LIMIT_WEIGHTS.some((weight) => weight.kind === kind), kind).toBe(true);
  fc.assert(fc.property(fc.constantFrom(...LIMIT_WEIGHTS), fc.double({ min: 1e-4, max: 1e4, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }), (weight, value, times) => {
    const burden = (figure: number): number => limitBurden({ kind: weight.kind, quantity: { dimension: 'ratio', value: figure, uncertainty: 0 } });
    const [milder, stricter] = weight.looser === 'less' ? [value, value * times] : [value * times, value];
    expect(burden(stricter)).toBeGreaterThanOrEqual(burden(milder));
    expect(burden(stricter)).toBeLessThanOrEqual(limitBurden({ kind: weight.kind }));
  }));
});

test('what follows from a job is a promise, and a look promises both ways', () => {
  const suspect = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('frame.crack', 'suspected'));
  const after = dutyAfter(suspect.known, suspect.findings, ['frame.dye-test'], knowledge);
  expect(suspect.duty.verdict).toBe('stand-down');
  expect(after.hangsOn.map((one) => one.finding)).toEqual(['frame.crack']);
  expect(after.ifLooksFindWorse.verdict).toBe('stand-down');
  expect(after.promise).toContain('A promise, not a finding');
  expect(after.promise).toContain('hangs on a look that may find worse');
  expect(after.toProve).toEqual(['frame.crack']);
});

test('a finding that asks for two jobs is cured by both and by neither alone; no job makes up for a look that nobody took', () => {
  const after = (jobs: readonly string[]) => dutyAfter(worn.known, worn.findings, jobs, knowledge);
  expect(after(['seat.fit-filler-plate']).cured).not.toContain('stack.loss');
  expect(after(['seat.fit-filler-plate']).stillWant).toContainEqual({ finding: 'stack.loss', jobs: ['dies.new-lower'] });
  expect(after(['seat.fit-filler-plate', 'dies.new-lower']).cured).toContain('stack.loss');
  const blank = pictureOf(new LogOf('50 lb', 'coil-and-toggle').look('keys.secure', 'loose'));
  expect(dutyAfter(blank.known, blank.findings, ['keys.renew'], knowledge).after.verdict).toBe('not-known-yet');
  expect(after(['no.such-job'])).toMatchObject({ cured: [], problems: ['A job is named that this version does not know: no.such-job'] });
});

test('the ladder starts from today, ends where all jobs lead, and never goes down', () => {
  const ladder = dutyLadder(worn.known, worn.findings, worn.worksheet, knowledge);
  expect(ladder.map((step) => step.job)).toEqual(worn.worksheet.jobs.map((job) => job.job));
  expect(ladder.at(-1)?.duty).toEqual(dutyAfter(worn.known, worn.findings, worn.worksheet.jobs.map((job) => job.job), knowledge).after);
  for (const [index, step] of ladder.entries()) {
    const before = ladder[index - 1]?.duty ?? worn.duty;
    expect(VERDICT_ORDER.indexOf(step.duty.verdict)).toBeGreaterThanOrEqual(VERDICT_ORDER.indexOf(before.verdict));
    expect(dutyBurden(step.duty)).toBeLessThanOrEqual(dutyBurden(before));
  }
});

test('findings are not written', () => {
  const frozen: readonly Finding[] = worn.findings.map((finding) => Object.freeze({ ...finding }));
  expect(() => bestUse(worn.known, Object.freeze(frozen), worn.worksheet, knowledge, { money: 400 })).not.toThrow();
});

test('what stops a starter from coming back by itself, and a test for asbestos, come before the guards; nothing is tried before its oil ways are open', () => {
  const chosen = (log: LogOf) => { const found = pictureOf(log); return (money: number) => bestUse(found.known, found.findings, found.worksheet, knowledge, { money }); };
  const restarts = chosen(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('keys.secure', 'loose').look('starter.no-volt', 'restarts').look('guards.front', 'missing-alone'));
  const facing = chosen(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('clutch-facing.asbestos', 'perhaps').look('guards.belt', 'open'));
  const dry = chosen(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('oil-ways.open@linkage-pins', 'blocked').look('belt.state', 'cracked').look('guards.belt', 'open'));
  for (let money = 0; money <= 900; money += 10) {
    const bought = restarts(money).jobs;
    if (bought.length > 0) expect(bought[0], `${money}`).toBe('starter.isolator');
    const tested = facing(money).jobs;
    if (tested.length > 0) expect(tested[0], `${money}`).toBe('clutch.test-for-asbestos');
    const { jobs, cost } = dry(money);
    if (jobs.some((job) => !['oil-ways.clear', 'guards.belt'].includes(job))) expect(jobs, `${money}`).toEqual(expect.arrayContaining(['oil-ways.clear', 'guards.belt']));
    expect(jobs.includes('trial.run'), `${money}`).toBe(['oil-ways.clear', 'guards.belt'].every((job) => jobs.includes(job)));
    expect(cost).toBeLessThanOrEqual(money);
  }
});

test('an old spring is not set: where a new one is asked for, the setting waits for it; and a trial that proves nothing is not run', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'WH-65')!;
  expect(found.worksheet.jobs.map((job) => job.job)).toEqual(expect.arrayContaining(['spring.renew', 'spring.set-tension']));
  for (let money = 0; money <= 300; money += 10) {
    const { jobs, duty } = bestUse(found.known, found.findings, found.worksheet, knowledge, { money });
    if (jobs.includes('spring.set-tension')) expect(jobs, `${money}`).toContain('spring.renew');
    if (jobs.includes('trial.run')) expect(duty.after.verdict !== duty.before.verdict || dutyBurden(duty.after) < dutyBurden(duty.before), `${money}`).toBe(true);
  }
});
