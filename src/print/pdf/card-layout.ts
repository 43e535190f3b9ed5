import { SHEET_LAYOUT } from './sheet-layout.ts';

/**
 * Layout of the limits card. Letters of a limit are never smaller than `data.least`: at two metres the capitals of 25 pt
 * fill ten minutes of arc (5.8 mm), which half of ordinary sight still reads. What does not fit at that size goes on a
 * second page under the same verdict, never below it in size.
 */
export const CARD_LAYOUT = SHEET_LAYOUT + String.raw`
#let dark = data.condition == "stand-down"
#show heading: it => it.body
#set par(leading: 0.42em, spacing: 0.5em)

#let head(size, repeated: false) = {
  let tag = text(size: calc.min(34pt, size), weight: "bold", data.tag)
  let words = text(size: if repeated { size * 0.7 } else { size }, weight: "bold", data.verdict)
  block(width: 100%, below: 4mm, if repeated { [#tag, continued] } else { heading(level: 1, tag) })
  block(width: 100%, stroke: 0.7mm + ink, fill: if dark { ink } else { none }, inset: (x: 5mm, y: 5mm), below: 7mm, breakable: false, {
    set text(fill: if dark { white } else { ink })
    if not dark { mark(data.condition, size: size * 0.62); h(4mm) }
    if repeated { words } else { heading(level: 2, words) }
  })
}
#let limits(size) = {
  set text(size: size, weight: "bold")
  list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.62em, ..data.limits.map(one => list.item(one)))
}
#let always() = {
  set text(size: 17pt)
  block(above: 7mm, stroke: (top: thick), inset: (top: 4mm), width: 100%, breakable: false, grid(columns: if data.qr == none { (1fr,) } else { (1fr, 40mm) }, column-gutter: 6mm,
    list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.55em, ..data.always.map(one => list.item(one))),
    ..if data.qr == none { () } else { (align(center, { image(data.qr, width: 36mm, alt: data.qrWords); v(-3mm); text(size: 7pt, data.address) }),) }))
}
#let whole(verdict, size) = { head(verdict); limits(size); always() }

#layout(room => {
  let verdict = 76pt
  while verdict > 40pt and measure(block(width: room.width, head(verdict))).height > 62mm { verdict -= 4pt }
  let fitting = (44pt, 41pt, 38pt, 35pt, 32pt, 30pt, 28pt, 26pt, data.least * 1pt).find(size => measure(block(width: room.width, whole(verdict, size))).height <= room.height)
  if fitting != none { whole(verdict, fitting) } else {
    let size = data.least * 1pt
    let pages = ()
    let page-items = ()
    for one in data.limits {
      let tried = page-items + (one,)
      let top = if pages.len() == 0 { head(verdict) } else { head(verdict, repeated: true) }
      let body = { top; set text(size: size, weight: "bold"); list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.62em, ..tried.map(it => list.item(it))) }
      if page-items.len() > 0 and measure(block(width: room.width, body)).height > room.height - 12mm { pages.push(page-items); page-items = (one,) } else { page-items = tried }
    }
    pages.push(page-items)
    for (index, items) in pages.enumerate() {
      head(verdict, repeated: index > 0)
      { set text(size: size, weight: "bold"); list(marker: "–", indent: 0mm, body-indent: 0.35em, spacing: 0.62em, ..items.map(it => list.item(it))) }
      if index < pages.len() - 1 { text(size: 17pt, [Continued on page #(index + 2).]); colbreak() }
    }
    always()
  }
})
`;
