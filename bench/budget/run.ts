// Proves the choice under a budget against trying every set of jobs, and times it on sheets of real and greater size.
// npx tsx bench/budget/run.ts [worksheets]
import { chooseBest } from '../../src/derived/worksheet/choose-best.ts';
import { bestOfAll, randomChoice } from '../../test/worksheet/random-choice.ts';

const WORKSHEETS = Number(process.argv[2] ?? '1000');

let same = 0;
let tried = 0;
let searching = 0;
let trying = 0;
for (let seed = 0; seed < WORKSHEETS; seed++) {
  const problem = randomChoice(seed, 3 + (seed % 12));
  const started = performance.now();
  const choice = chooseBest(problem);
  const between = performance.now();
  const best = bestOfAll(problem);
  searching += between - started;
  trying += performance.now() - between;
  tried += best.tried;
  if (choice.proven && JSON.stringify(choice.value) === JSON.stringify(best.value)) same += 1;
}
console.log(`against every set of jobs, 3 to 14 jobs: ${same} of ${WORKSHEETS} choices are the best; ${tried} sets tried in ${(trying / 1000).toFixed(1)} s, searched in ${(searching / 1000).toFixed(2)} s`);

for (const jobs of [20, 30, 40, 60]) {
  const times: number[] = [];
  let proven = 0;
  let nodes = 0;
  for (let seed = 0; seed < 200; seed++) {
    const problem = randomChoice(10_000 + seed, jobs);
    const started = performance.now();
    const choice = chooseBest(problem);
    times.push(performance.now() - started);
    if (choice.proven) proven += 1;
    nodes = Math.max(nodes, choice.nodes);
  }
  times.sort((a, b) => a - b);
  console.log(`${jobs} jobs: ${proven} of 200 proven, median ${times[100]?.toFixed(1)} ms, worst ${times.at(-1)?.toFixed(1)} ms, at most ${nodes} nodes`);
}
