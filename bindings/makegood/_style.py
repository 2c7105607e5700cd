# SPDX-License-Identifier: MIT
"""What the pages share: how they look, how a word or a formula is set, the frame of a page, and how a picture stands in it."""

from __future__ import annotations

import re
from html import escape

from . import _sketch
from ._drawing import _mark
from ._words import _INVENTED, _STANDING, Document

_STYLE = """
:root{--ink:#22262a;--soft:#5a6268;--line:#c9ccc8;--paper:#fbfaf6;--tint:#f1efe8;color-scheme:light}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.55 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;
overflow-wrap:anywhere;font-variant-numeric:tabular-nums}
header,main,footer{max-width:47rem;margin:0 auto;padding:0 1.25rem}
header{padding-top:2.5rem}
footer{padding:1.5rem 1.25rem 3rem;color:var(--soft);font-size:.875rem}
h1,h2,h3{font-family:Georgia,"Noto Serif",serif;font-weight:normal;line-height:1.25}
h1{font-size:1.9rem;margin:0 0 .4rem}
h2{font-size:1.5rem;margin:3.2rem 0 .6rem}
h3{font-size:1.15rem;margin:2.2rem 0 .6rem;font-weight:bold}
h4{font-size:1.05rem;margin:0;line-height:1.35}
p{margin:.5rem 0}
a{color:inherit;text-decoration-thickness:1px;text-underline-offset:.2em}
a:focus-visible,summary:focus-visible{outline:3px solid var(--ink);outline-offset:3px}
.skip{position:absolute;left:-99rem}
.skip:focus{left:1rem;top:1rem;background:var(--paper);padding:.5rem}
.soft,.small{color:var(--soft)}
.small{font-size:.875rem}
.said{border-left:.3rem double var(--ink);padding:.1rem 0 .1rem 1rem;margin:1.2rem 0;font-size:1.05rem}
ul.plain{list-style:none;margin:0;padding:0}
ul.plain>li{display:grid;grid-template-columns:1.5rem 1fr;margin:.75rem 0}
ul.tight>li{margin:.35rem 0}
.shape{width:14px;height:14px;overflow:visible;margin-top:.36rem}
sub{font-size:.75em;line-height:0}
.date{display:inline-block}
.next{display:block}
.cautions li{margin:.35rem 0}
article{margin:0 0 2.6rem;scroll-margin-top:1rem}
.answer{display:grid;grid-template-columns:1.5rem 1fr;margin:.45rem 0 .6rem}
figure{margin:.9rem -8px .5rem;padding:0 8px;overflow:hidden}
svg.drawing{display:block;overflow:visible;max-width:38rem}
svg text{font-size:12.5px;fill:var(--ink)}
svg text.tick{font-size:11px;fill:var(--soft)}
.permitted{fill:url(#hatch);stroke:var(--ink);stroke-width:.8}
.limit{stroke:var(--ink);stroke-width:3}
.axis{stroke:var(--soft);stroke-width:.8}
.doubt,.stroke{stroke:var(--ink);stroke-width:2;fill:none}
.stroke{stroke-width:1.2}
.mark{fill:var(--ink);stroke:var(--paper);stroke-width:1}
.mark.open{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
dl.facts{display:grid;grid-template-columns:repeat(auto-fill,minmax(12.5rem,1fr));gap:.55rem 1.5rem;margin:.7rem 0}
dt{color:var(--soft);font-size:.8125rem;line-height:1.3}
dd{margin:0}
.notes p{margin:.3rem 0}
summary{cursor:pointer;width:max-content;max-width:100%;margin-top:.6rem;text-decoration:underline;text-decoration-thickness:1px;
text-underline-offset:.2em}
ol.steps{margin:.4rem 0 0;padding:0 0 0 1.6rem}
ol.steps>li{margin:.75rem 0}
.sum{display:grid;grid-template-columns:auto 1fr;column-gap:.5rem;font-family:Georgia,"Noto Serif","DejaVu Serif",serif}
.sum span{min-width:0}
.legend{display:grid;grid-template-columns:repeat(auto-fill,minmax(13.5rem,1fr));gap:.3rem 1.5rem;list-style:none;padding:0;margin:.8rem 0}
.legend li{display:grid;grid-template-columns:52px 1fr;align-items:center}
.legend svg{width:40px;height:20px;overflow:visible}
.danger{border:2px solid var(--ink);margin:1.1rem 0;background:#fff;padding:0 1rem .6rem;break-inside:avoid}
.danger>h3{background:var(--ink);color:#fff;margin:0 -1rem .7rem;padding:.45rem 1rem .5rem;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.danger p{margin:.4rem 0}
.note{font-size:.875rem;font-style:italic;color:var(--soft)}
figure.picture{margin:1.6rem 0;padding:0;break-inside:avoid}
.frame{background:#fff;border:1px solid var(--line);padding:.4rem .3rem;max-width:30rem}
.frame svg{display:block}
svg.chart text{paint-order:stroke;stroke:#fff;stroke-width:3px}
.scroll{max-width:none;overflow-x:auto}
.wall-drawing{min-width:44rem;width:100%}
.swipe{display:none}
@media screen and (max-width:46rem){.swipe{display:block}}
figcaption{margin:0 0 .5rem}
figure.picture>figcaption>strong{display:block}
@media (min-width:46rem){figure.picture:not(.wide){display:grid;grid-template-columns:minmax(0,30rem) 1fr;gap:0 1.3rem;align-items:start}
figure.picture:not(.wide)>figcaption{order:2;margin-top:.3rem}}
.way{margin:0;padding:0;list-style:none}
.way>li{border-top:1px solid var(--line);padding:.6rem 0 .7rem;break-inside:avoid}
.way>li:last-child{border-bottom:1px solid var(--line)}
.row{display:grid;grid-template-columns:1fr auto;column-gap:1.2rem;align-items:baseline}
.row>:last-child{text-align:right;white-space:nowrap}
.tag{display:inline-block;border:1px solid var(--ink);border-radius:.2rem;padding:0 .4rem;font-size:.8125rem;margin-left:.3rem;white-space:nowrap}
.total{border-top:2px solid var(--ink);border-bottom:4px double var(--ink);padding:.4rem 0;font-weight:bold;font-size:1.1rem}
.turn{display:grid;grid-template-columns:5.2rem 1.5rem 1fr;margin:.25rem 0}
ol.order{padding-left:1.6rem}
ol.order>li{margin:.7rem 0;break-inside:avoid}
.terms>div{margin:.6rem 0;break-inside:avoid}
.terms dt{color:var(--ink);font-weight:bold;font-size:1rem}
.subject{font-weight:bold}
table.readings{border-collapse:collapse;width:100%;font-size:.875rem;line-height:1.35;margin:.8rem 0}
.readings th{text-align:left;border-bottom:2px solid var(--ink);padding:.2rem .5rem .25rem 0;vertical-align:bottom}
.readings td{border-top:1px solid var(--line);padding:.3rem .5rem .3rem 0;vertical-align:top}
.readings th,.readings td{overflow-wrap:normal;hyphens:auto}
.readings td:nth-child(3){font-weight:bold}
.readings td:nth-child(6){white-space:nowrap}
.readings tr:not(.new)>td:first-child{border-top-color:transparent;color:transparent}
.readings tr{break-inside:avoid}
.readings thead{display:table-header-group}
table.numbers{border-collapse:collapse;font-size:.875rem;line-height:1.35;margin:.6rem 0}
.numbers th,.numbers td{text-align:left;border-top:1px solid var(--line);padding:.25rem .9rem .25rem 0;vertical-align:top}
@media screen and (max-width:46rem){.readings,.readings tbody,.readings tr,.readings td{display:block}
.readings thead{position:absolute;left:-99rem}
.readings tr{border-top:1px solid var(--line);padding:.35rem 0}
.readings td,.readings tr:not(.new)>td:first-child{border:0;padding:.05rem 0}
.readings tr:not(.new)>td:first-child,.readings td.empty{display:none}
.readings tr.new{border-top:2px solid var(--ink);margin-top:.8rem}
.readings tr.new>td:first-child{font-weight:bold;font-size:1rem}
.readings td:nth-child(n+2):nth-child(-n+6):not(.empty){display:inline}
.readings td:nth-child(2)::after{content:": "}
.readings td:nth-child(3)::after{content:"\\A";white-space:pre}
.readings td:nth-child(5):not(.empty)::before,.readings td:nth-child(6):not(.empty)::before{content:"\\00A0· "}}
@media (max-width:30rem){.danger{margin-left:-.4rem;margin-right:-.4rem}}
@media screen{details:not([open])+.working{display:none}}
@media (max-width:30rem){h1{font-size:1.55rem}h2{font-size:1.3rem;margin-top:2.6rem}
dl.facts{display:block}dl.facts div{display:grid;grid-template-columns:9.2rem 1fr;column-gap:.6rem;margin:.25rem 0;align-items:baseline}
ol.steps{padding-left:1.3rem}}
@page{size:A4;margin:16mm 16mm 18mm}
@media print{
:root{--paper:#fff;--tint:#fff}
html{font-size:9.8pt}
body{line-height:1.42}
header,main,footer{max-width:none;padding:0}
.skip{display:none}
h1{font-size:20pt}h2{font-size:15pt;margin-top:9mm}h3{margin-top:6mm}
h2,h3,h4,.answer,dt{break-after:avoid}
.head,figure,ol.steps>li,ul.plain>li{break-inside:avoid}
article{margin-bottom:7mm}
.result{display:inline-block;width:100%;break-inside:avoid}
a{text-decoration:none}
summary{list-style:none;text-decoration:none;font-weight:bold;break-after:avoid}
summary::-webkit-details-marker{display:none}
details{break-after:avoid}
figure.picture:not(.wide){display:grid;grid-template-columns:104mm 1fr;gap:0 5mm;align-items:start}
figure.picture:not(.wide)>figcaption{order:2}
svg.chart{max-height:215mm;width:auto;max-width:100%;margin:0 auto}
figcaption{break-after:avoid}
.frame{border-color:#999;max-width:none}
.scroll{overflow:visible}
.wall-drawing{min-width:0;max-height:200mm}
.working{break-before:avoid}
ol.steps{columns:2;column-gap:7mm;font-size:8.2pt;line-height:1.3}
ol.steps:has(>li:only-child){columns:1}
ol.steps .sum{overflow-wrap:anywhere;break-inside:avoid}
.notes,.notes p{line-height:1.3;margin-top:.6mm;margin-bottom:.6mm}
p{orphans:3;widows:3}
}
"""


