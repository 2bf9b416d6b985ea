import {hiddenCharacters} from './visible-text.ts';

/** A value as JSON over several lines, in which what could steer a terminal or hide text is escaped. */
export function visibleJson(value: unknown): string {
  const escaped = (unit: string) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
  const text = JSON.stringify(value, null, 2).replace(hiddenCharacters, (character) =>
    character.split('').map(escaped).join(''),
  );
  return `${text}\n`;
}
