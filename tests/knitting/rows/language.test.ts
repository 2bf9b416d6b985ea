import {expect, it} from 'vitest';
import {countsOf, prove} from './prove.ts';

// Stitches on the needle, the rows as the trade writes them, and the stitches after the last row, counted by hand.
const modern: readonly (readonly [number, string, number])[] = [
  [20, `Row 1: Sl 1 purlwise with yarn in front, k to last 2 sts, k2tog.`, 19],
  [20, `Row 1 (RS): [K1, p1] to end.`, 20],
  [21, `Row 1 (RS): (K1, p1) to last st, k1.`, 21],
  [20, `Row 1: K3, [yo, k2tog] 4 times, [ssk, yo] twice, k5.`, 20],
  [20, `Row 1: K3, *yo, k2tog; rep from * 6 more times, k3.`, 20],
  [20, `Row 1: K3, *yo, k2tog; rep from * 6 times, k3.`, 20],
  [20, `Row 1: K3, *yo, k2tog; rep from * 7 times, k3.`, 20],
  [20, `Row 1: K2, *p2, k2; rep from * to last 2 sts, p2`, 20],
  [20, `1st row: k2, *p2, k2, rep from * to last 2 sts, p2.`, 20],
  [
    20,
    `1st row (right side). Knit.
2nd and every alternate row: Purl.
3rd row: K2, yo, k to end. 21 sts.`,
    21,
  ],
  [
    20,
    `First row.—Slip 1, knit 2, over, narrow, over twice, narrow, knit the rest plain.
Second row.—Knit 14, purl 1, knit 6`,
    21,
  ],
  [20, `Row 1: k1, m1, k to last st, m1, k1 (22 sts)`, 22],
  [20, `Row 1: Inc in first st, k to last 2 sts, inc, k1. [22 sts]`, 22],
  [20, `Row 1: K1, yfwd, sl1, k1, psso, k to last 3 sts, k2tog, yfwd, k1.`, 20],
  [20, `Row 1: K1, yf, sl1 pwise, yb, k to end.`, 20],
  [
    20,
    `Row 1: Bind off 4 sts loosely, knit to end—16 sts.
Row 2: BO 4 sts, purl to end. 12 sts rem.`,
    12,
  ],
  [
    20,
    `Row 1: K8, bind off next 4 sts, k to end.
Row 2: P to bound-off sts, CO 4, p to end. 20 sts.`,
    20,
  ],
  [
    20,
    `Row 1: K8, cast off 4, k8 (including st left on needle after casting off).
Row 2: p8, cast on 4 sts, p8`,
    20,
  ],
  [
    20,
    `Row 1: K8, cast off 4, k7.
Row 2: p8, cast on 4 sts, p8`,
    20,
  ],
  [20, `Row 1 (RS): K15, turn, sl1, p9, turn, sl1, k to end.`, 20],
  [
    20,
    `Row 1: K to last 3 sts, w&t.
Row 2: P to last 3 sts, w&t.
Row 3: K to 1 st before wrapped st, w&t.
Row 4: P to 1 st before wrapped st, w&t.
Row 5: Knit to end, picking up wraps.
Row 6: Purl.`,
    20,
  ],
  [
    20,
    `Row 1: K15, turn.
Row 2: MDS, p9, turn.
Row 3: MDS, k to DS, k DS, k1, turn.
Row 4: p to end.`,
    20,
  ],
  [
    24,
    `Rnd 1: *K6, pm; rep from * to end.
Rnd 2: *K to 2 sts before marker, k2tog, sm; rep from * to end. 20 sts
Rnd 3: Knit.
Rep rnds 2 and 3 until 8 sts remain.`,
    8,
  ],
  [
    24,
    `Rnd 1: *K6, pm; rep from * around.
Rnd 2: [K1, m1, k to marker, sm] 4 times. 28 sts`,
    28,
  ],
  [25, `Row 1: k10, sl 2 sts to cn and hold in back, k2, k2 from cn, k to end.`, 25],
  [
    25,
    `Row 1: k10, C6F, k9.
Row 2: p all sts.
Row 3: k10, slip next 3 sts onto cable needle and hold at front of work, knit next 3 sts from left-hand needle, then knit 3 sts from cable needle, k9`,
    25,
  ],
  [25, `Row 1: *K5; repeat from * to end`, 25],
  [20, `Row 1: Knit, inc 6 sts evenly across row. 26 sts.`, 26],
  [20, `Row 1: Knit, dec 1 st at each end of row. 18 sts`, 18],
  [20, `Row 1: Dec 1 st at each end of row, k to end. 18 sts`, 18],
  [
    20,
    `Row 1: K9, sl2 tog kwise, k1, p2sso, k8.
Row 2: Purl.
Row 3: K8, sl 1, k2tog, psso, k7.
Rows 4–6: Work in St st.
Row 7: k all sts`,
    16,
  ],
  [20, `Row 1: K4, (k1, yo, k1) all in next st, k to end. 22 sts`, 22],
  [20, `Row 1: K4, (k1, p1, k1, p1, k1) into next st, turn, p5, turn, k5, turn, p5tog, turn, k to end.`, 20],
  [
    20,
    `MB: uses 1, makes 1, "make bobble"
Row 1: K4, MB, k5, MB, k to end.`,
    20,
  ],
  [
    20,
    `Row 1: k the knits and p the purls.
Row 2: Work in pattern as set to last 3 sts, k3.
Row 3: Rib to end`,
    20,
  ],
  [
    21,
    `Row 1: *K1, p1; rep from * to last st, k1.
Row 2: As row 1.
Rows 3–8: Rep rows 1 and 2 three times.`,
    21,
  ],
  [
    21,
    `Row 1: K1, *p1, k1, rep from * to end.
Rep row 1 until piece measures 10 cm, ending with a WS row.
Next row (RS): K, dec 1 st at each end. 19 sts`,
    19,
  ],
  [
    12,
    `Row 1: K1, yo, k to last st, yo, k1.
Row 2: Purl.
Rep rows 1 and 2 four more times. 22 sts.`,
    22,
  ],
  [
    30,
    `Row 1: *k2tog, yo twice, ssk; rep from *, k2.
Row 2: *p1, (k1, p1) into double yo, p1; rep from * to last 2 sts, p2`,
    30,
  ],
  [20, `Row 1: k1, *yo, k1**, p2, rep from * to ** 3 times, k to end.`, 24],
  [
    20,
    `Row 1: Knit across.
Row 2: Purl back.
Row 3: Knit to end of row.
Row 4: Purl to end of row`,
    20,
  ],
  [
    20,
    `Row 1: Sl 1, *k1 tbl, p1; rep from * to last st, k1.
Row 2: k3 tbl, p2 tbl, k to end`,
    20,
  ],
  [20, `Row 1: K2, p3tog, k2togtbl, p2tog tbl, k3tog-tbl, k to end`, 14],
  [20, `Row 1: K1-tbl, p1, M1R, k to last 2 sts, M1L, p1, k1-tbl.`, 22],
  [20, `Row 1: k2 p2 k2 p2 k12`, 20],
  [20, `Row 1: With yarn in back, sl 1, k to end`, 20],
  [20, `Row 1: k5, drop 1, k to end.`, 19],
  [20, `Row 1: (K2tog) across.`, 10],
  [20, `Row 1: K2tog across row.`, 10],
  [20, `Row 1: k1, [k2tog] to last st, k1`, 11],
  [20, `Row 1: (RS) k1, *(k2tog) twice, (yo, k1) 3 times, yo, (ssk) twice, k1; rep from *, ending k7`, 20],
  [20, `Row 1: knit to 3 sts before end of row, k2tog, k1`, 19],
  [20, `Row 1: Purl until 3 sts remain, p2tog, p1`, 19],
  [20, `Row 1: purl across all stitches`, 20],
  [
    20,
    `Row 1: k10, place marker, k10
Row 2: p to marker, slip marker, p to end.
Row 3: K to 3 sts before marker, k2tog, k1, sm, k1, ssk, k to end. 18 sts
Row 4: p to marker, remove marker, p to end`,
    18,
  ],
  [60, `Row 1 — K2, *yf, k2tog; rep from * to end`, 60],
  [
    8,
    `1st row. Make 1, knit 2, make 1, knit 2 together, knit 4.
2nd row. Purl.
3rd row. Slip 1, knit 1, pass the slipped stitch over, knit 6, increase in last stitch.`,
    9,
  ],
  [20, `Row 1: Knit into the front and back of first st, k to end`, 21],
  [
    20,
    `Row 1: Knit 2, thread over, slip 1, knit 2 together, pass slipped stitch over, thread over, knit plain to end.`,
    20,
  ],
  [
    20,
    `1st row—Slip one, knit two, make one, take two together, knit to end.
2nd row—Purl one row`,
    20,
  ],
  [20, `Row 1: O 2, p 2 tog, k 1, o, n, k to end`, 21],
  [20, `Row 1: k 3 (k 2 tog) twice, k13`, 18],
  [20, `Row 1: Bind off all sts knitwise.`, 0],
  [20, `Row 1: Cast off.`, 0],
  [20, `Row 1: Cast off 18 sts, k1. 2 sts.`, 2],
  [
    20,
    `Rows 1 & 3: Knit.
Rows 2 & 4: Purl`,
    20,
  ],
  [20, `Row 1: K2, work Row 1 of chart to last 2 sts, k2`, 20],
  [
    20,
    `Setup row (WS): P4, k4, p4, k4, p4.
Row 1 (RS): K4, p4, k4, p4, k4`,
    20,
  ],
  [
    20,
    `Row 1: sl 1 wyif, k to last st, sl 1 wyif
Row 2: sl1 pwise wyib, p18, sl1`,
    20,
  ],
  [20, `Row 1: k1, (p1, k1) x 9, p1`, 20],
  [20, `Row 1: k1, *p1, k1*, rep between *s to last st, p1`, 20],
  [20, `Row 1: k2 tog, k 16, k 2 tog through the back loops`, 18],
  [20, `Row 1: k1, p1, k1 into next st, k to end`, 22],
  [20, `Row 1: kfb of each st. 40 sts`, 40],
  [20, `Row 1: Kfb in every st. 40 sts`, 40],
  [20, `Row 1: k5, k next 3 sts tbl, k to end`, 20],
  [20, `Row 1: MC k5, CC k3, k to end`, 20],
  [
    20,
    `Row 1: Using MC, k to end.
Row 2: With CC, purl`,
    20,
  ],
  [20, `Rnd 1: k5 MC, k2 CC, k to end with MC`, 20],
];

