import sharp from 'sharp';
import {expect, test} from 'vitest';
import {differingShare} from '../../src/dev/compare-pages.ts';

/** White paper of 100 × 100 pixels with a grey box in its corner. */
function page(side: number, grey: number) {
  const box = {
    create: {width: side, height: side, channels: 3, background: {r: grey, g: grey, b: grey}},
  } as const;
  const paper = {create: {width: 100, height: 100, channels: 3, background: '#ffffff'}} as const;
  return sharp(paper)
    .composite([{input: box, left: 0, top: 0}])
    .png()
    .toBuffer();
}

test.each([
  {name: 'the same page', before: {side: 10, grey: 0}, after: {side: 10, grey: 0}, share: 0},
  {
    name: 'a black box of 10 × 10 that became 20 × 20',
    before: {side: 10, grey: 0},
    after: {side: 20, grey: 0},
    share: 0.03,
  },
  {
    name: 'a box that became a little lighter, as the edge of a letter does',
    before: {side: 20, grey: 0},
    after: {side: 20, grey: 50},
    share: 0,
  },
])('$name', async ({before, after, share}) => {
  expect(
    await differingShare(await page(before.side, before.grey), await page(after.side, after.grey)),
  ).toBeCloseTo(share, 10);
});

test('pages of two sizes cannot be compared', async () => {
  const small = await sharp({create: {width: 9, height: 9, channels: 3, background: '#fff'}})
    .png()
    .toBuffer();
  expect(await differingShare(small, await page(10, 0))).toBeNull();
});
