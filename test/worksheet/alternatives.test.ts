import { expect, test } from 'vitest';
import { bestUse, dutyAfter, dutyBurden, insteadJobs, type Picture } from '../../src/derived/index.ts';
import { VERDICT_ORDER } from '../../src/derived/worksheet/limit-burden.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf } from './worn-hammer.ts';

/** Clearance that shims would take up, at a bearing whose metal is cracked: poured anew it needs no shims. */
const bearings = (): LogOf => gatesSound(new LogOf('50 lb', 'coil-and-toggle'))
  .read('main-shaft.diameter', '2 in').read('main-bearings.clearance@front', '0.014 in').read('bearing-caps.shims@front', '0.040 in').look('main-bearings.metal', 'cracked').look('belt.state', 'cracked');

const othersOf = (picture: Picture) => insteadJobs(picture.known, picture.findings, knowledge, picture.worksheet);
const use = (picture: Picture, money: number, hours?: number) => bestUse(picture.known, picture.findings, picture.worksheet, knowledge, { money, ...(hours === undefined ? {} : { hours }) });

test('little money takes shims out, more pours the bearing, and never both', () => {
  const found = pictureOf(bearings());
  const pour = found.worksheet.jobs.find((job) => job.job === 'bearings.pour');
  const shims = othersOf(found).find((job) => job.job === 'bearings.take-out-shims');
  expect(pour?.cures).toEqual(expect.arrayContaining(['journals.clearance@front']));
  expect(shims).toMatchObject({ takesPlaceOf: ['bearings.pour'], cures: ['journals.clearance@front'] });
  const trial = found.worksheet.jobs.find((job) => job.job === 'trial.run')?.cost.likely ?? 0;
  const little = use(found, (shims?.cost.likely ?? 0) + trial);
  expect(little.jobs).toContain('bearings.take-out-shims');
  expect(little.jobs).not.toContain('bearings.pour');
  expect(little.stays).toContain('bearings.metal');
  const much = use(found, 1e6);
  expect(much.jobs).toContain('bearings.pour');
  expect(much.jobs).not.toContain('bearings.take-out-shims');
  expect(much.stays).toEqual([]);
  expect(much.cost).toBe(much.toCureAll);
});

test('a hammer with alternatives: the choice is the best of all sets, by the duty that each would give', () => {
  const found = pictureOf(bearings().look('clutch-facing.state', 'rivets'));
  const open = [...found.worksheet.jobs.filter((job) => job.job !== 'trial.run'), ...othersOf(found)];
  const trial = found.worksheet.jobs.find((job) => job.job === 'trial.run');
  expect(open.length).toBeLessThan(15);
  let tried = 0;
  const sets = Array.from({ length: 2 ** open.length }, (_, mask) => open.filter((__, index) => (mask & (1 << index)) !== 0)).map((set) => {
    tried += 1;
    const duty = dutyAfter(found.known, found.findings, set.map((job) => job.job), knowledge);
    const points = duty.cured.reduce((sum, key) => sum + ({ 'stand-down': 100, limited: 10, watch: 1 }[found.findings.find((finding) => (finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`) === key)?.grade as 'watch'] ?? 0), 0);
    return { jobs: set, verdict: VERDICT_ORDER.indexOf(duty.after.verdict), burden: dutyBurden(duty.after), points, cost: set.reduce((sum, job) => sum + job.cost.likely, set.length > 0 ? (trial?.cost.likely ?? 0) : 0) };
  }).filter(({ jobs }) => ordersKept(jobs.map((job) => job.job)));
  for (let money = 0; money <= 2_500; money += 50) {
    const best = sets.filter((set) => set.cost <= money + 1e-9).sort((a, b) => b.verdict - a.verdict || a.burden - b.burden || b.points - a.points || a.cost - b.cost)[0];
    const got = use(found, money);
    expect([VERDICT_ORDER.indexOf(got.duty.after.verdict), dutyBurden(got.duty.after), got.cost], `budget ${money}: ${got.jobs.join()} against ${best?.jobs.map((job) => job.job).join()}`).toEqual([best?.verdict, best?.burden, expect.closeTo(best?.cost ?? Number.NaN, 6)]);
    expect(got.proven).toBe(true);
  }
  console.log(`${open.length} jobs with alternatives, ${tried} sets tried, 51 budgets`);

  /** What a finding asks for and a job must wait for is done with it, or another that takes its place. */
  function ordersKept(jobs: readonly string[]): boolean {
    const serving = (id: string): readonly string[] => [id, ...knowledge.jobs.filter((job) => job.replaces?.some((other) => other.job === id) === true).map((job) => job.id)];
    return jobs.every((id) => (knowledge.jobs.find((job) => job.id === id)?.after ?? []).every(({ job: before }) => {
      const wanted = found.findings.some((finding) => ['watch', 'limited', 'stand-down'].includes(finding.grade) && (finding.ownCures ?? finding.cures).includes(before));
      return !wanted || serving(before).some((one) => jobs.includes(one));
    }));
  }
});

test('buying is chosen where hours are short, doing where money is', () => {
  const found = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('upper-die.face', 'mushroomed'));
  const [dress] = found.worksheet.jobs;
  expect(dress?.job).toBe('dies.dress');
  const other = othersOf(found).find((job) => job.job === 'dies.new-upper');
  // Offered only where it spares money or hours.
  if (other !== undefined) expect(other.hours.likely < (dress?.hours.likely ?? 0) || other.cost.likely < (dress?.cost.likely ?? 0)).toBe(true);
  expect(use(found, 1e6).jobs[0]).toBe('dies.dress');
});
