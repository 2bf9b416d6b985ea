import type {Citeproc, CiteprocBuilder, CiteprocToken} from 'citeproc';

/**
 * Runs `make`, which builds an engine of `CSL`, the citation processor, and lets the macros of a sort key be built once each.
 *
 * The processor builds a macro of the layout once and runs it wherever it is called; in a sort key it writes the macro
 * out at every call, and so every macro that this one calls. APA's keys become 138,000 steps, which take four fifths of
 * the time that loading the style takes. Here they are run from one place too, and what is printed is the same.
 *
 * A macro called within `<substitute>` is built differently from one that is not, so it is another one.
 */
export function sharingSortMacros<T>(CSL: Citeproc, make: () => T): T {
  const writeOut = CSL.expandMacro;
  const built = new Map<string, readonly CiteprocToken[]>();
  CSL.expandMacro = function (call, target) {
    const {root, extension, substitute_level: depth} = this.build;
    if (extension === '') return writeOut.call(this, call, target);
    const key = [root, call.postponed_macro, call.strings.sort_direction, depth.value()].join(' ');
    let steps = built.get(key);
    if (steps === undefined) {
      steps = buildApart(this, (apart) => writeOut.call(this, call, apart));
      built.set(key, steps);
    }
    target.push(runningAll(CSL, steps));
  };
  try {
    return make();
  } finally {
    CSL.expandMacro = writeOut;
  }
}

/** What `build` writes, as a list of its own instead of into the sort keys. */
function buildApart(
  builder: CiteprocBuilder,
  build: (apart: CiteprocToken[]) => void,
): readonly CiteprocToken[] {
  const steps: CiteprocToken[] = [];
  const keys = builder[builder.build.root === 'citation' ? 'citation_sort' : 'bibliography_sort'];
  const whole = keys.tokens;
  keys.tokens = steps;
  build(steps);
  keys.tokens = whole;
  builder.configureTokenList(steps);
  return steps;
}

/** One step that takes all of `steps`, each of which names the next. */
function runningAll(CSL: Citeproc, steps: readonly CiteprocToken[]): CiteprocToken {
  const step = new CSL.Token('text', CSL.SINGLETON);
  step.execs.push((state, item, cite) => {
    for (let next = steps[0]; next !== undefined; ) next = steps[CSL.tokenExec.call(state, next, item, cite)];
  });
  return step;
}
