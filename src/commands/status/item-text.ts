import type {UnitOrder} from '../../knitting/format-quantity.ts';
import type {AskedAndThere} from '../../model/asked-and-there.ts';
import {clippingInShort} from '../../model/clippings.ts';
import type {PrintedLeaf, RoundHistory} from '../../model/item-history.ts';
import type {ItemStatus} from '../../model/item-status.ts';
import {missingInWords, stateAndMissing, stateInWords} from '../../model/state-words.ts';
import {longDate} from '../../support/long-date.ts';
import {wrapWords} from '../../support/wrap-words.ts';
import {attemptsText} from './attempts-text.ts';
import {hung} from './hung.ts';
import {itemLines} from './item-lines.ts';

/** How an item is told about. */
export interface Telling {
  readonly columns: number;
  readonly language: 'en-GB' | 'en-US';
  readonly units: UnitOrder;
}

/** Everything about one item as text for a terminal; what there is nothing to say of is left out. */
export function itemText(status: ItemStatus, telling: Telling): string {
  const {columns, language, units: order} = telling;
  const {id, title, kind, state, section, asks, dates, file} = status;
  const wrapped = (text: string) => wrapWords(text, columns);
  return [
    ...wrapped(`${id} ${title}`),
    ...wrapped([kind, section, stateInWords(state)].join(', ')),
    ...wrapped(file ?? 'no file answers it yet'),
    ...(asks === null ? [] : part('Asked for', hung('  ', asks, columns))),
    ...part(
      'Days',
      dates.flatMap(({what, on}) => hung('  ', `${what} ${longDate(on, language)}`, columns)),
    ),
    ...part('Missing', isOpen(status) ? hung('  ', missingInWords(status), columns) : []),
    ...part('Found by check', foundLines(status, columns)),
    ...part('Asked and there', limitLines(status.limits, columns)),
    ...part('Attempts', attemptsText({attempts: status.attempts, order, language, columns})),
    ...part(
      'Clippings',
      status.clippings.flatMap((clipping) => hung('  ', clippingInShort(clipping), columns)),
    ),
    ...part('Belongs to', itemLines(status.tiedTo, stateAndMissing, columns)),
    ...part('Questions beside it', itemLines(status.questions, stateAndMissing, columns)),
    ...part(
      'Rounds',
      status.rounds.flatMap((round) => roundLines(round, telling)),
    ),
    ...part(
      'In the paper binder',
      status.leaves.flatMap((leaf) => hung('  ', leafInWords(leaf, telling), columns)),
    ),
    '',
  ].join('\n');
}

function part(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length > 0 ? ['', heading, ...lines] : [];
}

/** Whether it is asked yet what is missing, and still. */
function isOpen({state}: ItemStatus): boolean {
  return ['in work', 'finished', 'printed', 'rework'].includes(state);
}

function foundLines({findings}: ItemStatus, columns: number): readonly string[] {
  return findings.flatMap(({place, severity, message, hint}) =>
    hung('  ', `line ${place.line}, ${severity}: ${message}. ${hint}`, columns),
  );
}

function limitLines(limits: readonly AskedAndThere[], columns: number): readonly string[] {
  const width = Math.max(0, ...limits.map(({what}) => what.length));
  return limits.flatMap(({what, there, from, to}) =>
    hung(`  ${what.padEnd(width)}  `, `${there}; ${rangeInWords(from, to)} asked`, columns),
  );
}

function rangeInWords(from: number | null, to: number | null): string {
  if (from === null) return `at most ${to}`;
  return to === null ? String(from) : `${from} to ${to}`;
}

function roundLines(
  {round, sent, done, answer}: RoundHistory,
  {columns, language}: Telling,
): readonly string[] {
  const lines = [
    ...(done === null ? [] : [`done about the remark: ${done}`]),
    ...(sent === null ? [] : [`sent ${longDate(sent, language)}`]),
    ...(answer === null
      ? []
      : [
          `answered ${longDate(answer.received, language)}: ${stateInWords(answer.result)}`,
          ...(answer.remark === null ? [] : [`remark: ${answer.remark}`]),
        ]),
  ];
  const before = `  round ${round}  `;
  return lines.flatMap((line, index) =>
    hung(index === 0 ? before : ' '.repeat(before.length), line, columns),
  );
}

function leafInWords({leaf, on, isDraft}: PrintedLeaf, {language}: Telling): string {
  return `${leaf}, printed ${longDate(on, language)}${isDraft ? ' as a draft' : ''}`;
}
