import type {SafeHtml} from '../model/composed.ts';
import {UsageError} from '../support/usage-error.ts';
import {composeFractions} from './compose-fractions.ts';
import {fontCss} from './font-css.ts';
import {keepWhole} from './keep-whole.ts';
import type {LayoutInput} from './layout-input.ts';

export interface DocumentParts {
  readonly title: string;
  /** Names of the style sheets, in cascade order. */
  readonly styles: readonly string[];
  /** Rules made for this document: page sizes, running heads, leaf numbers. */
  readonly pageRules: string;
  readonly body: SafeHtml;
}

/**
 * The shell of every document. It is code and no template, so that no layout file can drop the policy that lets the
 * page load nothing and run nothing.
 */
export function documentHtml(input: LayoutInput, {title, styles, pageRules, body}: DocumentParts): string {
  const css = [fontCss(input.fonts), ...styles.map((name) => styleSheet(input, name)), pageRules].join('\n');
  return `<!doctype html>
<html lang="${input.binder.settings.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width">
<title>${escapeHtml(title)}</title>
<style>
${css}
</style>
</head>
<body>
${keepWhole(composeFractions(body))}
</body>
</html>
`;
}

function styleSheet(input: LayoutInput, name: string): string {
  const text = input.templates.get(name) ?? '';
  if (/<\/?style/i.test(text))
    throw new UsageError(`the layout file \`${name}\` holds a <style> tag; it must be CSS only`);
  return text.trim();
}

function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}
