import type {PageDocument} from './page-types.ts';

declare const document: PageDocument;

/** A font that the style sheets name, and whether the browser could read it. */
export interface DeclaredFont {
  readonly family: string;
  readonly description: string;
  readonly loaded: boolean;
}

/**
 * Runs in the page. Loads every font that the style sheets name. The browser itself loads a font when it first sets
 * something in it; one that is used in page headers alone would come too late for the first print.
 */
export async function loadFonts(): Promise<DeclaredFont[]> {
  const fonts = [...document.fonts];
  await Promise.all(fonts.map((font) => font.load().catch(() => {})));
  return fonts.map(({family, weight, style, status}) => ({
    family: family.replace(/["']/g, ''),
    description: `${family.replace(/["']/g, '')} ${weight} ${style}`,
    loaded: status === 'loaded',
  }));
}
