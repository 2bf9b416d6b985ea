// Stands in for fast-check while mutants are run: few runs of each property, always the same ones, no shrinking.
// A mutant is then killed or not by the same examples every time.

import {createRequire} from 'node:module';

const fc = createRequire(import.meta.url)('fast-check');

const mostRuns = 20;

const few = (given = {}) => ({
  seed: 20261126,
  ...given,
  numRuns: Math.min(given.numRuns ?? 100, mostRuns),
  endOnFailure: true,
});

export default {
  ...fc,
  assert: (property, given) => fc.assert(property, few(given)),
  sample: (source, given) => fc.sample(source, typeof given === 'number' ? given : few(given)),
};
