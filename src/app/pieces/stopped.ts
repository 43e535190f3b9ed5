import type { Picture } from '../../derived/index.ts';

/** What stops this hammer, as the weightiest finding says it; empty where nothing does. No sheet then asks anybody to run it. */
export function whatStops({ duty, findings }: Picture): string {
  if (duty.verdict !== 'stand-down') return '';
  const first = findings.find((finding) => finding.grade === 'stand-down');
  return first === undefined ? duty.sentence : `${first.title}. ${first.reason}`;
}

/** Stands in the place of how it is done, where that would be at a running hammer. */
export const NOT_NOW = 'Only a running hammer answers this, and something stops this one: not now. What an earlier run showed may be entered.';
