import {expect, test} from 'vitest';
import {concordance} from '../../src/model/concordance.ts';
import {checkCase} from '../support/read-case.ts';

const swatch = (techniques: string) => `techniques:\n${techniques}\nmeasured:`;

test('which source describes each technique, and what it calls it', async () => {
  const written = swatch(
    `  - name: Make one  left
    cite: [{source: "@orme2013, t. 3:20", as: twisted loop}, "@ashdown2011, pp. 57-58"]
  - name: ssk
    cite: {source: "@lunde2016, fig. 3", as: slip and knit}
  - name: make one left
    cite: "@ashdown2011, p. 60"`,
  );
  const {binder} = await checkCase(['tests/rules/base'], (text) =>
    text.replace(/techniques:\n[\s\S]*?\nmeasured:/, written),
  );
  if (!binder) throw new Error('the base case has a binder');
  const entries = concordance(binder).map(({technique, sources, uses}) => ({
    technique,
    sources,
    uses: uses.map(({source, calledThere, where, itemId}) => [source, calledThere, where, itemId]),
  }));
  expect(entries).toEqual([
    {
      technique: 'Make one left',
      sources: 2,
      uses: [
        ['Ashdown 2011', null, 'pp. 57–58', 'S-01'],
        ['Ashdown 2011', null, 'p. 60', 'S-01'],
        ['Orme 2013', 'twisted loop', 't. 3:20', 'S-01'],
      ],
    },
    {technique: 'ssk', sources: 1, uses: [['Lunde 2016', 'slip and knit', 'fig. 3', 'S-01']]},
  ]);
});
