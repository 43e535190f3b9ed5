import { tick } from 'svelte';
import { router } from '../route.svelte.ts';

/**
 * Brings the reader to the form that holds what they came for, once. Called in an effect, it looks again at each move.
 * @param own key of the reading or look that this form enters
 * @returns whether they came for it
 */
export function comeFor(own: string, form: () => HTMLElement): boolean {
  void router.now;
  if (router.place === undefined || (own !== router.place && !own.startsWith(`${router.place}@`))) return false;
  router.place = undefined;
  router.moved = false;
  // The sheet above it must stand before it can be scrolled to.
  void tick().then(() => requestAnimationFrame(() => {
    const frame = form();
    frame.scrollIntoView({ block: 'start' });
    frame.querySelector<HTMLElement>('button')?.focus({ preventScroll: true });
  }));
  return true;
}
