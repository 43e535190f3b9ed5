export { workOutStack } from './die-stack.ts';
export { GRIND_JOB, heightAfter, stackAfter, stackLookup, standing, type DieEnd, type Lookup, type StackAfter } from './stack-after.ts';
