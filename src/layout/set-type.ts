const unit = '(?:mm|cm|m|in|ft|yd|g|kg|oz|sts?|rows?|%)(?![\\p{L}\\d])';
const beforeUnit = new RegExp(`([\\d½¼¾⅓⅔⅛]) (?=${unit})`, 'gu');
const mixedFraction = /(?<![\p{L}\d/])(\d+) (1\/2|1\/4|3\/4)(?![\d/])/gu;
const bareFraction = new RegExp(`(?<![\\p{L}\\d/])(1/2|1/4|3/4)(?= ?${unit})`, 'gu');
const fractions: Readonly<Record<string, string>> = {'1/2': '½', '1/4': '¼', '3/4': '¾'};

/**
 * Sets one line of the candidate's front matter as a compositor would: inch and foot marks after numbers, curly
 * quotation marks, × between measures, dashes in ranges, fractions, and no line end between a number and its unit.
 * What it does not know it leaves alone: `1/2 RC` stays a cable.
 */
export function setType(text: string): string {
  return setMarks(setMarks(text, '"', '“”″'), "'", '‘’′')
    .replace(mixedFraction, (whole, count: string, part: string) => `${count}${fractions[part] ?? whole}`)
    .replace(bareFraction, (part) => fractions[part] ?? part)
    .replace(/([\d½¼¾]) ?[x×] ?(?=\d)/g, '$1\u00a0×\u00a0')
    .replace(/(?<![\w-])(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)(?![\w-])/g, '$1–$2')
    .replace(/\.\.\./g, '…')
    .replace(beforeUnit, '$1\u00a0');
}

/** Straight marks become opening or closing ones, or the sign of a measure where a number stands before and nothing is open. */
function setMarks(text: string, straight: string, curly: string): string {
  const [opening = '', closing = '', measure = ''] = curly;
  let isOpen = false;
  return text.replaceAll(straight, (_mark, offset: number) => {
    const before = text[offset - 1] ?? ' ';
    const after = text[offset + 1] ?? ' ';
    if (/[\s([“‘–—-]/.test(before)) {
      isOpen = true;
      return opening;
    }
    const isApostrophe = /\p{L}/u.test(after);
    if (/[\d½¼¾⅓⅔⅛]/.test(before) && !isOpen && !isApostrophe) return measure;
    if (!isApostrophe) isOpen = false;
    return closing;
  });
}
