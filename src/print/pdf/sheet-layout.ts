/**
 * What all papers share, as Typst source: inks, pens, type, the marks of conditions, the title block at the foot.
 * Texts are read from `data.json` and never stand in this source.
 */
export const SHEET_LAYOUT = String.raw`
#let data = json("data.json")
#let ink = rgb("#000000")
#let chalk = rgb("#b3261e")
#let thin = 0.25mm + ink
#let thick = 0.5mm + ink
#set document(title: data.title, author: data.authors, description: data.description, keywords: data.keywords, date: none)
#set text(font: data.families, lang: "en", size: 10pt, fill: ink, number-width: "tabular", hyphenate: false)
#set par(leading: 0.58em, spacing: 0.75em)
#show regex("\\b\\d{1,3}/(2|4|8|16|32|64)\\b"): it => {
  let (over, under) = it.text.split("/")
  box({ text(size: 0.74em, baseline: -0.28em, over); h(-0.03em); "/"; h(-0.03em); text(size: 0.74em, under) })
}

#let mark(condition, size: 3.1mm) = pdf.artifact(box(width: size, height: size, clip: true, baseline: 0.45mm,
  stroke: if condition == "does-not-apply" { none } else if condition in ("not-checked", "not-known") { (paint: ink, thickness: 0.4mm, dash: (0.4mm, 0.7mm), cap: "round") } else { 0.3mm + ink },
  fill: if condition == "stand-down" { ink } else { none },
  if condition in ("watch", "limited") {
    let steps = range(-4, 5)
    for k in steps {
      place(line(start: (k * size / 4, size), end: (k * size / 4 + size, 0mm), stroke: 0.2mm + ink))
      if condition == "limited" { place(line(start: (k * size / 4, 0mm), end: (k * size / 4 + size, size), stroke: 0.2mm + ink)) }
    }
  }))

#let cell(label, body, size: 9.5pt) = [#text(size: 6.5pt, label)\ #text(size: size, weight: "bold", body)]
#let title-block() = context {
  let b = data.block
  set par(leading: 0.35em)
  set text(size: 9pt)
  let pages = [#counter(page).display() of #counter(page).final().first()]
  block(width: 100%, stroke: thick, breakable: false, {
    set block(spacing: 0pt)
    grid(columns: (1.5fr, 0.8fr, 1.3fr, 0.7fr), inset: (x: 2mm, y: 1.4mm), stroke: (x, y) => (left: if x > 0 { thin }),
      cell("Hammer", b.tag), cell("Class", b.hammerClass), cell("Sheet", b.sheet), cell("Page", pages))
    grid(columns: (0.9fr, 0.9fr, 1.2fr, 1.3fr, 1.1fr), inset: (x: 2mm, y: 1.4mm), stroke: (x, y) => (left: if x > 0 { thin }, top: thin),
      cell("Last look", b.date), cell("Paper made", b.made), cell("By", b.by), cell("Verdict", b.verdict), cell("Log", b.log))
    if b.invented { block(width: 100%, inset: (x: 2mm, y: 1mm), stroke: (top: thin), spacing: 0pt, text(size: 8pt, weight: "bold", "Invented hammer: made up to show the program at work.")) }
  })
}
#set page(paper: data.paper, flipped: data.landscape, margin: (left: 18mm, right: 14mm, top: 14mm, bottom: if data.block.invented { 34mm } else { 29mm }), footer: title-block(), footer-descent: 3mm)
`;
