import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';

const {resolve} = createRequire(import.meta.url);

/** A font as the layouts bring it: one static cut within the style sheet. */
export function fontFace(family: string, file: string): string {
  const data = readFileSync(resolve(file)).toString('base64');
  return `@font-face{font-family:"${family}";src:url(data:font/woff2;base64,${data}) format("woff2")}`;
}

export const serif = fontFace(
  'Source Serif 4',
  '@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2',
);

/** A document of sheets, one `<section>` each, the first with the anchor `sheet-1`. */
export function documentOf(sheets: readonly string[], {css = '', head = ''} = {}): string {
  const sections = sheets.map(
    (sheet, index) => `<section class="sheet" id="sheet-${index + 1}">${sheet}</section>`,
  );
  return `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><title>A small binder</title><style>
${serif}
@page{size:210mm 297mm;margin:76px}
body{margin:0;font:11pt "Source Serif 4"}
.sheet{break-before:page;overflow:clip}.sheet:first-child{break-before:auto}
${css}
</style>${head}</head><body>${sections.join('')}</body></html>`;
}

export function anchorsOf(count: number): string[] {
  return Array.from({length: count}, (_, index) => `sheet-${index + 1}`);
}
