import { capacitySheet } from './capacity-sheet.ts';
import { groundSheet } from './ground-sheet.ts';
import { movingSheet } from './moving-sheet.ts';
import { oilingSheet } from './oiling-sheet.ts';
import { powerSheet } from './power-sheet.ts';
import type { OutlookGround, SheetParts } from './sheet-parts.ts';
import type { OutlookId } from './titles.ts';

const SHEETS: Readonly<Record<OutlookId, (ground: OutlookGround) => SheetParts>> = { capacity: capacitySheet, oiling: oilingSheet, power: powerSheet, ground: groundSheet, moving: movingSheet };

/** What one sheet says; drawing and figures are made only where they are asked for. */
export const partsOfSheet = (id: OutlookId, ground: OutlookGround): SheetParts => SHEETS[id](ground);
