/** The part of a browser's page that the preview's script uses; the project is compiled without the DOM's own types. */
export interface ShellElement {
  className: string;
  textContent: string;
  innerHTML: string;
  onclick: (() => void) | null;
  scrollTop: number;
  readonly style: {top: string};
  append(...children: readonly ShellElement[]): void;
  remove(): void;
  replaceChildren(...children: readonly ShellElement[]): void;
  getAttribute(name: string): string | null;
  setAttribute(name: string, value: string): void;
  getBoundingClientRect(): {readonly top: number; readonly height: number};
}

export interface ShellDocument {
  readonly body: ShellElement | null;
  readonly documentElement: ShellElement;
  getElementById(id: string): ShellElement;
  createElement(tag: string): ShellElement;
  querySelectorAll(selector: string): Iterable<ShellElement>;
}

export interface ShellFrame extends ShellElement {
  src: string;
  onload: (() => void) | null;
  readonly contentDocument: ShellDocument | null;
}

export interface ShellEvents {
  onmessage: ((event: {readonly data: string}) => void) | null;
}
