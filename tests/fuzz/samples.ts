/** References as other programs save them; the works are invented. */
export const bib: readonly string[] = [
  `@string{tithe = "Tithe Press"}
@book{ashdown2011,
  author    = {Ashdown, Hester and {The Fellgate Guild} and van der Moss, Peregrine, Jr.},
  title     = {The {Shaped} Stitch: \\emph{edges} \\& \\"{o}ffnungen, $x^2$},
  publisher = tithe # ", " # {Fellgate},
  year      = 2011, month = may,
  edition   = {Second}, isbn = {978-1-9999991-1-7},
  url       = {https://example.org/a_b}, urldate = {2026-03-09},
}
@comment{not this}
@incollection{moss2004, crossref = {ashdown2011}, title = "A chapter", pages = {101--118}}
`,
  `@article(lunde2016,
  author = "Lunde, Ingrid and others",
  journaltitle = {Journal of Domestic Textiles}, date = {2012-05-17/2013~}, volume = {7}, number = {2},
  doi = {10.1000/182}, title = {Relaxation of hand-knitted wool},
)
% a note
@online{orme2013, author = {Bettina Orme}, title = {Slipping}, date = {2013-10}, url = {https://example.org}}
`,
];

export const ris: readonly string[] = [
  `TY  - BOOK
ID  - ashdown2011
AU  - Ashdown, Hester
A2  - Moss, Peregrine, Jr.
TI  - The Shaped Stitch
T2  - A series
PY  - 2011/05/17/spring
CY  - Fellgate
PB  - Tithe Press
SP  - 312
SN  - 978-1-9999991-1-7
UR  - https://example.org/a
Y2  - 2026/03/09//
KW  - edges
ER  - 

TY  - JOUR
AU  - Lunde, I.
T1  - Relaxation of
 hand-knitted wool
JO  - Journal of Domestic Textiles
VL  - 7
IS  - 2
SP  - 101
EP  - 118
DO  - 10.1000/182
Y1  - 2012
ER  - 
`,
];

export const cslJson: readonly string[] = [
  JSON.stringify(
    [
      {
        id: 'ashdown2011',
        type: 'book',
        title: 'The <i>Shaped</i> Stitch',
        author: [
          {family: 'Ashdown', given: 'Hester', 'non-dropping-particle': 'van der'},
          {literal: 'The Guild'},
        ],
        issued: {'date-parts': [[2011, 5], [2012]], circa: true},
        ISBN: '978-1-9999991-1-7',
        'number-of-pages': 312,
      },
      {
        id: 7,
        type: 'motion_picture',
        title: 'Slipping',
        issued: {raw: 'spring 2013'},
        accessed: {literal: '2026'},
        URL: 'https://example.org',
      },
    ],
    null,
    1,
  ),
  '{"items":[{"id":"a","type":"webpage","title":"\\u0041\\n","note":"x"}]}',
];

export const quantities: readonly string[] = [
  ...[
    '10.2 cm',
    '4 in',
    '4"',
    '10½ in',
    '10 1/2 in',
    '105 mm',
    '20.5 over 10 cm',
    '20½ sts over 4 in',
    '5 sts per in',
    '28 rows / 10 cm',
  ],
  ...[
    '200 m / 100 g',
    '220 yd / 3.5 oz',
    '50 g / 120 m',
    '4.5 mm (US 7)',
    'US 10½',
    'UK 000',
    '4 mm, circular',
    'US 7 / 4.5 mm',
    '0',
  ],
];

/** Settings of the binder file for labels, tags and inserts. */
export const cutOuts: readonly string[] = [
  'tags:\n  sheet: {paper: A4, columns: 3, rows: 7, width: 63.5 mm, height: 38.1 mm, left: 7.25 mm, gap-across: 2.5 mm}\n  first-label: 4\n',
  'tags: {sheet: 21 of 63.5 x 38.1 mm, reverse: folded, hole: true}\ninserts:\n  spine: {width: 50 mm, height: 297 mm}\n  tabs: {width: 2 in, height: 1/2 in}\n',
  'tags: {width: 90 mm, height: 55 mm, sheet: 10 of 3.5 x 2 in}\nrules: {future-date: off, thin-source: {severity: info, at-least: 2}}\n',
];
