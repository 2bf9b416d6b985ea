import type {Binder, Requirement} from './binder.ts';

/** The requirements that belong to `id`, such as the questions beside a swatch, in the order of the syllabus. */
export function tiedQuestions({syllabus}: Binder, id: string): readonly Requirement[] {
  return syllabus.sections
    .flatMap(({requirements}) => requirements)
    .filter(({tiedTo}) => tiedTo.includes(id));
}
