import {failure, type Result, type Span, success} from '../support/result.ts';

/**
 * Reads an ISBN of 10 or 13 digits, with or without hyphens or spaces, `ISBN ` or `ISBN-13: ` before it. The value is
 * its digits alone.
 *
 * ISBN-13 (ISO 2108): weights 1 and 3 by turns; the sum is divisible by 10. ISBN-10: weights 10 down to 1; the sum is
 * divisible by 11, and `X` in the last place is 10. Example: 978-0-306-40615-7 sums to 93 before its check digit 7.
 */
export function readIsbn(text: string): Result<string> {
  const {body, span} = withoutPrefix(text, /^ISBN(?:-1[03](?=[\s:])|\s1[03](?=:))?[\s:]*(?=\d)/i);
  if (/[^\dX\s‐‑–-]/i.test(body) || /[\s‐‑–-]{2}|^[\s‐‑–-]|[\s‐‑–-]$/.test(body))
    return notAnIsbn(body, span);
  const digits = body.replace(/[^\dX]/gi, '').toUpperCase();
  if (/^\d{9}[\dX]$/.test(digits)) return checked('ISBN', digits, isbn10CheckDigit(digits), body, span);
  if (!/^\d{13}$/.test(digits)) return notAnIsbn(body, span);
  if (!/^97[89]/.test(digits)) {
    return failure({
      message: `The ISBN \`${body}\` does not begin with \`978\` or \`979\``,
      hint: 'Copy the number again from the back of the title page.',
      span,
    });
  }
  return checked('ISBN', digits, isbn13CheckDigit(digits), body, span);
}

/**
 * Reads an ISSN: eight digits with a hyphen after the fourth, `ISSN ` before it or not; the hyphen may be missing. The
 * value has its hyphen.
 *
 * Weights 8 down to 2 (Library of Congress, ISSN check digit); the check digit brings the sum to a multiple of 11, and
 * `X` is 10. Example: 0317-8471 sums to 120, remainder 10, check digit 1.
 */
export function readIssn(text: string): Result<string> {
  const {body, span} = withoutPrefix(text, /^e?ISSN[\s:]*(?=\d)/i);
  if (!/^\d{4}[‐‑–-]?\d{3}[\dX]$/i.test(body)) {
    return failure({
      message: `\`${body}\` does not have the form of an ISSN`,
      hint: 'Write eight digits with a hyphen in the middle, as in `0317-8471`.',
      span,
    });
  }
  const digits = body.replace(/[^\dX]/gi, '').toUpperCase();
  const result = checked('ISSN', digits, elevensCheckDigit(digits.slice(0, 7)), body, span);
  return result.ok ? success(`${digits.slice(0, 4)}-${digits.slice(4)}`) : result;
}

/**
 * Reads a DOI (ISO 26324), with or without `doi:` or `https://doi.org/` before it: `10.`, four or more digits, perhaps
 * further parts, a slash, and anything but spaces. The value is the bare DOI as written; case does not matter in it.
 */
export function readDoi(text: string): Result<string> {
  const {body, span} = withoutPrefix(text, /^(?:doi[\s:]*|(?:https?:\/\/)?(?:dx\.)?doi\.org\/)(?=10)/i);
  if (/^10\.\d{4,}(?:\.\d+)*\/\S*[^\s.,;]$/.test(body)) return success(body);
  return failure({
    message: `\`${body}\` does not have the form of a DOI`,
    hint: 'Write it as printed on the article, as in `10.1386/mms.5.3.293_2`, without a full stop at the end.',
    span,
  });
}

function withoutPrefix(text: string, prefix: RegExp): {readonly body: string; readonly span: Span} {
  const lead = text.length - text.trimStart().length;
  const start = lead + (prefix.exec(text.trimStart())?.[0].length ?? 0);
  const body = text.slice(start).trim();
  return {body, span: {start, end: start + body.length}};
}

function notAnIsbn(body: string, span: Span): Result<never> {
  const count = body.match(/[\dX]/gi)?.length ?? 0;
  return failure({
    message: `\`${body}\` does not have the form of an ISBN: it has ${count} digits`,
    hint: 'Write the 10 or 13 digits of the ISBN, as in `978-0-306-40615-7`.',
    span,
  });
}

function checked(kind: string, digits: string, right: string, body: string, span: Span): Result<string> {
  if (digits.endsWith(right)) return success(digits);
  return failure({
    message: `The last digit of the ${kind} \`${body}\` is \`${digits.slice(-1)}\`; its other digits ask for \`${right}\``,
    hint: 'Compare each digit with the book or magazine: one of them is wrong, or two have changed places.',
    span: {start: span.end - 1, end: span.end},
  });
}

function isbn13CheckDigit(digits: string): string {
  const sum = weightedSum(digits.slice(0, 12), (index) => (index % 2 === 0 ? 1 : 3));
  return String((10 - (sum % 10)) % 10);
}

function isbn10CheckDigit(digits: string): string {
  return elevensCheckDigit(digits.slice(0, 9));
}

/** For n digits: weights n+1 down to 2, the check digit has weight 1, the sum is a multiple of 11. */
function elevensCheckDigit(digits: string): string {
  const check = (11 - (weightedSum(digits, (index) => digits.length + 1 - index) % 11)) % 11;
  return check === 10 ? 'X' : String(check);
}

function weightedSum(digits: string, weight: (index: number) => number): number {
  return [...digits].reduce((sum, digit, index) => sum + Number(digit) * weight(index), 0);
}
