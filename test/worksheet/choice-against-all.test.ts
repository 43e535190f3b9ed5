import { expect, test } from 'vitest';
import { chooseBest } from '../../src/derived/worksheet/choose-best.ts';
import { bestOfAll, feasible, randomChoice } from './random-choice.ts';

const WORKSHEETS = 1_000;

test.each([['with alternatives, orders and needs', true], ['without alternatives', false]])(`the choice under a budget is the best of all sets of jobs on ${WORKSHEETS} random worksheets %s`, (_, alternatives) => {
  const wrong: string[] = [];
  let tried = 0;
  let nodes = 0;
  let hardest = 0;
  let offered = 0;
  let mattered = 0;
  for (let seed = 0; seed < WORKSHEETS; seed++) {
    const problem = randomChoice(seed, 3 + (seed % 12), alternatives);
    const choice = chooseBest(problem);
    const best = bestOfAll(problem);
    tried += best.tried;
    nodes += choice.nodes;
    hardest = Math.max(hardest, choice.nodes);
    if (!choice.proven) wrong.push(`${seed}: not proven`);
    if (!feasible(problem, problem.jobs.map((_, index) => choice.jobs.includes(index)))) wrong.push(`${seed}: not within the budget, or without a job that it waits for`);
    if (JSON.stringify(choice.value) !== JSON.stringify(best.value)) wrong.push(`${seed}: ${JSON.stringify(choice.value)} and the best is ${JSON.stringify(best.value)}`);
    if (problem.cures.some((cure) => cure.oneOf !== undefined)) offered += 1;
    if (problem.cures.some((cure) => (cure.oneOf ?? []).some((some) => some.filter((job) => choice.jobs.includes(job)).length === 1 && some.length > 1))) mattered += 1;
  }
  expect(offered > WORKSHEETS / 2).toBe(alternatives);
  console.log(`${alternatives ? `${offered} with alternatives, in ${mattered} of them one was taken and another left; ` : ''}${WORKSHEETS} worksheets of 3 to 14 jobs: ${tried} sets of jobs tried, ${nodes} nodes searched, at most ${hardest} for one; ${wrong.length} not the best`);
  expect(wrong).toEqual([]);
});
