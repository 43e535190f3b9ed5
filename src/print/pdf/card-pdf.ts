import type { LimitsCard } from '../../views/index.ts';
import { qrSvg } from '../qr/qr-svg.ts';
import { CARD_LAYOUT } from './card-layout.ts';
import type { Paper } from './paper-size.ts';
import { firstSaid } from './printable-text.ts';
import { sheetData } from './sheet-data.ts';
import { typeset } from './typeset.ts';

/** Smallest letters of a limit on the card, points: capitals of 5.8 mm, ten minutes of arc at two metres. */
export const LEAST_LIMIT_SIZE = 25;

export interface CardPdfOptions {
  readonly paper: Paper;
  /** Address of the hammer's page, up to 300 characters; it becomes a QR code. */
  readonly address?: string;
}

/**
 * The limits card as tagged PDF, to hang beside the hammer: verdict and limits as large as the sheet allows, from 44 pt
 * down to 25 pt and not below. Where they do not all fit so, the habits stand in two columns at 17 pt or more; only what does not
 * fit even then goes on a second page.
 */
export async function cardPdf(card: LimitsCard, options: CardPdfOptions): Promise<Uint8Array> {
  const svg = options.address === undefined ? undefined : qrSvg(options.address);
  const data = {
    ...sheetData(`${card.tag}: limits card`, card.titleBlock, options.paper),
    tag: firstSaid(card.tag), verdict: firstSaid(card.verdict), condition: card.condition, limits: card.limits, habits: card.habits, always: card.always, least: LEAST_LIMIT_SIZE,
    qr: svg === undefined ? null : 'address.svg', qrWords: `QR code that leads to ${options.address ?? ''}`, address: options.address ?? '',
  };
  return typeset({ layout: CARD_LAYOUT, data, files: svg === undefined ? new Map() : new Map([['address.svg', Buffer.from(svg)]]) });
}
