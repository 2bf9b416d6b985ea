import type {Code, Construct, Effects, Extension, State} from 'micromark-util-types';

/**
 * Citations as a part of Markdown's own grammar, so that code, escapes and links come out right and each knows its place:
 * `[see @key, p. 57; @other]` between brackets, and `@key` or `@key [p. 57]` in the sentence.
 *
 * Brackets are a citation when an `@` with a key stands in them that is no part of a word, and when no `(` follows, which
 * would make them a link. In the sentence a key begins with a letter, so that `@ 4 in` and `@10 cm` stay as they are.
 */
export const citationSyntax: Extension = {
  text: {
    91: {name: 'citationBracketed', tokenize: tokenizeBracketed},
    64: {name: 'citationInText', tokenize: tokenizeInText, previous: (code) => !isWordCharacter(code)},
  },
};

/** Token types of ours; `citationText` is a run of characters on one line. */
declare module 'micromark-util-types' {
  interface TokenTypeMap {
    citationBracketed: 'citationBracketed';
    citationInText: 'citationInText';
    citationMarker: 'citationMarker';
    citationText: 'citationText';
  }
}

/** No citation is longer; a limit keeps a text full of open brackets fast. */
const longestCluster = 2000;

const locator: Construct = {tokenize: tokenizeLocator, partial: true};
const keyPunctuation: Construct = {tokenize: tokenizeKeyPunctuation, partial: true};

function tokenizeBracketed(effects: Effects, ok: State, nok: State): State {
  return (code) => {
    effects.enter('citationBracketed');
    effects.enter('citationMarker');
    effects.consume(code);
    effects.exit('citationMarker');
    return bracketContent(effects, {mustCite: true}, close, nok);
  };

  function close(code: Code): State | undefined {
    effects.enter('citationMarker');
    effects.consume(code);
    effects.exit('citationMarker');
    effects.exit('citationBracketed');
    return (next) => (next === 40 ? nok(next) : ok(next));
  }
}

function tokenizeInText(effects: Effects, ok: State, nok: State): State {
  return (code) => {
    effects.enter('citationInText');
    effects.enter('citationText');
    effects.consume(code);
    return (first) => (isLetter(first) ? key(first) : nok(first));
  };

  function key(code: Code): State | undefined {
    if (isWordCharacter(code)) {
      effects.consume(code);
      return key;
    }
    if (code !== null && code > 0 && ':.#$%&+?<>~/-'.includes(String.fromCharCode(code))) {
      return effects.check(keyPunctuation, consumePunctuation, afterKey)(code);
    }
    return afterKey(code);
  }

  function consumePunctuation(code: Code): State {
    effects.consume(code);
    return key;
  }

  function afterKey(code: Code): State | undefined {
    return effects.check(locator, withLocator, end)(code);
  }

  /** The locator was seen whole: take everything up to its closing bracket. */
  function withLocator(code: Code): State | undefined {
    if (code === 93) {
      effects.consume(code);
      return end;
    }
    if (isLineEnding(code)) {
      effects.exit('citationText');
      return lineEnding(effects, (next) => {
        effects.enter('citationText');
        return withLocator(next);
      })(code);
    }
    effects.consume(code);
    return withLocator;
  }

  function end(code: Code): State | undefined {
    effects.exit('citationText');
    effects.exit('citationInText');
    return ok(code);
  }
}

function tokenizeKeyPunctuation(effects: Effects, ok: State, nok: State): State {
  return (code) => {
    effects.enter('citationText');
    effects.consume(code);
    effects.exit('citationText');
    return (next) => (isWordCharacter(next) ? ok(next) : nok(next));
  };
}

/** ` [p. 57]` after a key: a space or none, brackets without a citation of their own, and no link. */
function tokenizeLocator(effects: Effects, ok: State, nok: State): State {
  return (code) => {
    if (code !== 32) return open(code);
    effects.enter('citationText');
    effects.consume(code);
    effects.exit('citationText');
    return open;
  };

  function open(code: Code): State | undefined {
    if (code !== 91) return nok(code);
    effects.enter('citationMarker');
    effects.consume(code);
    effects.exit('citationMarker');
    return bracketContent(effects, {mustCite: false}, close, nok);
  }

  function close(code: Code): State {
    effects.enter('citationMarker');
    effects.consume(code);
    effects.exit('citationMarker');
    return (next) => (next === 40 || next === 91 ? nok(next) : ok(next));
  }
}

/** Everything up to `]`. With `mustCite` it has to hold a citation, without it must not. */
function bracketContent(effects: Effects, {mustCite}: {mustCite: boolean}, close: State, nok: State): State {
  let length = 0;
  let cites = false;
  let before: Code = null;
  let atSign = false;
  return open;

  function open(code: Code): State | undefined {
    if (code === 93 || code === 91 || code === null || isLineEnding(code)) return nok(code);
    effects.enter('citationText');
    return inside(code);
  }

  function inside(code: Code): State | undefined {
    length++;
    if (atSign && isWordCharacter(code)) cites = true;
    atSign = code === 64 && !isWordCharacter(before);
    before = code;
    // A nested bracket, a code span and raw HTML belong to Markdown.
    if (code === null || code === 91 || code === 96 || length > longestCluster) return nok(code);
    if (code === 93) {
      effects.exit('citationText');
      return cites === mustCite ? close(code) : nok(code);
    }
    if (isLineEnding(code)) {
      effects.exit('citationText');
      return lineEnding(effects, resume)(code);
    }
    effects.consume(code);
    return code === 92 ? escaped : inside;
  }

  function escaped(code: Code): State | undefined {
    if (code !== 91 && code !== 92 && code !== 93 && code !== 64) return inside(code);
    effects.consume(code);
    return inside;
  }

  function resume(code: Code): State | undefined {
    if (code === 93) return cites === mustCite ? close(code) : nok(code);
    effects.enter('citationText');
    return inside(code);
  }
}

/** A line ending and the white space that the next line begins with. */
function lineEnding(effects: Effects, next: State): State {
  return (code) => {
    effects.enter('lineEnding');
    effects.consume(code);
    effects.exit('lineEnding');
    return (after) => {
      if (!isSpace(after)) return next(after);
      effects.enter('linePrefix');
      return prefix(after);
    };
  };

  function prefix(code: Code): State | undefined {
    if (isSpace(code)) {
      effects.consume(code);
      return prefix;
    }
    effects.exit('linePrefix');
    return next(code);
  }
}

/** Micromark's codes below zero are line endings and tabs. */
function isLineEnding(code: Code): boolean {
  return code !== null && code < -2;
}

function isSpace(code: Code): boolean {
  return code === -2 || code === -1 || code === 32;
}

function isWordCharacter(code: Code): boolean {
  return code !== null && code > 0 && /[\p{L}\p{M}\p{N}_]/u.test(String.fromCharCode(code));
}

function isLetter(code: Code): boolean {
  return code !== null && code > 0 && /[\p{L}_]/u.test(String.fromCharCode(code));
}
