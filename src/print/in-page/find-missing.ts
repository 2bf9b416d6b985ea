import type {PageDocument, PageElement} from './page-types.ts';

declare const document: PageDocument;

interface Picture extends PageElement {
  /** Rejects when the picture cannot be drawn. */
  decode(): Promise<void>;
}

/** Something that the page refers to and does not have; `anchor` is the sheet it stands on. */
export interface MissingThing {
  readonly kind: 'missing picture' | 'broken link';
  readonly anchor: string | null;
  readonly detail: string;
}

/** Runs in the page. Finds pictures that cannot be drawn and links to ids that no element has: Chromium drops both in silence. */
export async function findMissing(anchors: readonly string[]): Promise<MissingThing[]> {
  const sheets = new Set(anchors);
  const anchorOf = (element: PageElement | null): string | null =>
    element === null || sheets.has(element.id) ? (element?.id ?? null) : anchorOf(element.parentElement);
  const missing: MissingThing[] = [];

  // An element selected as `img` or `image` is a picture in the browser's own classes, HTML's or SVG's.
  const pictures = [...document.querySelectorAll('img, svg image')] as Picture[];
  const drawable = await Promise.all(
    pictures.map((picture) =>
      picture.decode().then(
        () => true,
        () => false,
      ),
    ),
  );
  pictures.forEach((picture, index) => {
    if (drawable[index]) return;
    const source = picture.getAttribute('src') ?? picture.getAttribute('href') ?? '';
    const name = picture.getAttribute('alt') || source.slice(0, 60) || 'a picture without a source';
    missing.push({kind: 'missing picture', anchor: anchorOf(picture), detail: name});
  });

  for (const link of document.querySelectorAll('body a[href^="#"]')) {
    const target = link.getAttribute('href')?.slice(1) ?? '';
    let id = target;
    try {
      id = decodeURIComponent(target);
    } catch {
      // A stray per cent sign: the id is what is written.
    }
    if (document.getElementById(id) === null && document.getElementById(target) === null) {
      missing.push({kind: 'broken link', anchor: anchorOf(link), detail: `#${target}`});
    }
  }
  return missing;
}
