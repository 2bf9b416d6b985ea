import {expect, test} from 'vitest';
import {keepWhole} from '../../src/layout/keep-whole.ts';

const whole = (words: string) => `<span class="whole">${words}</span>`;

test.each([
  ['<p>see S-01 there</p>', `<p>see ${whole('S-01')} there</p>`],
  [
    '<p><a href="#S-01">the hat (leaf P-02\u00A0·\u00A04)</a></p>',
    `<p><a href="#S-01">the hat (leaf ${whole('P-02\u00A0·\u00A04')})</a></p>`,
  ],
  ['<h1>S-15 Three-needle bind-off</h1>', `<h1>S-15 ${whole('Three-needle')} ${whole('bind-off')}</h1>`],
  // In running text a line may end behind the hyphen of a word.
  ['<p>bind-off</p>', '<p>bind-off</p>'],
  // Too long to be kept in one line of a title, or more than two words.
  ['<h1>counterclockwise-turned up-and-down</h1>', '<h1>counterclockwise-turned up-and-down</h1>'],
  // No numbers of items.
  ['<p>A-12b xS-1 ISO-3759-2 2026-11</p>', '<p>A-12b xS-1 ISO-3759-2 2026-11</p>'],
  ['<title>S-01</title><p><code>S-01</code></p>S-01', '<title>S-01</title><p><code>S-01</code></p>S-01'],
  [
    '<p><svg><title>S-01</title><text>S-01</text></svg></p>',
    '<p><svg><title>S-01</title><text>S-01</text></svg></p>',
  ],
])('%s', (html, kept) => {
  expect(keepWhole(html)).toBe(kept);
});
