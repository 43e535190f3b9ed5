import { CORE, INNER_ORDER, MAY_IMPORT, MAY_USE, SEES_ALL } from './rooms.ts';
import { importsOf, targetOf, type SourceFile } from './source-file.ts';

/** `src/methods/elements/springs/rate.ts` is in room `methods`, in its inner room `elements`. */
interface Place {
  readonly room: string;
  readonly inner: string | undefined;
}

function placeOf(path: string): Place | undefined {
  const [src, room, next, ...rest] = path.split('/');
  if (src !== 'src' || room === undefined || next === undefined) return undefined;
  return { room, inner: rest.length > 0 ? next : undefined };
}

/** Every import that goes against the house, one sentence each. */
export function directionProblems(files: readonly SourceFile[]): string[] {
  const rank = innerRanks(files);
  return files.flatMap((file) => {
    const from = placeOf(file.path);
    if (from === undefined || MAY_IMPORT[from.room] === undefined) return [`${file.path}: lies in no room; allowed are ${Object.keys(MAY_IMPORT).join(', ')}`];
    const order = INNER_ORDER[from.room];
    if (order && from.inner !== undefined && !order.includes(from.inner))
      return [`${file.path}: ${from.room} has no such room yet; give ${from.inner} its place in test/house/rooms.ts`];
    return importsOf(file).flatMap((specifier) => {
      const wrong = (why: string) => [`${file.path} imports ${specifier}: ${why}`];
      const target = targetOf(file, specifier);
      if (target === undefined) return packageProblem(from, specifier).flatMap(wrong);
      if (CORE.includes(from.room) && !target.endsWith('.ts')) return wrong('imports carry the ending .ts');
      const to = placeOf(target);
      if (to === undefined) return from.room === 'cli' || from.room === 'server' || from.room === 'app' ? [] : wrong('it lies outside src');
      if (to.room !== from.room) {
        if (!MAY_IMPORT[from.room]!.includes(to.room)) return wrong(`${from.room} may import ${MAY_IMPORT[from.room]!.join(', ') || 'no other room'}`);
        if (!target.endsWith('/index.ts')) return wrong("another room is entered by its index.ts");
        if (from.room === 'app' && to.room === 'stores' && to.inner !== 'browser') return wrong('the page may use stores/browser alone, the others need Node');
        return [];
      }
      if (!order || to.inner === from.inner || SEES_ALL.includes(file.path)) return [];
      if (to.inner !== undefined && !target.endsWith(`/${to.inner}/index.ts`)) return wrong('an inner room is entered by its index.ts');
      if (from.inner === undefined) return [];
      if (SEES_ALL.includes(target)) return wrong('only doors and tests look at the whole');
      const mine = order.indexOf(from.inner);
      const theirs = rank(target);
      return theirs < mine ? [] : wrong(`inside ${from.room} a room imports only those before it in the order`);
    });
  });
}

function packageProblem(from: Place, specifier: string): string[] {
  const allowed = MAY_USE[`${from.room}/${from.inner}`] ?? MAY_USE[from.room] ?? [];
  const may = allowed.some((name) => (/[:/]$/.test(name) ? specifier.startsWith(name) : specifier === name));
  return may ? [] : [`${from.room} may use ${allowed.join(', ') || 'no package'}`];
}

/**
 * How far down a file stands: an inner room by its place in the order, a file beside the inner rooms by the lowest room
 * that it reaches itself. So a word that all share lies beside the rooms without opening a way back.
 */
function innerRanks(files: readonly SourceFile[]): (path: string) => number {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const known = new Map<string, number>();
  const rank = (path: string): number => {
    const held = known.get(path);
    if (held !== undefined) return held;
    known.set(path, -1);
    const place = placeOf(path);
    const order = place && INNER_ORDER[place.room];
    const file = byPath.get(path);
    if (!place || !order) return -1;
    let lowest = place.inner === undefined ? -1 : order.indexOf(place.inner);
    if (place.inner === undefined && file)
      for (const specifier of importsOf(file)) {
        const target = targetOf(file, specifier);
        if (target && placeOf(target)?.room === place.room) lowest = Math.max(lowest, rank(target));
      }
    known.set(path, lowest);
    return lowest;
  };
  return rank;
}

/** Rings of files that import each other, each as a path back to its start. */
export function cycleProblems(files: readonly SourceFile[]): string[] {
  const edges = new Map(
    files.map((file) => {
      const targets = importsOf(file).flatMap((specifier) => targetOf(file, specifier) ?? []);
      // A part of the page that holds parts of its own kind imports itself; that is how it is written.
      return [file.path, targets.filter((target) => target !== file.path || !file.path.endsWith('.svelte'))] as const;
    }),
  );
  const problems: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) {
      problems.push(`imports go in a ring: ${[...trail.slice(start), path].join(' -> ')}`);
      return;
    }
    if (done.has(path)) return;
    for (const next of edges.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of edges.keys()) walk(path, []);
  return problems;
}
