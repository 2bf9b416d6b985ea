import Handlebars from 'handlebars';
import type {SafeHtml} from '../model/composed.ts';
import type {BinderSettings} from '../model/schema/binder-settings.ts';
import {invariant} from '../support/invariant.ts';
import {longDate} from '../support/long-date.ts';
import {UsageError} from '../support/usage-error.ts';
import {sealView} from './sealed-view.ts';

/** Turns a view and one of the layout files into HTML. */
export interface LayoutEngine {
  /** `name` is the file's path in the layouts folder, such as `sheets/swatch.hbs`. Throws `UsageError` when the file cannot be used. */
  render(name: string, view: object): SafeHtml;
}

const engines = new WeakMap<ReadonlyMap<string, string>, Map<BinderSettings['language'], LayoutEngine>>();

/** The engine for these templates, which are read once for all documents of a run. */
export function layoutEngine(
  templates: ReadonlyMap<string, string>,
  language: BinderSettings['language'],
): LayoutEngine {
  const known = engines.get(templates) ?? new Map<BinderSettings['language'], LayoutEngine>();
  engines.set(templates, known);
  const engine = known.get(language) ?? createLayoutEngine(templates, language);
  known.set(language, engine);
  return engine;
}

/**
 * Handlebars with everything closed that is not needed: only our helpers and the built-in ones are known, only own
 * properties are seen, and a name that the view does not have stops the build instead of printing nothing.
 */
export function createLayoutEngine(
  templates: ReadonlyMap<string, string>,
  language: BinderSettings['language'],
): LayoutEngine {
  const handlebars = Handlebars.create();
  handlebars.unregisterHelper('log'); // It prints.
  handlebars.registerHelper('longDate', (date: string) => longDate(date, language));
  for (const [name, text] of templates) {
    const partial = /^partials\/(.+)\.hbs$/.exec(name)?.[1];
    if (partial !== undefined) handlebars.registerPartial(partial, text);
  }
  const compiled = new Map<string, Handlebars.TemplateDelegate>();

  function compile(name: string): Handlebars.TemplateDelegate {
    const known = compiled.get(name);
    if (known !== undefined) return known;
    const text = templates.get(name);
    invariant(text !== undefined, `there is no layout file ${name}`);
    const template = handlebars.compile(text, {
      strict: true,
      knownHelpersOnly: true,
      knownHelpers: {longDate: true},
      preventIndent: true,
    });
    compiled.set(name, template);
    return template;
  }

  return {
    render(name, view) {
      try {
        const html = compile(name)(sealView(view), {
          allowProtoPropertiesByDefault: false,
          allowProtoMethodsByDefault: false,
        });
        // The template escapes every value but its listed SafeHtml slots, so what comes out is safe as well.
        return html as SafeHtml;
      } catch (error) {
        throw new UsageError(`the layout file \`${name}\` cannot be used: ${firstLine(error)}`, {
          cause: error,
        });
      }
    },
  };
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';
}
