import {type Item, itemsById, type Section} from '../../model/binder.ts';
import {statesOf} from '../../model/item-state.ts';
import {boxQuestions, selfCheckOf} from '../../model/self-check.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';

export interface CheckedByEye {
  readonly id: string;
  readonly title: string;
  readonly questions: readonly string[];
}

export interface SelfCheckPart {
  /** Null when all items are in one part. */
  readonly heading: string | null;
  readonly sections: readonly {readonly title: string; readonly items: readonly CheckedByEye[]}[];
}

export interface SelfCheckView {
  readonly candidate: string;
  readonly certificate: string;
  readonly date: string;
  /** What is still to be posted first, what has passed after it. */
  readonly parts: readonly SelfCheckPart[];
  readonly box: readonly string[];
}

export function selfCheckView(input: LayoutInput): SelfCheckView {
  const {binder, composed} = input;
  const {candidate, certificate, date} = binder.settings;
  const states = statesOf(binder);
  const items = itemsById(binder);
  const part = (heading: string, hasPassed: boolean): readonly SelfCheckPart[] => {
    const belongs = (id: string) => composed.has(id) && (states.get(id) === 'passed') === hasPassed;
    const sections = binder.syllabus.sections.flatMap((section) => sectionPart(section, items, belongs));
    return sections.length > 0 ? [{heading, sections}] : [];
  };
  const parts = [...part('To be posted', false), ...part('Passed already', true)];
  return {
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    date,
    parts: parts.length > 1 ? parts : parts.map(({sections}) => ({heading: null, sections})),
    box: boxQuestions,
  };
}

function sectionPart(
  {title, requirements}: Section,
  items: ReadonlyMap<string, Item>,
  belongs: (id: string) => boolean,
): SelfCheckPart['sections'] {
  const checked = requirements
    .filter(({id}) => belongs(id))
    .flatMap(({id}) => {
      const item = items.get(id);
      const questions = item ? selfCheckOf(item).map(setTypography) : [];
      return item ? [{id, title: setTypography(item.title), questions}] : [];
    });
  return checked.length > 0 ? [{title: setTypography(title), items: checked}] : [];
}
