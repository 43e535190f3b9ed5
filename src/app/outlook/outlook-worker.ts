import { outlook } from '../../derived/index.ts';
import { knowledge } from '../../knowledge/index.ts';
import { numberedRound, OUTLOOK_IDS, outlookSheetBlocks } from '../../views/outlook/index.ts';
import type { OutlookAnswer, OutlookAsk } from './outlook-ask.ts';

const scope = self as unknown as { onmessage: ((event: MessageEvent<OutlookAsk>) => void) | null; postMessage(answer: OutlookAnswer): void };

scope.onmessage = ({ data: { id, picture, width, first, moving } }) => {
  try {
    const ground = { picture, outlook: outlook(picture, picture.provenance.seed), knowledge, width, ...(moving === undefined ? {} : { moving }) };
    for (const sheet of [first, ...OUTLOOK_IDS.filter((one) => one !== first)]) scope.postMessage({ id, sheet, blocks: outlookSheetBlocks(sheet, ground), points: sheet === 'oiling' ? numberedRound(ground).points : [] });
  } catch (failure) {
    scope.postMessage({ id, failure: failure instanceof Error ? failure.message : String(failure) });
  }
};