_LONG = re.compile(r"(?<![\w.,:/-])[1-9]\d{4,14}(?![\w,:/-])")
_UNIT = re.compile(r"(?<=\d) (?=(?:[MkmµG]?(?:Ω|V|A|W|Pa|m|s)|l/s|°C|K|%|mm²|m³|A²·s|1/h)(?![\w/²³]))")
_UNIT_IN_FORMULA = re.compile(r"(?<=[\d⁰¹²³⁴⁵⁶⁷⁸⁹]) (?=[^\W\d_]{1,3}(?:[\s·/²³⁴(),.;]|$)|[%°1])")
_INDEX = re.compile(r"(?<![A-Za-z_])([^\W\d_]{1,2})_([^\W_]{1,4}|[+−-])(?![^\W_])")


def _words(said: str) -> str:
    """Escaped words: long numbers in groups of three, and no line breaks between a number and its unit."""
    grouped = _LONG.sub(lambda m: f"{int(m[0]):,}".replace(",", "\u202f"), said)
    return _UNIT.sub("\u00a0", escape(grouped))


def _formula(said: str) -> str:
    """An escaped formula: U_0 is written with an index, and no line breaks between a number and its unit."""
    return _INDEX.sub(r"\1<sub>\2</sub>", _UNIT_IN_FORMULA.sub("\u00a0", escape(said)))


