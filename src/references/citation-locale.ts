import {invariant} from '../support/invariant.ts';

export type CitationLanguage = 'en-GB' | 'en-US';

/**
 * The CSL locale as XML: the American one of the Citation Style Language project (CC BY-SA 3.0), from a package that
 * has no British one. Our changes for en-GB: the day before the month, single quotation marks outside and double ones
 * inside, punctuation outside the marks (New Hart's Rules, from memory). For both: terms for plates, which CSL lacks, and for times, which the
 * other styles print bare.
 */
export async function loadCitationLocale(language: CitationLanguage): Promise<string> {
  const locales = await import('@citation-js/plugin-csl/lib/locales.json', {with: {type: 'json'}});
  const american = locales.default['en-US'];
  return (language === 'en-US' ? commonChanges : [...commonChanges, ...britishChanges]).reduce(
    change,
    american,
  );
}

type Change = readonly [what: string, instead: string];

const commonChanges: readonly Change[] = [
  [
    '</terms>',
    '<term name="plate"><single>plate</single><multiple>plates</multiple></term>' +
      '<term name="plate" form="short"><single>pl.</single><multiple>pls.</multiple></term>' +
      '<term name="time" form="short">at</term></terms>',
  ],
];

const britishChanges: readonly Change[] = [
  ['xml:lang="en-US"', 'xml:lang="en-GB"'],
  ['<style-options punctuation-in-quote="true"/>', '<style-options punctuation-in-quote="false"/>'],
  ['<term name="open-quote">“</term>', '<term name="open-quote">‘</term>'],
  ['<term name="close-quote">”</term>', '<term name="close-quote">’</term>'],
  ['<term name="open-inner-quote">‘</term>', '<term name="open-inner-quote">“</term>'],
  ['<term name="close-inner-quote">’</term>', '<term name="close-inner-quote">”</term>'],
  [
    '<date form="text"><date-part name="month" suffix=" "/><date-part name="day" suffix=", "/>',
    '<date form="text"><date-part name="day" suffix=" "/><date-part name="month" suffix=" "/>',
  ],
  [
    '<date-part name="month" form="numeric-leading-zeros" suffix="/"/><date-part name="day" form="numeric-leading-zeros" suffix="/"/>',
    '<date-part name="day" form="numeric-leading-zeros" suffix="/"/><date-part name="month" form="numeric-leading-zeros" suffix="/"/>',
  ],
];

function change(xml: string, [what, instead]: Change): string {
  invariant(xml.includes(what), `the locale has changed its form: no ${what}`);
  return xml.replace(what, instead);
}
