import {execFileSync} from 'node:child_process';
import {cp, mkdtemp, readFile, rm, symlink, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {readPdfFacts} from '../print/pdf-facts.ts';
import {comparePages} from './compare-pages.ts';

/*
 * `npm run compare -- <ref>`: builds the worked example of this checkout with the program of `ref` and with the one
 * here, and shows what differs in the facts of the PDF, in the HTML, and in the look of eight pages. Nothing of the
 * checkout is touched.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const ref = process.argv[2] ?? 'HEAD';
const folder = await mkdtemp(path.join(tmpdir(), 'swatchleaf-compare-'));
try {
  const old = path.join(folder, 'old');
  execFileSync('git', ['worktree', 'add', '--detach', '--quiet', old, ref], {cwd: root, stdio: 'inherit'});
  try {
    await symlink(path.join(root, 'node_modules'), path.join(old, 'node_modules'), 'junction');
    execFileSync('npm', ['run', '--silent', 'compile'], {cwd: old, stdio: 'inherit'});
    const before = await build('before', await programOf(old));
    const after = await build('after', await programOf(root));
    const same = [showDifference(before, after, 'facts.txt'), showDifference(before, after, 'binder.html')];
    for (const line of await comparePages(await printed(before), await printed(after), folder))
      console.log(line);
    if (same.every(Boolean)) console.log(`the binder is the same as at ${ref}`);
  } finally {
    execFileSync('git', ['worktree', 'remove', '--force', old], {cwd: root, stdio: 'inherit'});
  }
} finally {
  await rm(folder, {recursive: true, force: true});
}

/** Path of the program of a checkout, as its own package says. */
async function programOf(checkout: string): Promise<string> {
  const {bin}: {bin: {swatchleaf: string}} = JSON.parse(
    await readFile(path.join(checkout, 'package.json'), 'utf8'),
  );
  return path.join(checkout, bin.swatchleaf);
}

/** Builds the worked example in a folder of its own and writes the PDF's facts beside it, a line for each. */
async function build(name: string, program: string): Promise<string> {
  const binder = path.join(folder, name);
  await cp(path.join(root, 'content'), path.join(binder, 'content'), {recursive: true});
  try {
    execFileSync(process.execPath, [program, 'build', binder], {stdio: 'ignore'});
  } catch {
    // Errors in the content make a draft, which compares as well.
  }
  const output = path.join(binder, 'build');
  const facts = readPdfFacts(await readFile(path.join(output, 'binder.pdf')));
  const readable = JSON.stringify(facts, (_, value) => (value instanceof Map ? [...value] : value), 1);
  await writeFile(path.join(output, 'facts.txt'), readable);
  const html = await readFile(path.join(output, 'binder.html'), 'utf8');
  await writeFile(path.join(output, 'binder.html'), html.replaceAll('><', '>\n<'));
  return output;
}

async function printed(output: string) {
  const pdf = path.join(output, 'binder.pdf');
  return {pdf, facts: readPdfFacts(await readFile(pdf))};
}

/** Prints the difference of one file as `diff -u` does; true when there is none. */
function showDifference(before: string, after: string, file: string): boolean {
  try {
    execFileSync('git', ['diff', '--no-index', '--', path.join(before, file), path.join(after, file)], {
      stdio: 'inherit',
    });
    return true;
  } catch {
    return false;
  }
}
