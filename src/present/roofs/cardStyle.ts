/** Looks of a set card, on paper and on a screen that shows the paper. Black on white; nothing is thinner than a point. */
export const cardStyle = `
.set-card{box-sizing:border-box;background:#fff;color:#000;padding:24pt;display:flex;flex-direction:column;justify-content:space-between;overflow:hidden;font:400 11pt/13pt "Public Sans Variable","Public Sans",Arial,sans-serif;font-variant-numeric:lining-nums}
.set-card.letter{width:612pt;height:792pt}
.set-card.a4{width:595pt;height:841pt}
.set-card *{box-sizing:border-box;margin:0;padding:0}
.set-card h1{font:700 21pt/24pt "Public Sans Variable","Public Sans",Arial,sans-serif}
.set-card h2{font:700 11pt/13pt "Public Sans Variable","Public Sans",Arial,sans-serif;padding-bottom:2pt}
.set-card small{font-size:11pt;font-weight:400}
.set-card h2.wide,.set-card .ends{display:flex;justify-content:space-between;gap:10pt}
.set-card .fig{font:600 14.5pt/17pt "Barlow Condensed","Arial Narrow",Arial,sans-serif}
.set-card .fig b{font:700 11pt/17pt "Public Sans Variable","Public Sans",Arial,sans-serif}
.set-card .warn{padding-left:14pt;position:relative}
.set-card .warn::before{content:"";position:absolute;left:0;top:4pt;border:5pt solid transparent;border-left:8pt solid #000;border-right:0}
.set-card .safety{font-weight:700}
.set-card .part+.part{border-top:1pt solid #000;padding-top:3pt}
.set-card .head{display:flex;justify-content:space-between;gap:12pt}
.set-card .head~.drawing,.set-card .order,.set-card .cautions{border-top-width:2pt}
.set-card .code{flex:none}
.set-card .strip{display:flex;justify-content:space-between}
.set-card .cell{display:flex;flex-direction:column;padding:0 7pt;border-left:1pt solid #000}
.set-card .cell:first-child{border:0;padding-left:0}
.set-card .big{font:700 24pt/34pt "Public Sans Variable","Public Sans",Arial,sans-serif;white-space:nowrap;display:flex;align-items:center}
.set-card .stack{display:inline-flex;flex-direction:column;font-size:14pt;line-height:15pt;text-align:center;margin:0 1pt 0 3pt}
.set-card .stack span+span{border-top:1.25pt solid #000}
.set-card table{width:100%;border-collapse:collapse}
.set-card th{font-weight:400;text-align:left;vertical-align:bottom}
.set-card tbody th{font-weight:700;line-height:13pt}
.set-card thead th+th,.set-card td{width:60pt;text-align:right}
.set-card td{font:600 14.5pt/17pt "Barlow Condensed","Arial Narrow",Arial,sans-serif;white-space:nowrap;vertical-align:bottom}
.set-card tbody tr{border-top:1pt solid #000}
.set-card tbody tr.below{border-top:0}
.set-card .below td{text-align:left;white-space:normal}
.set-card .columns{display:flex;justify-content:space-between}
.set-card .columns section:first-child{width:52%}
.set-card .columns section+section{width:44%}
.set-card .columns .safety{padding-top:4pt}
.set-card .bars{border:double #000;border-width:0 4pt;padding:0 4pt;margin:0 2pt;display:inline-block}
.set-card .box{white-space:nowrap}
.set-card .boxes i{display:inline-block;width:9pt;height:9pt;border:1pt solid #000;margin:0 4pt 0 6pt;vertical-align:-1pt}
.set-card .columns h2{display:flex;justify-content:space-between}
.set-card ol,.set-card ul{list-style:none}
.set-card ol li{display:flex;margin-bottom:1pt}
.set-card ol li b{flex:none;width:20pt}
.set-card ol li.stop{align-items:center;gap:5pt}
.set-card ol li.stop b{width:auto}
.set-card .stop::before,.set-card .stop::after{content:"";height:4pt;border:solid #000;border-width:1pt 0;flex:1}
.set-card .stop::before{flex:0 0 14pt}
.set-card ul li{display:flex;margin-bottom:2pt}
.set-card ul i{flex:none;width:10pt;height:10pt;margin:1.5pt 8pt 0 0;border:1pt solid #000}
.set-card ul span{flex:1}
.set-card footer{border-top:1pt solid #000;padding-top:3pt}
.set-card .drawing{display:block;width:100%;height:auto}
.drawing .draw-wood{fill:none;stroke:#000;stroke-width:1.75}
.drawing .draw-thin,.drawing .draw-dimension line{fill:none;stroke:#000;stroke-width:1}
.drawing .draw-dashed{fill:none;stroke:#000;stroke-width:1;stroke-dasharray:5 3}
.drawing .draw-middle{fill:none;stroke:#000;stroke-width:1;stroke-dasharray:8 3 2 3}
.drawing .draw-dot{fill:#000}
.drawing text{fill:#000}
.drawing .draw-narrow{font-family:"Barlow Condensed","Arial Narrow",Arial,sans-serif;font-weight:600}
.drawing .draw-word{font-family:"Public Sans Variable","Public Sans",Arial,sans-serif}
.drawing .draw-strong{font-family:"Public Sans Variable","Public Sans",Arial,sans-serif;font-weight:700}
@media screen{.set-card{margin:0 auto}}
`;
