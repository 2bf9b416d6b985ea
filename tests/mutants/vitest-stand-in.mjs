// Stands in for `vitest` inside the runner of mutants: the same test functions and the same matchers, in one process.

import {
  chai,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';

export {beforeAll, describe, it, test} from '@vitest/runner';

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);

export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
expect.soft = expect;
globalThis[GLOBAL_EXPECT] = expect;
setState({assertionCalls: 0}, expect);
