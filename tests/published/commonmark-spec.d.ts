declare module 'commonmark-spec' {
  const spec: {
    readonly text: string;
    readonly tests: readonly {
      readonly markdown: string;
      readonly html: string;
      readonly section: string;
      readonly number: number;
    }[];
  };
  export default spec;
}
