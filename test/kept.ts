import { deepFreeze } from './entries/histories.ts';

/**
 * A function of one object that works each object out once, for all tests of a worker. What it gives is frozen to its depth,
 * so that no test can leave anything in it for another.
 */
export function kept<Given extends object, Made>(make: (given: Given) => Made): (given: Given) => Made {
  const made = new WeakMap<Given, { readonly made: Made }>();
  return (given) => {
    const held = made.get(given) ?? { made: deepFreeze(make(given)) };
    made.set(given, held);
    return held.made;
  };
}
