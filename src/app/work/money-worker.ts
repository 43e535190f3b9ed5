import { moneyAndTime, type Crew, type Worksheet } from '../../derived/worksheet/index.ts';
import { knowledge } from '../../knowledge/index.ts';

/** Ten thousand draws take a telephone a second; they are made beside the page, so that it stays quick under the thumb. */
export interface MoneyAsk {
  readonly id: number;
  readonly worksheet: Worksheet;
  readonly seed: number;
  readonly crew: Partial<Crew>;
}

const scope = self as unknown as { onmessage: ((event: MessageEvent<MoneyAsk>) => void) | null; postMessage(answer: MoneyAnswer): void };

export type MoneyAnswer = { readonly id: number; readonly money: ReturnType<typeof moneyAndTime> } | { readonly id: number; readonly failure: string };

scope.onmessage = ({ data: { id, worksheet, seed, crew } }) => {
  try {
    scope.postMessage({ id, money: moneyAndTime(worksheet, knowledge, seed, { crew }) });
  } catch (failure) {
    scope.postMessage({ id, failure: failure instanceof Error ? failure.message : String(failure) });
  }
};
