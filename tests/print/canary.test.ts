import {mkdtempSync, rmSync, writeFileSync} from 'node:fs';
import {createServer, type Server} from 'node:http';
import type {AddressInfo} from 'node:net';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {pathToFileURL} from 'node:url';
import puppeteer from 'puppeteer-core';
import {afterAll, beforeAll, expect, test} from 'vitest';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {OperationalError} from '../../src/support/operational-error.ts';
import {readWithPdfJs} from './read-with-pdfjs.ts';
import {documentOf} from './sample-binder.ts';
import {foundBrowser, sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();
const canary = 'CANARY';

let server: Server;
let connections = 0;
let folder = '';
let http = '';
let file = '';

beforeAll(async () => {
  server = createServer((_, response) => response.end(`<html><body>${canary}</body></html>`));
  server.on('connection', () => connections++);
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  http = `http://127.0.0.1:${(server.address() as AddressInfo).port}`; // A string only for pipes.
  folder = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  writeFileSync(join(folder, 'secret.html'), canary);
  file = pathToFileURL(join(folder, 'secret.html')).href;
});
afterAll(() => {
  server.close();
  rmSync(folder, {recursive: true});
});

/** Every way we know by which a page makes a browser load something; `x` is the address. */
const ways: Readonly<
  Record<string, (x: string) => {readonly head?: string; readonly body?: string; readonly css?: string}>
> = {
  iframe: (x) => ({body: `<iframe src="${x}"></iframe>`}),
  'iframe with a document of its own': (x) => ({body: `<iframe srcdoc="<img src='${x}'>"></iframe>`}),
  object: (x) => ({body: `<object data="${x}"></object>`}),
  embed: (x) => ({body: `<embed src="${x}">`}),
  image: (x) => ({body: `<img alt="x" src="${x}" srcset="${x} 2x">`}),
  'video and sound': (x) => ({body: `<video src="${x}" poster="${x}"></video><audio src="${x}"></audio>`}),
  'style sheet': (x) => ({head: `<link rel="stylesheet" href="${x}">`}),
  preload: (x) => ({
    head: `<link rel="preload" as="image" href="${x}"><link rel="modulepreload" href="${x}">`,
  }),
  prefetch: (x) => ({head: `<link rel="prefetch" href="${x}"><link rel="prerender" href="${x}">`}),
  preconnect: (x) => ({head: `<link rel="preconnect" href="${x}"><link rel="dns-prefetch" href="${x}">`}),
  icon: (x) => ({head: `<link rel="icon" href="${x}"><link rel="manifest" href="${x}">`}),
  base: (x) => ({head: `<base href="${x}/">`, body: '<img alt="x" src="picture.png">'}),
  '@import': (x) => ({head: `<style>@import url("${x}");</style>`}),
  'font face': (x) => ({css: `@font-face{font-family:"Other";src:url("${x}")}p{font-family:"Other"}`}),
  'background, list mark, border and cursor': (x) => ({
    css: `p{background:url("${x}");list-style-image:url("${x}");border-image:url("${x}");cursor:url("${x}"),auto}`,
  }),
  'picture in a page margin': (x) => ({css: `@page{@top-left{content:url("${x}")}background:url("${x}")}`}),
  'picture and symbol in a drawing': (x) => ({
    body: `<svg><image href="${x}" width="9" height="9"/><use href="${x}#a"/><filter><feImage href="${x}"/></filter></svg>`,
  }),
  'drawing as a picture': (x) => ({
    body: `<img alt="x" src="data:image/svg+xml,${encodeURIComponent(`<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><image href="${x}" width="9" height="9"/><foreignObject><iframe xmlns="http://www.w3.org/1999/xhtml" src="${x}"/></foreignObject></svg>`)}">`,
  }),
  script: (x) => ({head: `<script src="${x}"></script><script type="module" src="${x}"></script>`}),
  'fetch, socket and beacon from a script': (x) => ({
    body: `<script>fetch("${x}");new WebSocket("${x.replace('http', 'ws')}");navigator.sendBeacon("${x}");new Image().src="${x}";location="${x}"</script>`,
  }),
  'script in an attribute': (x) => ({
    body: `<img alt="x" src="data:," onerror="location='${x}'"><svg onload="location='${x}'"></svg>`,
  }),
  refresh: (x) => ({head: `<meta http-equiv="refresh" content="0;url=${x}">`}),
  form: (x) => ({body: `<form action="${x}"><input type="image" alt="x" src="${x}"></form>`}),
  'policy of its own': (x) => ({
    head: `<meta http-equiv="Content-Security-Policy" content="default-src *"><img alt="x" src="${x}">`,
  }),
};

function documentWith(tried: readonly string[], address: string): string {
  const parts = tried.map((way) => ways[way]?.(address) ?? {});
  const join = (part: 'head' | 'body' | 'css') => parts.map((each) => each[part] ?? '').join('\n');
  return documentOf([`<p>page</p>${join('body')}`], {head: join('head'), css: join('css')});
}

/** The text of the printed pages; none when the document was refused as a whole. */
async function printedText(html: string): Promise<string> {
  try {
    const {pdf} = await printPdf(browser(), {html, anchors: ['sheet-1']}, {tagged: true});
    const text = (await readWithPdfJs(pdf)).texts.join(' ');
    expect(text).toContain('page');
    return text;
  } catch (error) {
    expect(error).toBeInstanceOf(OperationalError);
    return '';
  }
}

test.each(Object.keys(ways))('nothing is loaded from this computer by %s', async (way) => {
  connections = 0;
  const text = await printedText(documentWith([way], `${http}/page`));
  expect(connections).toBe(0);
  expect(text).not.toContain(canary);
});

test('no file is read in any of these ways', async () => {
  const {base, refresh, ...others} = ways;
  for (const tried of [Object.keys(others), ['base'], ['refresh']]) {
    expect(await printedText(documentWith(tried, file))).not.toContain(canary);
  }
});

test('what was refused is told with its address', async () => {
  const html = documentWith(['image'], `${http}/front.jpg`).replace(
    '</head>',
    `<link rel="stylesheet" href="${http}/a.css"></head>`,
  );
  const {troubles} = await printPdf(browser(), {html, anchors: ['sheet-1']}, {tagged: true});
  const refused = troubles.filter(({kind}) => kind === 'request refused').map(({detail}) => detail);
  expect(refused.sort()).toEqual([`\`${http}/a.css\``, `\`${http}/front.jpg\``]);
  expect(troubles.filter(({kind}) => kind === 'missing picture')).toHaveLength(1);
});

test('the same page in a browser without our locks does reach the server: the canary is alive', async () => {
  connections = 0;
  const plain = await puppeteer.launch({
    executablePath: foundBrowser.path,
    headless: foundBrowser.isShell ? 'shell' : true,
    pipe: true,
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  try {
    const page = await plain.newPage();
    await page.setContent(documentWith(['iframe'], `${http}/page`));
    const {texts} = await readWithPdfJs(await page.pdf());
    expect(texts.join(' ')).toContain(canary);
    expect(connections).toBeGreaterThan(0);
  } finally {
    await plain.close();
  }
});
