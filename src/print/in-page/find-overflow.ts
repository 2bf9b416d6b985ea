import type {PageBox, PageDocument, PageElement, PageRule, PageStyle} from './page-types.ts';

declare const document: PageDocument;
declare function getComputedStyle(element: PageElement): PageStyle;
declare function matchMedia(condition: string): {readonly matches: boolean};

/**
 * A box that does not fit; `anchor` is the sheet it stands on, `within` the id of the innermost element around it that has
 * one, `text` how it begins, `millimetres` by how much it is too large.
 */
export interface Overflow {
  readonly anchor: string | null;
  readonly within: string | null;
  readonly text: string;
  readonly direction: 'wide' | 'tall';
  readonly millimetres: number;
}

/**
 * Runs in the page, with print styles on. Finds what is wider than its page, and what is cut off by a box that clips.
 *
 * One line that cannot break makes Chromium shrink the whole document without a word, unless its sheet clips; then the
 * end of the line is missing. Either way the page is wrong, so each sheet is laid out at the width that its `@page`
 * rules leave, and asked whether its content is wider.
 *
 * One long function, since it is sent to the browser as its own text and can call nothing outside itself.
 */
export function findOverflow(anchors: readonly string[]): Overflow[] {
  const millimetre = 96 / 25.4;
  const slack = 1; // Chromium rounds boxes and page margins to whole pixels.
  const sheets = new Set(anchors);

  const pageRules: PageRule[] = [];
  const collect = (rules: Iterable<PageRule>): void => {
    for (const rule of rules) {
      if (rule.media && rule.media.mediaText !== '' && !matchMedia(rule.media.mediaText).matches) continue;
      if (rule.constructor.name === 'CSSPageRule') pageRules.push(rule);
      else if (rule.cssRules) collect(rule.cssRules);
    }
  };
  // A sheet with an address was refused, and asking for its rules throws.
  collect([...document.styleSheets].filter(({href}) => !href));

  const probe = document.createElement('div');
  probe.setAttribute('style', 'position:absolute;visibility:hidden');
  document.body.append(probe);
  const pixels = (length: string): number => {
    probe.style.width = '0';
    probe.style.width = length;
    return probe.getBoundingClientRect().width;
  };

  // ISO 216 and ANSI sizes that CSS names, in millimetres (CSS Paged Media Level 3, section 7.1).
  const papers: Record<string, readonly [number, number]> = {
    a5: [148, 210],
    a4: [210, 297],
    a3: [297, 420],
    letter: [215.9, 279.4],
    legal: [215.9, 355.6],
  };
  const paperWidth = (size: string): number => {
    const words = size.toLowerCase().split(/\s+/);
    const [width, height] = papers[words.find((word) => word in papers) ?? 'letter'] ?? [0, 0];
    const lengths = words.filter((word) => /^[\d.]/.test(word));
    if (lengths[0] !== undefined) return pixels(lengths[0]);
    return (words.includes('landscape') ? height : width) * millimetre;
  };
  /** The width between the margins of the pages called `name` on one side, by the cascade of `@page`. */
  const contentWidth = (name: string, side: string): number => {
    let [size, left, right] = ['', '0', '0'];
    for (const selector of ['', side, name, `${name}${side}`]) {
      for (const rule of pageRules) {
        if (!(rule.selectorText ?? '').split(',').some((each) => each.trim() === selector)) continue;
        size = rule.style?.getPropertyValue('size') || size;
        left = rule.style?.getPropertyValue('margin-left') || left;
        right = rule.style?.getPropertyValue('margin-right') || right;
      }
    }
    return paperWidth(size) - pixels(left) - pixels(right);
  };

  const styles = new Map<PageElement, PageStyle>();
  const styleOf = (element: PageElement): PageStyle => {
    const style = styles.get(element) ?? getComputedStyle(element);
    styles.set(element, style);
    return style;
  };
  const pageName = (element: PageElement | null): string => {
    if (element === null) return '';
    const {page} = styleOf(element);
    return page === 'auto' ? pageName(element.parentElement) : page;
  };
  const anchorOf = (element: PageElement | null): string | null =>
    element === null || sheets.has(element.id) ? (element?.id ?? null) : anchorOf(element.parentElement);

  const idAround = (element: PageElement | null): string | null =>
    element === null || element.id !== '' ? (element?.id ?? null) : idAround(element.parentElement);

  const found: Overflow[] = [];
  const tell = (element: PageElement, direction: Overflow['direction'], excess: number): void => {
    const text = element.textContent.replace(/\s+/g, ' ').trim();
    found.push({
      anchor: anchorOf(element),
      within: idAround(element),
      text: (text || element.getAttribute('alt') || `<${element.tagName.toLowerCase()}>`).slice(0, 60),
      direction,
      millimetres: Math.round(excess / millimetre),
    });
  };
  /** The innermost box that is itself too wide or sticks out, to say which words are at fault. */
  const culprit = (box: PageElement): PageElement => {
    const edge = box.getBoundingClientRect().right + slack;
    for (const child of box.children) {
      const isTooWide = child.scrollWidth > child.clientWidth + slack && styleOf(child).display !== 'inline';
      if (isTooWide || child.getBoundingClientRect().right > edge) return culprit(child);
    }
    return box;
  };

  const everything = [...document.body.querySelectorAll('*')];
  const roots = everything.filter((element) => sheets.has(element.id));
  if (roots.length === 0) roots.push(document.body);
  const isRoot = new Set(roots);
  const rootOf = (element: PageElement | null): PageElement | null =>
    element === null || isRoot.has(element) ? element : rootOf(element.parentElement);
  const widths = new Map<PageElement, number>();
  for (const root of roots) {
    const name = pageName(root);
    widths.set(root, Math.min(contentWidth(name, ':left'), contentWidth(name, ':right')));
  }
  probe.remove();

  const isOneSize = (element: PageElement): boolean =>
    element.getAttribute('class')?.split(' ').includes('shrinks-to-fit') ?? false;
  /** The innermost box that reaches over the lower edge; a box of one size is named by its own beginning. */
  const lowest = (box: PageElement): PageElement => {
    if (isOneSize(box)) return box;
    const edge = box.getBoundingClientRect().bottom + slack;
    for (const child of box.children)
      if (styleOf(child).display !== 'inline' && child.getBoundingClientRect().bottom > edge)
        return lowest(child);
    return box;
  };
  /** In a box of one size what runs into the padding is not cut off, but is too close to the edge that is cut. */
  const checkPadding = (box: PageElement): void => {
    const {paddingRight, paddingBottom} = styleOf(box);
    const inFlow = [...box.children].filter((child) => styleOf(child).position !== 'absolute');
    const ends = inFlow.map((child) => child.offsetLeft + child.offsetWidth);
    const bottoms = inFlow.map((child) => child.offsetTop + child.offsetHeight);
    const across = Math.max(0, ...ends) - (box.clientWidth - Number.parseFloat(paddingRight));
    const down = Math.max(0, ...bottoms) - (box.clientHeight - Number.parseFloat(paddingBottom));
    if (Math.max(across, down) > slack) tell(box, across > down ? 'wide' : 'tall', Math.max(across, down));
  };
  const checkBox = (element: PageElement): void => {
    const style = styleOf(element);
    if (style.display === 'inline' || style.display === 'none') return;
    const clipsAcross = style.overflowX !== 'visible';
    const excessAcross = element.scrollWidth - element.clientWidth;
    const isCutAcross = (clipsAcross || isRoot.has(element)) && excessAcross > slack;
    if (isCutAcross) tell(culprit(element), 'wide', excessAcross);
    // Letters may reach over the edge of a line without being cut: a third of their size is no lost line.
    const excessDown = element.scrollHeight - element.clientHeight;
    const clipsDown = style.overflowY !== 'visible' && element.clientHeight > 0;
    const isCutDown = clipsDown && excessDown > Number.parseFloat(style.fontSize) / 3;
    if (isCutDown) tell(lowest(element), 'tall', excessDown);
    else if (!isCutAcross && isOneSize(element)) checkPadding(element);
  };
  /** In a drawing nothing wraps: its text must end before the drawing does. */
  const checkDrawnText = (element: PageElement): void => {
    const drawing = element.closest('svg');
    if (drawing === null) return;
    const [inner, outer]: PageBox[] = [element.getBoundingClientRect(), drawing.getBoundingClientRect()];
    if (inner === undefined || outer === undefined) return;
    const excess = Math.max(inner.right - outer.right, outer.left - inner.left);
    if (excess > slack) tell(element, 'wide', excess);
  };

  const page = document.documentElement;
  const before = page.getAttribute('style');
  for (const width of new Set(widths.values())) {
    page.style.width = `${width}px`;
    for (const element of new Set([...roots, ...everything])) {
      const root = rootOf(element);
      if (root === null || widths.get(root) !== width) continue;
      if (element.tagName === 'text') checkDrawnText(element);
      else checkBox(element);
    }
  }
  if (before === null) page.removeAttribute('style');
  else page.setAttribute('style', before);
  return found;
}
