import fc from 'fast-check';
import {expect, test} from 'vitest';
import type {PrintedDocument} from '../../src/print/print-job.ts';
import {type Counts, settle} from '../../src/print/print-settled.ts';

/** A printer of documents that are nothing but their counts: `pagesWith` says how many pages a document of given numbers takes. */
function printer(pagesWith: (written: Counts | null) => Counts, {usesCounts = true} = {}) {
  const prints: {written: Counts | null; tagged: boolean}[] = [];
  return {
    prints,
    render: (counts: Counts | null) => counts,
    async print(written: Counts | null, {tagged}: {tagged: boolean}): Promise<PrintedDocument> {
      prints.push({written, tagged});
      return {pdf: new Uint8Array(), pageCount: 0, starts: new Map(), troubles: []};
    },
    count: (written: Counts | null) => pagesWith(written),
    usesCounts: () => usesCounts,
  };
}

const steady = new Map([
  ['contents', 1],
  ['S-07', 3],
]);
const other = new Map([
  ['contents', 1],
  ['S-07', 2],
]);

test('without earlier counts: once for the counts, untagged, and once for good', async () => {
  const machine = printer(() => steady);
  const {printed, counts} = await settle(machine, null);
  expect(machine.prints).toEqual([
    {written: null, tagged: false},
    {written: steady, tagged: true},
  ]);
  expect(counts).toEqual(steady);
  expect(printed.troubles).toEqual([]);
});

test('a document that says nothing of its pages: printed once, for good', async () => {
  const machine = printer(() => steady, {usesCounts: false});
  const {document, counts} = await settle(machine, null);
  expect(machine.prints).toEqual([{written: null, tagged: true}]);
  expect({document, counts}).toEqual({document: null, counts: steady});
});

test('with the true counts of an earlier build: printed once', async () => {
  const machine = printer(() => steady);
  await settle(machine, steady);
  expect(machine.prints).toEqual([{written: steady, tagged: true}]);
});

test.each([
  ['another number of pages', other],
  ['a sheet that is gone', new Map([...steady, ['S-08', 1]])],
  ['a sheet that is new', new Map([['contents', 1]])],
])('with counts of an earlier build that are no longer true (%s): printed again', async (_, remembered) => {
  const machine = printer(() => steady);
  expect((await settle(machine, remembered)).counts).toEqual(steady);
  expect(machine.prints.map(({written}) => written)).toEqual([remembered, steady]);
});

test('when the numbers change the pages once more, it goes on until they agree', async () => {
  const machine = printer((written) => (written === null ? other : steady));
  const {document, printed} = await settle(machine, null);
  expect(document).toEqual(steady);
  expect(printed.troubles).toEqual([]);
  expect(machine.prints).toHaveLength(3);
});

test('pages that never settle are told, after three prints for good', async () => {
  const machine = printer((written) => (written?.get('S-07') === 3 ? other : steady));
  const {printed} = await settle(machine, null);
  expect(printed.troubles.map(({kind}) => kind)).toEqual(['unsettled pages']);
  expect(machine.prints.filter(({tagged}) => tagged)).toHaveLength(3);
});

test('without a trouble, the numbers in the document are those of its pages, however the pages depend on them', async () => {
  const counts = fc.integer({min: 1, max: 3}).map((pages) => new Map([['S-07', pages]]));
  await fc.assert(
    fc.asyncProperty(
      fc.array(counts, {minLength: 4, maxLength: 4}),
      fc.option(counts),
      async (table, remembered) => {
        const pagesWith = (written: Counts | null) => table[written?.get('S-07') ?? 0] ?? new Map();
        const {document, printed} = await settle(printer(pagesWith), remembered);
        const isTrue = document !== null && document.get('S-07') === pagesWith(document).get('S-07');
        expect(isTrue).toBe(printed.troubles.length === 0);
      },
    ),
  );
});
