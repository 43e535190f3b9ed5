import { SHEET_LAYOUT } from './sheet-layout.ts';

/** Layout of a report tree: blocks in order, tables that break with their heads repeated, drawings fitted to what is left. */
export const REPORT_LAYOUT = SHEET_LAYOUT + String.raw`
#let room = calc.max(0.5, 1 - data.close / 6)
#let letters = 1 - calc.max(0, data.close) / 40
#set par(leading: 0.58em * (0.5 + room / 2), spacing: 0.75em * room)
#show heading.where(level: 1): it => block(below: 3.5mm, text(size: 16pt, weight: "bold", it.body))
#show heading.where(level: 2): it => block(width: 100%, above: 6mm * room, below: 2.6mm * room, inset: (bottom: 1mm), stroke: (bottom: thick), sticky: true, text(size: 12.5pt, weight: "bold", it.body))
#show heading.where(level: 3): it => block(above: 4.5mm * room, below: 1.8mm * room, sticky: true, text(size: 10.5pt, weight: "bold", it.body))
#set list(indent: 0mm, body-indent: 2.2mm, spacing: 1.7mm * room, marker: "–")
#set enum(indent: 0mm, body-indent: 2.2mm, spacing: 1.7mm * room)
#show figure.caption: it => block(sticky: true, above: 0mm, below: 0mm, text(size: 8.5pt, it.body))
#set figure(supplement: none, numbering: none, gap: 2mm)
#show figure: set block(above: 3.5mm * room, below: 3.5mm * room)
#show figure: set align(left)
#show figure.where(kind: table): set block(breakable: true)
#show terms: set strong(delta: 0)

#let facts(rows) = {
  let long = rows.map(row => row.at(1).len()).sum(default: 0)
  block(breakable: long > 1400, terms(hanging-indent: 42mm, separator: [], spacing: 1.5mm * room, ..rows.map(((label, body)) => terms.item(box(width: 42mm, inset: (right: 2mm), label), body))))
}
#show terms.item: it => it

#let verdict(b) = {
  let dark = b.condition == "stand-down"
  block(width: 100%, breakable: false, stroke: thick, fill: if dark { ink } else { none }, inset: (x: 4mm, y: 3.4mm), above: 3.5mm, below: 3.5mm, {
    set text(fill: if dark { white } else { ink })
    set par(spacing: 2.2mm)
    par({ if not dark { mark(b.condition, size: 5mm); h(2.4mm) }; text(size: 20pt, weight: "bold", b.words) })
    par(b.sentence)
    par(text(size: 8.5pt, b.sureWords))
  })
}

#let answer(b) = block(width: 100%, breakable: false, stroke: if b.estimate { (paint: ink, thickness: 0.5mm, dash: (2.2mm, 1.4mm)) } else { thick }, inset: (x: 4mm, y: 3.2mm), above: 3.5mm, below: 3.5mm, {
  set par(spacing: 2.2mm)
  par(text(size: 15pt, weight: "bold", b.words))
  if b.sentence != "" { par(b.sentence) }
  par(text(size: 8.5pt, { if b.estimate [*Estimate.* ]; b.rests }))
})

#let rows-table(b) = {
  let marked = b.rows.any(row => row.condition != none)
  let columns = (if marked { (30mm,) } else { () }) + b.widths.map(width => if width == 0 { auto } else { width * 1fr })
  figure(kind: table, caption: figure.caption(position: top, b.caption), {
    set text(size: if b.dense { 7.8pt } else { 8.8pt * letters })
    set par(leading: if b.dense { 0.42em } else { 0.5em })
    table(columns: columns, align: left, inset: (x: 0mm, right: 2.5mm, y: if b.dense { 0.7mm * calc.max(0.85, room) } else { 1.25mm * room }), stroke: (x, y) => (bottom: if y == 0 { thick } else { thin }),
      table.header(repeat: true, ..(if marked { (table.cell(text(weight: "bold", "Mark")),) } else { () }), ..b.columns.map(column => text(weight: "bold", column))),
      ..b.rows.map(row => (if marked { (table.cell(breakable: false, if row.condition == none { [] } else [#mark(row.condition) #h(0.8mm)#row.word]),) } else { () })
        + row.cells.map(body => table.cell(breakable: body.len() > 700, body))).flatten())
  })
}

#let drawing(b) = context {
  let whole = page.height - (if data.block.invented { 34mm } else { 29mm }) - 14mm - 24mm
  figure(kind: image, caption: b.caption, image(b.file, width: calc.min(page.width - 32mm, (if b.tallest == none { whole } else { calc.min(whole, b.tallest * 1mm * calc.min(1, (1 + room) / 2)) }) * b.aspect), alt: b.words))
}

#let photograph(b) = if b.file == none { par(text(size: 8.5pt, b.caption)) } else {
  let turned = b.orientation in (5, 6, 7, 8)
  let aspect = if turned { 1 / b.aspect } else { b.aspect }
  let width = calc.min(84mm, 84mm * aspect)
  let height = width / aspect
  let shown = if turned { (height, width) } else { (width, height) }
  let picture = image(b.file, width: shown.at(0), height: shown.at(1), fit: "stretch", alt: b.words)
  let mirrored = if b.orientation in (2, 4, 5, 7) { scale(x: -100%, picture) } else { picture }
  let angle = (0deg, 0deg, 0deg, 180deg, 180deg, -90deg, 90deg, 90deg, -90deg).at(b.orientation)
  figure(kind: image, caption: b.caption, rotate(angle, reflow: true, mirrored))
}

#let one(b) = {
  if b.kind == "heading" { heading(level: b.level, outlined: true, b.text) }
  else if b.kind == "paragraph" { par(text(size: if b.at("tone", default: "plain") == "small" { 8.5pt } else { 1em }, fill: if b.at("tone", default: "plain") == "next" { chalk } else { ink }, b.text)) }
  else if b.kind == "verdict" { verdict(b) }
  else if b.kind == "answer" { answer(b) }
  else if b.kind == "list" { if b.ordered { enum(..b.items.map(item => enum.item(item))) } else { list(..b.items.map(item => list.item(item))) } }
  else if b.kind == "facts" { facts(b.rows) }
  else if b.kind == "table" { rows-table(b) }
  else if b.kind == "figure" { drawing(b) }
  else if b.kind == "caution" { block(width: 100%, breakable: false, inset: (left: 3mm), stroke: (left: 1mm + chalk), par({ [*Caution.* #b.text]; if b.source != "" { text(size: 8.5pt, [ (#b.source)]) } })) }
  else if b.kind == "photographs" { grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 3mm, ..b.items.map(photograph)) }
  else if b.kind == "new-page" { pagebreak(weak: true) }
}
#let first = data.blocks.position(b => b.kind == "new-page")
#let first = if first == none { 0 } else { first }
#{
  set text(size: 11pt)
  for b in data.blocks.slice(0, first) { one(b) }
}
#set text(size: 10pt * letters) if first != 0
#set text(size: 9pt * letters) if first == 0
#set par(spacing: 0.6em * room) if first == 0
#set list(spacing: 1.3mm * room) if first == 0
#set enum(spacing: 1.3mm * room) if first == 0
#for b in data.blocks.slice(first) { one(b) }
#context [#metadata((here().page(), here().position().y / 1mm)) <end>]
`;
