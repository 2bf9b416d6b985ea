import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';

/**
 * Reads the drawings that the golden cases hold as a ruler would: the ends of each measure's line on paper, times the
 * scale written in the corner, against the words beside the line. Lines are drawn to 0.01 mm of paper.
 */
function drawnMeasures(name: string): readonly {readonly drawn: number; readonly said: number}[] {
  const html = readFileSync(join('tests/tables/piece', name, 'expected/table.html'), 'utf8').replaceAll(
    '&nbsp;',
    ' ',
  );
  const scale = Number(/1 : ([\d.]+)<\/text>/.exec(html)?.[1]);
  return [...html.matchAll(/<g>(.*?)<\/g>/gs)].flatMap(([, group = '']) => {
    const said = /(\d+\.\d) cm/.exec(group)?.[1];
    const ends = ['x1', 'x2', 'y1', 'y2'].map((end) =>
      Number(new RegExp(`<line[^>]* ${end}="([\\d.]+)"`).exec(group)?.[1]),
    );
    const [x1 = 0, x2 = 0, y1 = 0, y2 = 0] = ends;
    return said === undefined ? [] : [{drawn: Math.hypot(x2 - x1, y2 - y1) * scale, said: Number(said) * 10}];
  });
}

describe('drawn lengths, measured again, are those computed', () => {
  test.each([
    ['front-against-back', [518, 620, 60, 300, 240, 20, 91, 164, 91, 518, 518, 260]],
    ['sleeve-against-both', [255, 580, 393, 187, 36, 391]],
    ['hat-with-rows', [267, 222, 50, 88, 84, 22, 267, 267]],
  ])('%s', (name, byHand) => {
    const measures = drawnMeasures(name);
    expect(measures.map(({said}) => said)).toEqual(byHand);
    for (const {drawn, said} of measures) {
      // Half of the 1 mm that the words round to, and 0.01 mm of paper at 1 : 7 or nearer.
      expect(Math.abs(drawn - said)).toBeLessThanOrEqual(0.5 + 0.07);
    }
  });
});

test('a drawing has no style, class or colour of its own', () => {
  const html = readFileSync('tests/tables/piece/front-against-back/expected/table.html', 'utf8');
  const svg = /<svg.*<\/svg>/s.exec(html)?.[0] ?? '';
  expect(svg).not.toMatch(/\sstyle=|class=|#[0-9a-f]{3}|rgb|NaN/);
  expect(svg).toContain('<title>Schematic of front');
});
