/** One static cut of a font, as a woff2 file of an npm package; unicodeRange is the part of Unicode the file covers. */
export interface FontFile {
  readonly package: string;
  /** Path within the package. */
  readonly path: string;
  readonly family: string;
  readonly weight: number;
  readonly style: 'normal' | 'italic';
  /** A CSS unicode-range, or null when the file is the only one of its cut. */
  readonly unicodeRange: string | null;
}

// The ranges by which the packages' own style sheets split each cut into files.
const latin =
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD';
const latinExtended =
  'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C4,U+2113,U+2C60-2C7F,U+A720-A7FF';

/**
 * Every font file the layouts use. Static cuts only: a variable font becomes Type 3 in the PDF. DejaVu Sans stands
 * last in every stack: it has the thirds, eighths, arrows and ticks that the Latin files lack.
 */
export const fontFiles: readonly FontFile[] = [
  ...cuts(
    'source-serif-4',
    'Source Serif 4',
    [400, 'normal'],
    [400, 'italic'],
    [600, 'normal'],
    [600, 'italic'],
  ),
  ...cuts('source-sans-3', 'Source Sans 3', [400, 'normal'], [400, 'italic'], [600, 'normal']),
  ...cuts('ibm-plex-mono', 'IBM Plex Mono', [400, 'normal']),
  {
    package: '@fontsource/dejavu-sans',
    path: 'files/dejavu-sans-latin-400-normal.woff2',
    family: 'DejaVu Sans',
    weight: 400,
    style: 'normal',
    unicodeRange: null,
  },
];

function cuts(name: string, family: string, ...list: (readonly [number, 'normal' | 'italic'])[]): FontFile[] {
  return list.flatMap(([weight, style]) =>
    [
      {subset: 'latin', unicodeRange: latin},
      {subset: 'latin-ext', unicodeRange: latinExtended},
    ].map(({subset, unicodeRange}) => ({
      package: `@fontsource/${name}`,
      path: `files/${name}-${subset}-${weight}-${style}.woff2`,
      family,
      weight,
      style,
      unicodeRange,
    })),
  );
}
