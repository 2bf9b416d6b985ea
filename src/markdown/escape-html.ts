import type {SafeHtml} from '../model/composed.ts';

/** Plain text for element content or a quoted attribute. */
export function escapeHtml(text: string): SafeHtml {
  const escaped = text.replace(/[&<>"']/g, (character) => references[character] ?? character);
  // Every character that means something in HTML is now a reference: this is what the brand stands for.
  return escaped as SafeHtml;
}

const references: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
