const entities: Readonly<Record<string, string>> = {'&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;'};

/** Plain text as HTML text or as the value of a double-quoted attribute. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (character) => entities[character] ?? character);
}
