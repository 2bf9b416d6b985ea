/** Where a link leads: into the binder, to the web or an address of mail, or to something that paper cannot lead to. */
export type LinkKind = 'inside' | 'outside' | 'nowhere';

export function linkKind(url: string): LinkKind {
  if (url.startsWith('#')) return 'inside';
  return /^(?:https?:\/\/[^\s/]|mailto:\S)/i.test(url) ? 'outside' : 'nowhere';
}
