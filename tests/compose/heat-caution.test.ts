import {expect, test} from 'vitest';
import {heatCaution} from '../../src/compose/heat-caution.ts';
import {checkCase} from '../support/read-case.ts';

async function cautionAfter(from: string, to: string, id: string): Promise<string | null> {
  const {binder} = await checkCase(['tests/rules/base'], (text) => text.replace(from, to));
  const item = binder?.items.find((one) => one.id === id);
  if (!item) throw new Error(`the base case has ${id}`);
  return heatCaution(item);
}

test.each([
  ['blocking: wet blocked, dried flat', 'blocking: Steamed through a cloth', 'S-01', true],
  ['A slipped selvedge suits', 'With a warm iron, a selvedge suits', 'Q-01', true],
  ['A slipped selvedge suits', 'In *hot water* a selvedge suits', 'Q-01', true],
  ['A slipped selvedge suits', 'With no steam and without ironing a selvedge suits', 'Q-01', false],
  ['A slipped selvedge suits', 'The ironstone dish suits', 'Q-01', false],
  ['Lunde begins', 'Lunde irons and begins', 'B-01', false],
])('%s → %s', async (from, to, id, isCautioned) => {
  const caution = await cautionAfter(from, to, id);
  if (!isCautioned) return expect(caution).toBeNull();
  for (const word of [/care label/, /local rules/, /swatch/, /hands/]) expect(caution).toMatch(word);
});
