import {readdirSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {printScript} from './bench-floors.ts';
import {binOf, entryOf, findProgram, type Peer, packageVersion, programVersion} from './bench-peer.ts';

const debian = (name: string) => `Debian: \`apt-get install ${name}\``;
const npm = (name: string) =>
  `npm: \`npm install ${name}\` in a folder of its own, then \`--peers-from FOLDER\``;
const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

/** Engines that make a PDF of HTML and print CSS without a network. */
export const printers: readonly Peer[] = [
  {
    name: 'weasyprint',
    kind: 'program',
    install: debian('weasyprint'),
    version: programVersion('weasyprint'),
    command: ({root, html, pdf}) => ({program: 'weasyprint', args: [html, pdf], cwd: root}),
  },
  {
    name: 'wkhtmltopdf',
    kind: 'program',
    install: debian('wkhtmltopdf'),
    version: programVersion('wkhtmltopdf'),
    command: ({root, html, pdf}) => ({
      program: 'wkhtmltopdf',
      args: ['--quiet', '--print-media-type', html, pdf],
      cwd: root,
      // It needs no screen, only a library that draws on one.
      env: {...process.env, QT_QPA_PLATFORM: 'offscreen', XDG_RUNTIME_DIR: path.dirname(pdf)},
    }),
  },
  {
    name: 'soffice',
    kind: 'program',
    install: debian('libreoffice-writer'),
    version: programVersion('soffice'),
    command: ({root, html, folder}) => ({
      program: 'soffice',
      args: [
        `-env:UserInstallation=file://${folder}/office`,
        '--headless',
        '--convert-to',
        'pdf:writer_web_pdf_Export',
        '--outdir',
        path.join(folder, 'office-made'),
        html,
      ],
      cwd: root,
    }),
    makes: ({args}) => path.join(args.at(-2) ?? '', path.basename(args.at(-1) ?? '', '.html')).concat('.pdf'),
  },
  {
    name: 'firefox-esr',
    kind: 'program',
    install: debian('firefox-esr'),
    version: programVersion('firefox-esr'),
    // Firefox prints only when it is asked over a protocol: WebDriver BiDi, browsingContext.print.
    command: ({root, html, pdf}) => ({
      args: ['--input-type=module', '-e', firefoxScript(findProgram('firefox-esr') ?? '', html, pdf)],
      cwd: root,
    }),
  },
  {
    name: 'pagedjs-cli',
    kind: 'package',
    install: npm('pagedjs-cli'),
    version: packageVersion('pagedjs-cli'),
    command: ({root, html, pdf, browser, places}) => ({
      args: [
        binOf('pagedjs-cli', 'pagedjs-cli', places),
        html,
        '--output',
        pdf,
        '--timeout',
        '170000',
        ...(sandbox.length > 0 ? ['--browserArgs', sandbox.join(',')] : []),
      ],
      cwd: root,
      env: {...process.env, PUPPETEER_EXECUTABLE_PATH: browser.path},
    }),
  },
  {
    name: '@vivliostyle/cli',
    kind: 'package',
    install: npm('@vivliostyle/cli'),
    version: packageVersion('@vivliostyle/cli'),
    command: ({folder, html, pdf, browser, places}) => ({
      args: [
        binOf('@vivliostyle/cli', 'vivliostyle', places),
        'build',
        html,
        '--output',
        pdf,
        '--executable-browser',
        browser.path,
        '--timeout',
        '170',
      ],
      cwd: folder,
    }),
  },
  {
    name: 'bare puppeteer-core',
    kind: 'own',
    install: 'comes with the program',
    version: () => '',
    command: ({root, html, pdf, browser}) => ({
      args: ['--input-type=module', '-e', printScript(browser, html, pdf)],
      cwd: root,
    }),
  },
];

/** Programs that make HTML of the Markdown files of `content`. */
export function converters(content: string): readonly Peer[] {
  const files = readdirSync(content, {recursive: true, encoding: 'utf8'})
    .filter((file) => file.endsWith('.md'))
    .map((file) => path.join(content, file));
  const program = (name: string, args: readonly string[]): Peer => ({
    name,
    kind: 'program',
    install: debian(name),
    version: programVersion(name),
    command: ({root}) => ({program: name, args: [...args, ...files], cwd: root}),
  });
  const script = fileURLToPath(new URL('./bench-peer-markdown.js', import.meta.url));
  const library = (name: string): Peer => ({
    name,
    kind: 'package',
    install: npm(name),
    version: packageVersion(name),
    command: ({root, places}) => ({args: [script, name, entryOf(name, places), content], cwd: root}),
  });
  return [
    program('cmark', ['-t', 'html']),
    program('cmark-gfm', ['-t', 'html', '-e', 'table', '-e', 'footnotes']),
    program('pandoc', ['-f', 'markdown', '-t', 'html']),
    ...['commonmark', 'marked', 'markdown-it', 'micromark'].map(library),
  ];
}

function firefoxScript(firefox: string, html: string, pdf: string): string {
  return `
    import puppeteer from 'puppeteer-core';
    import {pathToFileURL} from 'node:url';
    const browser = await puppeteer.launch({browser: 'firefox', executablePath: ${JSON.stringify(firefox)}, headless: true, protocolTimeout: 0});
    const page = await browser.newPage();
    await page.goto(pathToFileURL(${JSON.stringify(html)}).href, {timeout: 0});
    await page.pdf({path: ${JSON.stringify(pdf)}, preferCSSPageSize: true, printBackground: true, timeout: 0});
    await browser.close();`;
}
