/**
 * Takes the target from every link that leads out of the document: a part of the binder keeps the words `see leaf
 * S-07 · 1`, but has no such leaf. `html` is ours or our processor's, so attributes are quoted and a quotation mark
 * within one is escaped.
 */
export function unlinkAbsent(html: string): string {
  const ids = new Set(Array.from(html.matchAll(/\sid="([^"]*)"/g), ([, id]) => id));
  return html.replace(/<a href="#([^"]*)"/g, (link, target: string) => (ids.has(target) ? link : '<a'));
}
