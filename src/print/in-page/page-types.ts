/**
 * The part of a browser's page that our checks look at. The project is compiled without the DOM's own types: their
 * globals, such as `name`, `status` and `event`, would hide slips of the pen in every other file.
 */
export interface PageElement {
  readonly id: string;
  readonly tagName: string;
  textContent: string;
  readonly parentElement: PageElement | null;
  readonly children: Iterable<PageElement>;
  readonly style: PageStyle;
  readonly scrollWidth: number;
  readonly scrollHeight: number;
  readonly offsetLeft: number;
  readonly offsetTop: number;
  readonly offsetWidth: number;
  readonly offsetHeight: number;
  readonly clientWidth: number;
  readonly clientHeight: number;
  append(child: PageElement): void;
  remove(): void;
  contains(other: PageElement): boolean;
  closest(selector: string): PageElement | null;
  getAttribute(name: string): string | null;
  setAttribute(name: string, value: string): void;
  removeAttribute(name: string): void;
  querySelectorAll(selector: string): Iterable<PageElement>;
  getBoundingClientRect(): PageBox;
}

export interface PageBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly width: number;
}

export interface PageStyle {
  width: string;
  readonly display: string;
  readonly fontSize: string;
  readonly overflowX: string;
  readonly overflowY: string;
  readonly page: string;
  readonly position: string;
  readonly lineHeight: string;
  readonly maxWidth: string;
  readonly paddingLeft: string;
  readonly paddingRight: string;
  readonly paddingBottom: string;
  readonly cssText: string;
  getPropertyValue(name: string): string;
  setProperty(name: string, value: string): void;
}

/** A style sheet, or a rule of one: `@page` has a selector and a style, a box in its margins a name, `@media` conditions and rules of its own. */
export interface PageRule {
  readonly constructor: {readonly name: string};
  readonly href?: string | null;
  readonly selectorText?: string;
  readonly name?: string;
  readonly style?: PageStyle;
  readonly media?: {readonly mediaText: string};
  readonly cssRules?: Iterable<PageRule>;
}

export interface PageFont {
  readonly family: string;
  readonly weight: string;
  readonly style: string;
  readonly status: string;
  load(): Promise<unknown>;
}

export interface PageDocument {
  readonly documentElement: PageElement;
  readonly head: PageElement;
  readonly body: PageElement;
  readonly fonts: Iterable<PageFont>;
  readonly styleSheets: Iterable<PageRule>;
  createElement(name: string): PageElement;
  getElementById(id: string): PageElement | null;
  querySelectorAll(selector: string): Iterable<PageElement>;
}
