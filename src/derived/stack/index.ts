export { workOutStack } from './die-stack.ts';
export { heightAfter, stackAfter, stackLookup, standing, type DieEnd, type Lookup, type StackAfter } from './stack-after.ts';
