/** A queue of one lane: each task starts when the one before it has ended, well or badly. */
export function oneAtATime(): <T>(task: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const result = last.then(task);
    last = result.catch(() => undefined);
    return result;
  };
}
