/**
 * The name within `content/photos` of a picture that an item names: `front.jpg`, `photos/front.jpg` and
 * `../photos/front.jpg` are the same one. Null for a path that leads elsewhere, and for an address.
 */
export function photoName(written: string): string | null {
  const name = written
    .normalize('NFC')
    .replace(/^(?:\.{1,2}\/)*(?:content\/)?photos\//, '')
    .replace(/^\.\//, '');
  const isElsewhere = /^[/\\]|^[a-z][a-z\d+.-]*:|(?:^|[/\\])\.\.(?:[/\\]|$)/i.test(name);
  return name === '' || isElsewhere ? null : name;
}

/** The same for the address of a picture in Markdown, where a space may be written `%20`. */
export function photoNameOfUrl(url: string): string | null {
  return photoName(url.replace(/(?:%[\da-f]{2})+/gi, decoded));
}

/** Escapes that are no UTF-8 stay as they are: they are part of an odd file name. */
function decoded(escapes: string): string {
  const bytes = Uint8Array.from(escapes.slice(1).split('%'), (digits) => Number.parseInt(digits, 16));
  const text = new TextDecoder().decode(bytes);
  return text.includes('\uFFFD') ? escapes : text;
}
