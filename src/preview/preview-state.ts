/** A finding as the preview shows it beside the text. */
export interface PreviewNote {
  /** Line in the item's file, from 1. */
  readonly line: number;
  readonly severity: 'info' | 'warning' | 'error';
  readonly rule: string;
  readonly message: string;
  readonly hint: string;
}

export interface PreviewItem {
  readonly id: string;
  readonly title: string;
  readonly state: string;
  readonly errors: number;
  readonly warnings: number;
}

/** The item that is shown. */
export interface PreviewPage {
  readonly id: string;
  /** Stands for everything before the body: while it is the same, the page keeps its styles and its place. */
  readonly head: string;
  readonly body: string;
  /** Why the page is an older one; null when it is what stands in the file. */
  readonly trouble: string | null;
}

/** What is found in the whole binder, and beside the item that is shown. */
export interface PreviewFindings {
  readonly sections: readonly {readonly title: string; readonly items: readonly PreviewItem[]}[];
  readonly shown: string | null;
  readonly notes: readonly PreviewNote[];
  /** What was found in files that are no item, such as the syllabus, each in one line. */
  readonly elsewhere: readonly string[];
  /** In words, such as `2 warnings`. */
  readonly counts: string;
}

export type PreviewMessage =
  | {readonly kind: 'page'; readonly page: PreviewPage}
  | {readonly kind: 'findings'; readonly findings: PreviewFindings};
