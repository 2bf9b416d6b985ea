/**
 * Takes the target from every link that leads out of the document: a part of the binder keeps the words `see leaf
 * S-07 · 1`, but has no such leaf. `present` are the ids that a link may lead to, every one in the document when left out.
 * `html` is ours or our processor's, so attributes are quoted and a quotation mark within one is escaped.
 */
export function unlinkAbsent(html: string, present: ReadonlySet<string> = idsIn(html)): string {
  return html.replace(/<a href="#([^"]*)"/g, (link, target: string) => (present.has(target) ? link : '<a'));
}

function idsIn(html: string): ReadonlySet<string> {
  return new Set(Array.from(html.matchAll(/\sid="([^"]*)"/g), ([, id = '']) => id));
}
