// `node scripts/prepare.mjs start|test`: sets up whatever is missing. Needs Node and nothing else.
// This file must be readable by any old Node, so that the person is told which one is wanted.
import process from 'process';

const WANTED = [20, 19];
const have = process.versions.node.split('.').map(Number);

if (have[0] < WANTED[0] || (have[0] === WANTED[0] && have[1] < WANTED[1])) {
  console.error('Tupwise: Node ' + WANTED.join('.') + ' or newer is needed; this is ' + process.versions.node + '.');
  process.exitCode = 1;
} else {
  import('./prepare-steps.mjs').then(function (steps) {
    return steps.prepare(process.argv[2]);
  });
}
