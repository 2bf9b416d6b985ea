/** The part of citation-js 0.8 that we use; the packages bring no types. */
declare module '@citation-js/core' {
  export const plugins: {
    readonly input: {
      /** One step of parsing with the parser named; none that we name reaches the network. */
      data(input: unknown, type: '@biblatex/entry+object' | '@ris/record'): unknown;
    };
    readonly config: {
      get(plugin: '@bibtex'): {readonly constants: Readonly<Record<string, unknown>>};
    };
  };
}

declare module '@citation-js/plugin-bibtex' {}

declare module '@citation-js/plugin-ris' {}
