import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { fontFace, withFont } from '../font-face.ts';
import { makingDxf } from '../dxf/index.ts';
import { drawingPdf, type Paper } from '../pdf/index.ts';
import { titleBlock } from '../../views/index.ts';
import { makingPanels, makingSheets } from '../../views/making/index.ts';

export interface MadeFile {
  readonly name: string;
  readonly content: string | Uint8Array;
  /** What a link to it says. */
  readonly words: string;
}

/** Room that a frame leaves on each paper, mm. */
const PANEL = { a4: { width: 170, height: 225 }, letter: { width: 170, height: 210 } } as const;

/** The drawing of one part as PDF, all its sheets in one file, each at its own scale. */
export const partPdf = (picture: Picture, part: PartToMake, paper: Paper): Promise<Uint8Array> =>
  drawingPdf(makingPanels(picture, part, PANEL[paper]), titleBlock(picture, part.title), paper, { title: `${picture.known.identity.tag}: ${part.title}` });

/** The drawing of one part in every form: PDF with all its sheets, each sheet as SVG, and the outline full size as DXF. */
export async function partFiles(picture: Picture, part: PartToMake, paper: Paper): Promise<readonly MadeFile[]> {
  const sheets = makingSheets(picture, part, { paper: paper === 'a4' ? 'A4' : 'letter' });
  const face = await fontFace();
  return [
    { name: `${part.id}.pdf`, content: await partPdf(picture, part, paper), words: 'PDF' },
    ...sheets.map((svg, index) => ({ name: `${part.id}-${index + 1}.svg`, content: withFont(svg, face), words: sheets.length === 1 ? 'SVG' : `SVG, sheet ${index + 1}` })),
    { name: `${part.id}.dxf`, content: makingDxf(picture, part), words: 'DXF for the cutter' },
  ];
}
