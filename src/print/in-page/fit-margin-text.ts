import type {Overflow} from './find-overflow.ts';
import type {PageDocument, PageElement, PageRule, PageStyle} from './page-types.ts';

declare const document: PageDocument;
declare function getComputedStyle(element: PageElement): PageStyle;

/**
 * Runs in the page. Boxes in the margins of a page that have a width and a height of their own, such as a tab, belong to
 * no element, and what does not fit one runs over whatever stands beside it. Their text is measured in an element of the
 * same style and set smaller, a twentieth at a time, down to the part of its size that `--smallest` names in the style
 * sheet. Gives what is still too large then.
 *
 * One long function, since it is sent to the browser as its own text and can call nothing outside itself.
 */
export function fitMarginText(anchors: readonly string[]): Overflow[] {
  const millimetre = 96 / 25.4;
  const slack = 1; // Chromium rounds boxes to whole pixels.
  const pageRules = [...document.styleSheets]
    // A sheet with an address was refused, and asking for its rules throws.
    .filter(({href}) => !href)
    .flatMap(({cssRules}) => [...(cssRules ?? [])])
    .filter((rule) => rule.constructor.name === 'CSSPageRule');
  const boxesOf = (rule: PageRule): readonly PageRule[] => [...(rule.cssRules ?? [])];
  /** The style of the same box on every page, which comes before its own. */
  const commonStyle = (name: string | undefined): string =>
    pageRules
      .filter(({selectorText}) => selectorText === '')
      .flatMap(boxesOf)
      .filter((box) => box.name === name)
      .map(({style}) => style?.cssText ?? '')
      .join('');
  const sheetOn = (page: string): string | null =>
    anchors.find((anchor) => {
      const sheet = document.getElementById(anchor);
      return sheet !== null && getComputedStyle(sheet).page === page;
    }) ?? null;

  const found: Overflow[] = [];
  const probe = document.createElement('div');
  document.body.append(probe);
  for (const rule of pageRules) {
    for (const {name, style} of boxesOf(rule)) {
      if (!style?.getPropertyValue('width') || !style.getPropertyValue('height')) continue;
      const css = `${commonStyle(name)};${style.cssText};position:absolute;visibility:hidden;margin:0`;
      probe.setAttribute('style', css);
      probe.style.setProperty('content', 'normal');
      // The strings of `content`, with the escapes that `cssString` writes.
      const strings = style.getPropertyValue('content').match(/"(?:[^"\\]|\\[\s\S])*"/g) ?? [];
      const text = strings
        .map((each) => each.slice(1, -1))
        .join('')
        .replace(/\\([0-9a-f]{1,6})\s?/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
        .replace(/\\([\s\S])/g, '$1');
      probe.textContent = text;
      const {fontSize, lineHeight} = getComputedStyle(probe);
      const smallest = Number(getComputedStyle(probe).getPropertyValue('--smallest')) || 1;
      const excess = () => [probe.scrollWidth - probe.clientWidth, probe.scrollHeight - probe.clientHeight];
      for (let percent = 95; percent >= Math.round(smallest * 100); percent -= 5) {
        if (Math.max(...excess()) <= slack) break;
        for (const [property, value] of [
          ['font-size', fontSize],
          ['line-height', lineHeight],
        ] as const) {
          const smaller = `${(Number.parseFloat(value) * percent) / 100}px`;
          probe.style.setProperty(property, smaller);
          style.setProperty(property, smaller);
        }
      }
      const [across = 0, down = 0] = excess();
      if (Math.max(across, down) <= slack) continue;
      const anchor = sheetOn((rule.selectorText ?? '').replace(/:.*$/, ''));
      // Left and right pages of a sheet have a rule each.
      if (found.some((each) => each.anchor === anchor && each.text === text.slice(0, 60))) continue;
      found.push({
        anchor,
        within: anchor,
        text: text.slice(0, 60),
        direction: across > down ? 'wide' : 'tall',
        millimetres: Math.round(Math.max(across, down) / millimetre),
      });
    }
  }
  probe.remove();
  return found;
}
