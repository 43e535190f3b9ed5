import { router } from '../route.svelte.ts';

/** Brings the reader to a sheet's heading after a move between sheets, so that Tab and a screen reader go on from there. */
export function arrive(heading: HTMLElement): void {
  if (!router.moved) return;
  router.moved = false;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}
