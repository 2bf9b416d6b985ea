import type {Limits} from './schema/syllabus.ts';

/** A requirement's own limits over those of its kind, each by itself: a changed `words.to` leaves `words.from` standing, and what is looked over by eye adds up. */
export function resolveLimits(ofKind: Limits, own: Limits): Limits {
  return {
    ...ofKind,
    ...own,
    ...merged('references', ofKind, own),
    ...merged('words', ofKind, own),
    ...merged('size', ofKind, own),
    ...merged('photos', ofKind, own),
    ...merged('gauge', ofKind, own),
    ...merged('evenness', ofKind, own),
    ...together(ofKind, own),
  };
}

/** What is looked over for the kind is looked over for each of its requirements too. */
function together(ofKind: Limits, own: Limits) {
  const questions = [...(ofKind['self-check'] ?? []), ...(own['self-check'] ?? [])];
  return questions.length > 0 ? {'self-check': [...new Set(questions)]} : {};
}

/** The limits that have parts. */
type Grouped = 'references' | 'words' | 'size' | 'photos' | 'gauge' | 'evenness';

function merged<Name extends Grouped>(name: Name, ofKind: Limits, own: Limits) {
  return ofKind[name] && own[name] ? {[name]: {...ofKind[name], ...own[name]}} : {};
}
