import type {SafeHtml} from '../model/composed.ts';
import {UsageError} from '../support/usage-error.ts';
import {composeFractions} from './compose-fractions.ts';
import {fontCss} from './font-css.ts';
import {keepWhole} from './keep-whole.ts';
import type {LayoutInput} from './layout-input.ts';
import {usedFonts} from './used-fonts.ts';

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
 * page load nothing and run nothing. A page that is given another body later needs all fonts.
 */
export function documentHtml(
  input: LayoutInput,
  {title, styles, pageRules, body}: DocumentParts,
  embedded: 'all fonts' | 'used fonts' = 'all fonts',
): string {
  const css = [...styles.map((name) => styleSheet(input, name)), pageRules].join('\n');
  const text = keepWhole(composeFractions(body));
  const fonts = embedded === 'all fonts' ? input.fonts : usedFonts(input.fonts, css + text);
  return `<!doctype html>
<html lang="${input.binder.settings.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width">
<title>${escapeHtml(title)}</title>
<style>
${fontCss(fonts)}
${css}
</style>
</head>
<body>
${text}
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
