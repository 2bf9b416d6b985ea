import {visibleText} from '../support/visible-text.ts';
import type {LayoutInput} from './layout-input.ts';

/** A view with every text in it made visible: for pages that show what was written rather than print it. */
export function visibleView<View extends object>(view: View): View {
  // Each value is replaced by one of its own kind.
  return visibleValue(view) as View;
}

/** The same for the names that stand in the title and the running heads of a document. */
export function withVisibleNames(input: LayoutInput): LayoutInput {
  const {settings} = input.binder;
  const [candidate, certificate] = [visibleView(settings.candidate), visibleView(settings.certificate)];
  return {...input, binder: {...input.binder, settings: {...settings, candidate, certificate}}};
}

function visibleValue(value: unknown): unknown {
  if (typeof value === 'string') return visibleText(value);
  if (Array.isArray(value)) return value.map(visibleValue);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, visibleValue(inner)]));
}