def _shape(outcome: str) -> str:
    return f'<svg class="shape" viewBox="-7 -7 14 14" aria-hidden="true">{_mark(outcome)}</svg>'


HATCH = (
    '<svg width="0" height="0" style="position:absolute" aria-hidden="true"><defs><pattern id="hatch" width="6" height="6" '
    'patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#fff"/>'
    '<line x1="0" x2="0" y1="0" y2="6" stroke="#8d948f" stroke-width="1.4"/></pattern></defs></svg>'
)


def opening(a: Document, title: str, skip: str, skip_words: str) -> list[str]:
    """From the first line of a page to the lines under its title; <header> is left open."""
    out = ['<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">']
    out.append('<meta name="viewport" content="width=device-width,initial-scale=1">')
    out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">")
    out.append(f"<title>{escape(title)}</title><style>{_STYLE}</style></head>\n<body>{HATCH}")
    out.append(f'<a class="skip" href="#{skip}">{escape(skip_words)}</a>')
    out.append(f"<header><h1>{escape(title)}</h1>")
    date = f'<span class="date">{escape(a["date"])}</span>' if a.get("date") else ""
    where = " · ".join(x for x in (escape(a.get("place") or ""), date) if x)
    if where:
        out.append(f'<p class="soft">{where}</p>')
    if a.get("invented"):
        out.append(f"<p><strong>{escape(_INVENTED)}</strong></p>")
    return out


def closing(a: Document) -> str:
    version = f" {a['version']}" if a.get("version") else ""
    return f"\n<footer><p>{escape(_STANDING)}</p><p>Written by makegood{escape(version)}.</p></footer></body></html>\n"


def cautions(a: Document, title: str) -> str:
    said = a.get("cautions") or []
    if not said:
        return ""
    items = "".join(f"<li>{escape(str(c))}</li>" for c in said)
    return f'<section class="cautions" aria-labelledby="first"><h2 id="first">{escape(title)}</h2><ul>{items}</ul></section>'


def figure(p: _sketch.Picture | None, said: set[str] | None = None) -> str:
    """A picture with a sentence that says what to see; where many alike follow each other, `said` holds what the first ones said."""
    if p is None:
        return ""
    see = "" if said is not None and p.see in said else p.see
    if said is not None:
        said.add(p.see)
    hint = '<p class="small swipe">The drawing is wider than this screen: move it sideways.</p>' if p.wide else ""
    scroll = ' scroll" tabindex="0" role="group" aria-label="drawing, wider than a phone' if p.wide else ""
    caption = f"<figcaption><strong>{escape(p.title)}</strong> {_words(see)}{hint}</figcaption>"
    return f'<figure class="picture{" wide" if p.wide else ""}">{caption}<div class="frame{scroll}">{p.svg}</div></figure>'


def no_pictures(wanted: bool) -> str:
    """Where pictures would stand and the library is missing: how to get them."""
    return f'<p class="small">{escape(_sketch.HOW_TO_GET)}</p>' if wanted and not _sketch.available() else ""