/** In the manner of the needlework books of 1840 to 1890, and of patterns that abbreviate otherwise. */
const others: readonly (readonly [number, string, number])[] = [
  [
    11,
    `1st row—Slip 1, knit 2, make 1, knit 2 together, knit 1, make 2, knit 2 together, make 2, knit 2 together, knit 1.
2nd row—Knit 3, purl 1, knit 2, purl 1, knit 3, make 1, knit 2 together, knit 1.
3rd row—Slip 1, knit 2, make 1, knit 2 together, knit the rest plain.
4th row—Cast off 2, knit the remainder.`,
    11,
  ],
  [
    17,
    `1st Row—Knit 2, (over, knit 2 together) 3 times, over twice, k 2 tog, k 7.
2nd row.—K 9, p 1, k the rest.`,
    18,
  ],
  [18, `1st row: *P2, k1, yarn round needle, k1, p2; repeat from * to end of row.`, 21],
  [
    18,
    `1st row.—* Knit two, purl two together, bring the wool round the needle, purl two; repeat from *.`,
    18,
  ],
  [12, `First row: Slip 1, * thread forward, knit 2 together; repeat from * to the last stitch, knit 1.`, 12],
  [
    12,
    `1st row.—Knit 1, * bring the wool forward, slip one, knit one, pass the slipped stitch over; repeat from * to last stitch; knit 1.`,
    12,
  ],
  [
    15,
    `1st round: Knit 3, make 1, slip 1, knit 2 together, pass slipped stitch over knitted one, make 1, knit 9.`,
    15,
  ],
  [15, `Row 1: k5, sl1, k1, psso, yrn, p1, yon, k2tog, k5`, 15],
  [
    20,
    `Row 1: Slip one knitwise, knit two, thread over twice, purl two together, knit to end.
Row 2: k 15, (knit 1, purl 1) in the double over, k to end`,
    21,
  ],
  [16, `1st row: K 3, n, o, n, k 1, o twice, k 1, n, o, n, k 3.`, 16],
  [
    19,
    `1st row.—Sl 1, k 1, o, n, k to end.
2d row.—K.
3d row.—Sl 1, (o, n) 9 times.`,
    19,
  ],
  [24, `1st row: *(K1, yo, k1) into next st, p3tog; rep from * across.`, 24],
  [
    14,
    `Row 1: Sl 1, k2, tto, n, k3, tto 3 times, n, k4.
Row 2: k6, p1, k1, k to end.`,
    16,
  ],
  [
    21,
    `1st row—Knit 1, *thread forward, knit 3, slip 1, knit 2 together, draw the slipped stitch over, knit 3, thread forward, knit 1, and repeat from *.`,
    21,
  ],
  [40, `1st row: Take in two stitches, k to end`, 39],
  [
    12,
    `1st row.—Slip 1, knit 11.
2nd row.—Slip 1, purl 10, knit 1.
The third row is like the first.
Fourth row like second.`,
    12,
  ],
  [
    12,
    `1st row.—Knit.
2nd row.—Purl.
3rd row.—Like first.
4th row.—Same as second row.
5th row.—As first row.`,
    12,
  ],
  [
    12,
    `1st and 2nd rows.—Plain.
3rd row.—Purl.
Repeat these three rows.`,
    12,
  ],
  [
    12,
    `1st row.—Plain knitting.
2nd row.—Pearl knitting.
Repeat these two rows alternately until the piece is long enough.`,
    12,
  ],
  [28, `1st row.—Make one, knit two together, to end of row.`, 28],
  [28, `1st row.—* Knit 2 together, wool over needle; repeat from * to the end.`, 28],
  [12, `1st row.—Knit 3, make 3 (by putting the wool 3 times round the needle), knit to end.`, 15],
  [12, `1st row.—Knit 2, slip 1 as if about to purl, k to end`, 12],
  [
    25,
    `1st row: knit 4, k 3 tog, k to end; turn.
2nd row: purl 23; turn.`,
    23,
  ],
  [
    12,
    `Row 1: K to end, turn.
Row 2: P to end, turn.
Row 3: Knit`,
    12,
  ],
  [
    12,
    `Row 1: k to end of row, CO 5 sts. 17 sts.
Row 2: p17, cast on 5. 22 sts.`,
    22,
  ],
  [12, `Row 1: CO 5 sts at beg of row, k to end. 17 sts.`, 17],
  [
    12,
    `Row 1: P1, k1, p to last 2 sts, k1, p1.
Row 2: Knit all the knits and purl all the purls.`,
    12,
  ],
  [13, `Row 1 (WS): (P1, k1) 6x, p1.`, 13],
  [
    32,
    `Rnd 1: *ssk, k4, k2tog; rep from * around. 24 sts rem.
Rnd 2: Knit.
Rnd 3: *ssk, k2, k2tog; rep from * around—16 sts.
Rnd 4: *ssk, k2tog; rep from * to end of rnd. (8 sts)
Rnd 5: [k2tog] 4 times. 4 sts.`,
    4,
  ],
  [
    10,
    `Row 1: kfb, k to last 2 sts, kfb, k1 — 12 sts.
Row 2: k.
Rep last 2 rows 3 times more. 18 sts.`,
    18,
  ],
  [
    10,
    `Row 1: kfb, k to last 2 sts, kfb, k1.
Row 2: k.
Rep rows 1 & 2 until there are 20 sts on the needle.`,
    20,
  ],
  [40, `Row 1: K6, *C4F, k4; rep from * to last 10 sts, C4F, k6`, 40],
  [40, `Row 1: p2, *2/2 LPC, p2, 2/2RPC; rep from * to last 8 sts, p8`, 40],
  [
    40,
    `Row 1: p18, T4F, p18.
Row 2: k18, p4, k18
Row 3: p18, Cr4B, p18.
Row 4: p18, 3/3 LC, p16`,
    40,
  ],
  [
    9,
    `Row 1: k4, M1, k1, M1, k4 (11 sts).
Row 2 (and all WS rows): Purl.
Row 3: k5, M1, k1, M1, k5 [13 sts].
Row 5: k13`,
    13,
  ],
  [
    9,
    `Row 1: k4, yo, k1, yo, k4. 11 sts.
Even rows: Purl.
Row 3: k5, yo, k1, yo, k5. 13 sts.
`,
    13,
  ],
  [
    20,
    `Row 1: *k1, p1; rep from * to end.
Row 2: Rep row 1.
Row 3: Repeat Row 2.
Row 4: Work as for row 1`,
    20,
  ],
  [20, `Row 1: K5, sl 1, pick up and knit 1 st, k to end`, 21],
  [
    20,
    `R1: k
R2: p`,
    20,
  ],
  [
    20,
    `1. Knit.
2. Purl.`,
    20,
  ],
  [
    20,
    `Row 1 (RS): Using A, knit.
Row 2: Using B, *k1, sl1 wyif; rep from * to end.`,
    20,
  ],
  [20, `Row 1: K1; *slip 1 purlwise with yarn at back, k1; rep from * to last st; k1.`, 20],
  [20, `Row 1: K1, (sl 1, k1) to last st, k1.`, 20],
  [20, `Row 1: K2tog, *yo, sl 1-k2tog-psso; rep from *, yo, k3`, 15],
  [20, `Row 1: yo, k2tog-tbl, sl1-k2-psso, k to end`, 19],
  [20, `Row 1: k9, k2tog but leave sts on needle, knit first st again, slip both sts off needle, k9`, 20],
  [
    20,
    `Row 1: k9, [knit into back of second st on left needle, then knit into front of first st, slip both sts off needle], k9`,
    20,
  ],
  [
    20,
    `Row 1: k9, skip first st and knit the second st, then knit the first st, slipping both off together, k9`,
    20,
  ],
  [
    20,
    `Row 1: K3, ssk, k to last 5 sts, k2tog, k3. (18 sts)
Row 2: P3, p2tog, p to last 5 sts, ssp, p3. (16 sts)`,
    16,
  ],
  [
    20,
    `Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1. 2 sts dec'd.
Next row: P.
Rep last 2 rows 2 more times. 14 sts.`,
    14,
  ],
  [20, `Row 1: k2, inc 1, k to last 3 sts, inc 1, k2`, 22],
  [
    20,
    `Row 1: *K4, place marker; rep from * 3 more times, k4.
Row 2: *p to marker, sm, rep from * 3 more times, p to end.`,
    20,
  ],
  [20, `Row 1: p10, k5, wrap next st, turn; p5, wrap next st, turn; k to end.`, 20],
  [
    7,
    `Row 1: sl1, k2, yo, k2tog, yo2, k2tog.
Row 2: yo, k2, p1, k2, yo, k2tog, k1.`,
    9,
  ],
];

it.each([...modern, ...others])('on %i stitches: %s', (start, rows, end) => {
  const proof = prove(`stitches: ${start}\n${rows}`);
  expect(proof.found).toEqual([]);
  expect(countsOf(proof).at(-1)).toBe(end);
});
