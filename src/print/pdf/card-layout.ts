import { SHEET_LAYOUT } from './sheet-layout.ts';

/**
 * Layout of the limits card; the verdict keeps 40 pt or more. What stops or bounds the blow is never smaller than `data.least`: at two metres the
 * capitals of 25 pt fill ten minutes of arc (5.8 mm), which half of ordinary sight still reads. Where not all fits so, the habits go
 * into two columns at 17 pt or more (capitals of 4 mm, seven minutes of arc, which ordinary sight reads at two metres); the foot says how
 * high the letters are. What does not fit even then goes on a second page under the same verdict, never below it in size.
 */
export const CARD_LAYOUT = SHEET_LAYOUT + String.raw`
#let dark = data.condition == "stand-down"
#show heading: it => it.body
#set par(leading: 0.36em, spacing: 0.5em)
#set page(margin: (left: 14mm, right: 12mm, top: 10mm))

#let head(size, repeated: false) = {
  let tag = text(size: calc.min(34pt, size), weight: "bold", data.tag)
  let words = text(size: if repeated { size * 0.7 } else { size }, weight: "bold", data.verdict)
  block(width: 100%, below: 4mm, if repeated { [#tag, continued] } else { heading(level: 1, tag) })
  block(width: 100%, stroke: 0.7mm + ink, fill: if dark { ink } else { none }, inset: (x: 5mm, y: 5mm), below: 7mm, breakable: false, {
    set text(fill: if dark { white } else { ink })
    let shown = if repeated { words } else { heading(level: 2, words) }
    if dark { shown } else { grid(columns: (auto, 1fr), column-gutter: 4mm, align: horizon, mark(data.condition, size: size * 0.6), shown) }
  })
}
#let limits(size, items) = {
  set text(size: size, weight: "bold")
  list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.52em, ..items.map(one => list.item(one)))
}
// Share of the em that a capital of the typeface is high.
#let capital = 0.668
#let high(size) = if data.paper == "us-letter" { str(calc.round(size.pt() * capital / 72, digits: 2)) + " in" } else { str(calc.round(size.pt() * capital * 0.3528, digits: 1)) + " mm" }
#let habits(size, items) = if items.len() > 0 {
  set text(size: size, weight: "bold")
  block(above: 5mm, width: 100%, stroke: (top: thin), inset: (top: 3.5mm), grid(columns: (1fr, 1fr), column-gutter: 7mm, ..range(2).map(side => list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.6em, ..items.slice(side * calc.ceil(items.len() / 2), if side == 0 { calc.ceil(items.len() / 2) } else { items.len() }).map(one => list.item(one))))))
}
#let heights(words, first, second) = text(size: 7pt, "Capitals: verdict " + high(words) + ", limits " + high(first) + (if second == none { "" } else { ", habits " + high(second) }) + ".")
#let always(size) = {
  set text(size: size)
  block(above: 6mm, stroke: (top: thick), inset: (top: 4mm), width: 100%, breakable: false, grid(columns: if data.qr == none { (1fr,) } else { (1fr, 36mm) }, column-gutter: 6mm,
    list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.55em, ..data.always.map(one => list.item(one))),
    ..if data.qr == none { () } else { (align(center, { image(data.qr, width: 32mm, alt: data.qrWords); v(-3mm); text(size: 7pt, data.address) }),) }))
}

#layout(room => {
  let fits(body) = measure(block(width: room.width, body)).height <= room.height
  let verdict = 76pt
  while verdict > 40pt and measure(block(width: room.width, head(verdict))).height > verdict + 34mm { verdict -= 3pt }
  let least = data.least * 1pt
  let small-verdict = calc.min(verdict, 48pt)
  let fitting = ((44pt, 18pt), (41pt, 18pt), (38pt, 18pt), (35pt, 18pt), (32pt, 17pt), (30pt, 16pt), (28pt, 15pt), (26pt, 14pt), (least, 13pt)).map(((size, small)) => (verdict, size, small)) + ((small-verdict, least, 13pt),)
  let fitting = fitting.find(((words, size, small)) => fits({ head(words); limits(size, data.limits); always(small); heights(words, size, none) }))
  let bounds = data.limits.filter(one => one not in data.habits)
  let ranks = if data.habits.len() == 0 { () } else { ((verdict, 34pt, 22pt, 15pt), (verdict, 31pt, 21pt, 15pt), (verdict, 28pt, 20pt, 14pt), (verdict, 26pt, 19pt, 14pt), (verdict, least, 18pt, 13pt), (small-verdict, least, 18pt, 13pt), (small-verdict, least, 17pt, 12pt), (calc.min(verdict, 40pt), least, 17pt, 11pt)) }
  let ranked = ranks.find(((words, size, second, small)) => fits({ head(words); limits(size, bounds); habits(second, data.habits); always(small); heights(words, size, second) }))
  if fitting != none {
    head(fitting.at(0))
    limits(fitting.at(1), data.limits)
    always(fitting.at(2))
    heights(fitting.at(0), fitting.at(1), none)
  } else if ranked != none {
    head(ranked.at(0))
    limits(ranked.at(1), bounds)
    habits(ranked.at(2), data.habits)
    always(ranked.at(3))
    heights(ranked.at(0), ranked.at(1), ranked.at(2))
  } else {
    let top(index) = head(verdict, repeated: index > 0)
    let onward(index) = text(size: 17pt, [Continued on page #(index + 2).])
    let pages = ((),)
    for one in data.limits {
      let index = pages.len() - 1
      let tried = pages.last() + (one,)
      if pages.last().len() > 0 and not fits({ top(index); limits(least, tried); onward(index) }) { pages.push((one,)) } else { pages.last() = tried }
    }
    if not fits({ top(pages.len() - 1); limits(least, pages.last()); always(17pt) }) {
      let moved = pages.last().len() > 1
      let last = if moved { (pages.last().pop(),) } else { () }
      pages.push(last)
    }
    for (index, items) in pages.enumerate() {
      top(index)
      if items.len() > 0 { limits(least, items) }
      if index < pages.len() - 1 { onward(index); colbreak() }
    }
    always(17pt)
  }
})
`;
