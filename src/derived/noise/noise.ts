import { allowedTime, NIOSH, OSHA } from '../../methods/power/index.ts';
import { workOut, type Ledger } from '../ledger.ts';

/** How long an unprotected ear may stand beside it, by both published rules. Only from a reading of a sound-level meter. */
export function workOutNoise(ledger: Ledger): void {
  workOut(ledger, {
    key: 'noise.allowed-time', title: 'time allowed beside it without protection', dimension: 'time', formula: '8 h / 2^((L - 85) / 3)', sources: ['niosh-98-126'],
    inputs: ['running.noise'], work: (level) => allowedTime(level!, NIOSH),
  });
  workOut(ledger, {
    key: 'noise.allowed-time-law', title: 'time allowed by the United States rule', dimension: 'time', formula: '8 h / 2^((L - 90) / 5)', sources: ['osha-1910-95'],
    inputs: ['running.noise'], work: (level) => allowedTime(level!, OSHA),
  });
}
