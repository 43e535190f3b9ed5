/** The look of a printed sheet: off-white stock, ink of two weights, one chalk red, conditions by hatching and word. */
export const SHEET_STYLE = `
:root{--paper:#f6f3ea;--ink:#16181d;--chalk:#b3261e;--pencil:#5b87b8;--thin:1px solid var(--ink);--thick:2px solid var(--ink)}
@page{margin:14mm 14mm 24mm}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:400 15px/1.45 "Atkinson Hyperlegible",system-ui,sans-serif;font-variant-numeric:tabular-nums}
.sheet{max-width:50rem;margin:0 auto;padding:1.4rem 1.2rem 2rem}
h1{font-size:1.55rem;line-height:1.2;margin:.2rem 0 .8rem}
h2{font-size:1.15rem;margin:1.6rem 0 .5rem;border-bottom:var(--thick);padding-bottom:.15rem;break-after:avoid}
h3{font-size:1rem;margin:1.1rem 0 .3rem;break-after:avoid}
p{margin:.35rem 0}.small{font-size:.85em}.next{color:var(--chalk)}
table{border-collapse:collapse;width:100%;margin:.4rem 0 .9rem}
caption{text-align:left;font-size:.85em;padding:.15rem 0}
th,td{text-align:left;vertical-align:top;padding:.26rem .5rem .26rem 0;border-bottom:var(--thin)}
thead th{border-bottom:var(--thick);font-weight:700}
td{overflow-wrap:anywhere}
@media screen and (max-width:600px){.facts tr,.facts th,.facts td{display:block;border:0}.facts tr{border-bottom:var(--thin)}.facts th,.facts td{padding:.15rem 0;width:auto}.rows thead{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}.rows,.rows caption,.rows tbody,.rows tr,.rows td{display:block}.rows tr{border-bottom:var(--thin);padding:.4rem 0}.rows td{border:0;padding:.1rem 0}.rows td:first-child{font-weight:700}.rows td[data-column]:not(:first-child)::before{content:attr(data-column) ': ';font-size:.85em}.rows td:empty{display:none}th{overflow-wrap:anywhere}}
tr{break-inside:avoid}
.dense{font-size:.88em}.dense td,.dense th{padding:.12rem .5rem .12rem 0}
.facts th{width:11rem;font-weight:400}
.facts{break-inside:avoid}
.verdict{border:var(--thick);padding:.7rem .9rem;margin:1rem 0;break-inside:avoid}
.verdict .words{font-size:1.7rem;font-weight:700;line-height:1.1;margin:0 0 .3rem}
.verdict.stand-down{background:var(--ink);color:var(--paper);-webkit-print-color-adjust:exact;print-color-adjust:exact}
.answer{border:var(--thick);padding:.6rem .9rem;margin:1rem 0;break-inside:avoid}
.answer .words{font-size:1.35rem;font-weight:700;line-height:1.15;margin:0 0 .3rem}
.answer.estimate{border-style:dashed}
.mark{display:inline-block;width:1.05em;height:1.05em;border:1.5px solid currentColor;vertical-align:-.16em;margin-right:.45em;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.mark.not-checked,.mark.not-known{border-style:dotted;border-width:2px}
.mark.does-not-apply{border-color:transparent}
.mark.watch{background:repeating-linear-gradient(45deg,transparent 0 3px,currentColor 3px 4px)}
.mark.limited{background:repeating-linear-gradient(45deg,transparent 0 3px,currentColor 3px 4px),repeating-linear-gradient(-45deg,transparent 0 3px,currentColor 3px 4px)}
.mark.stand-down{background:currentColor}
figure{margin:1rem 0;break-inside:avoid}figure svg{width:100%;height:auto;max-height:150mm}figcaption{font-size:.85em}
.caution{border-left:4px solid var(--chalk);padding-left:.7rem;break-inside:avoid}
.new-page{break-after:page}
.title-block{display:flex;flex-wrap:wrap;border:var(--thick);margin:2rem auto 1rem;max-width:50rem;background:var(--paper)}
.title-block div{flex:1 1 auto;border-right:var(--thin);padding:.2rem .6rem;min-width:5rem}
.title-block div:last-child{border-right:0}
.title-block span{display:block;font-size:.7rem}.title-block b{font-size:.95rem}
.card{max-width:44rem;margin:0 auto;padding:1.5rem}
.card .tag{font-size:2.2rem;font-weight:700;margin:0}
.card .verdict .words{font-size:3.4rem}
.card li{font-size:2rem;line-height:1.2;margin:.6rem 0;font-weight:700}
.card .habits ul{columns:2}.card .habits li{font-size:1.45rem;margin:.3rem 0;break-inside:avoid}
.card .always li{font-size:1.15rem;font-weight:400}
@media print{body{background:#fff;font-size:10.5pt}.sheet{padding:0;max-width:none}.title-block{max-width:none}}
`;
