import type {ErrorCode} from 'yaml';

interface Description {
  readonly message: string;
  readonly hint: string;
}

/** What the YAML library found, in words for someone who writes fields and values. `detail` is the library's own message. */
export function describeYamlError(code: ErrorCode, detail: string): Description {
  if (code === 'MISSING_CHAR' && /quote$/.test(detail)) {
    return {message: 'a quotation mark is opened and not closed', hint: 'Close it, or leave both marks out.'};
  }
  return descriptions[code] ?? unclear;
}

const unclear: Description = {
  message: 'this cannot be read as a field and its value',
  hint: 'Write the name of the field, a colon, a space and the value.',
};

const descriptions: Partial<Record<ErrorCode, Description>> = {
  BAD_DIRECTIVE: {
    message: 'a line begins with `%`',
    hint: 'Take the line out, or put the text between quotes.',
  },
  BAD_DQ_ESCAPE: {
    message: 'a backslash between double quotes begins a character code that does not exist',
    hint: 'Use single quotes, or write two backslashes.',
  },
  BAD_INDENT: {
    message: 'this line is not indented like its neighbours, or a bracket above it is not closed',
    hint: 'Line the field up with the fields it belongs to, and close every `[` and `{`.',
  },
  BAD_SCALAR_START: {
    message: 'a value cannot begin with this character',
    hint: 'Put the whole value between quotes, such as `"@key, p. 57"`.',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    message: 'two colons stand on one line, so it is unclear where the value begins',
    hint: 'Put the value between quotes, or write the second field on a line of its own.',
  },
  BLOCK_IN_FLOW: {
    message: 'a field on lines of its own stands between brackets',
    hint: 'Write it as `name: value` with commas between, or leave the brackets out.',
  },
  KEY_OVER_1024_CHARS: {
    message: 'the name of a field is longer than 1024 characters',
    hint: 'Check that no colon is missing.',
  },
  MISSING_CHAR: {
    message: 'a colon, comma, quotation mark or bracket is missing here',
    hint: 'Write `name: value` with a space after the colon, and close what is opened.',
  },
  MULTILINE_IMPLICIT_KEY: {
    message: 'the name of a field runs over more than one line',
    hint: 'Check that the line before ends its value, and that no colon is missing.',
  },
  MULTIPLE_DOCS: {
    message: 'a line of three hyphens begins a second set of fields',
    hint: 'Keep one set of fields; take the line out.',
  },
  TAB_AS_INDENT: {message: 'a line is indented with a tab', hint: 'Indent with spaces.'},
  UNEXPECTED_TOKEN: {
    message: 'this does not belong here',
    hint: 'Begin a list on the line below its field; close every bracket; put text with special characters between quotes.',
  },
};
