import { SHEET_LAYOUT } from './sheet-layout.ts';

/** Layout of drawings, one on each sheet, with its frame (habit of ISO 5457) and its title block. */
export const DRAWING_LAYOUT = SHEET_LAYOUT + String.raw`
#let foot = if data.block.invented { 34mm } else { 29mm }
#set page(background: pdf.artifact(place(top + left, dx: 18mm, dy: 10mm, rect(width: data.frame.width * 1mm, height: data.frame.height * 1mm, stroke: thick))))
#show heading: it => block(below: 2mm, inset: (x: 3mm), text(size: 12pt, weight: "bold", it.body))
#for (index, drawing) in data.drawings.enumerate() {
  if index > 0 { pagebreak() }
  heading(level: 1, drawing.title)
  block(width: 100%, height: data.room.height * 1mm, align(center + horizon, image(drawing.file, width: drawing.width * 1mm, alt: drawing.words)))
  block(inset: (x: 3mm), above: 1mm, text(size: 8.5pt, drawing.note))
}
`;
