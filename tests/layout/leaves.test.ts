import {expect, test} from 'vitest';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderLeaves} from '../../src/layout/render-leaves.ts';
import {layoutInput} from './layout-case.ts';

test.each(['single', 'duplex'])(
  'without errors, the leaves put in one by one are those of the binder (%s)',
  (sides) => {
    const input = layoutInput({
      settings: {sides},
      sections: [
        {
          title: 'Swatches',
          requirements: [
            {id: 'S-01', kind: 'swatch', title: 'Ribs'},
            {id: 'S-02', kind: 'swatch', title: 'Cables'},
          ],
        },
      ],
      items: [{'front-matter': {requirement: 'S-01'}}],
    });
    const counts = new Map([
      ['sheet-title', 1],
      ['sheet-contents', 2],
      ['tab-1', 1],
      ['sheet-S-01', 3],
    ]);
    expect(renderLeaves(input, new Map(), counts)).toEqual(renderBinder(input, counts));
  },
);
