import type { Ledger } from '../ledger.ts';

export function workOutOtherFamilies(_ledger: Ledger): void {}
