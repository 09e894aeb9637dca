/** The files of dist that go to a host: all but the tools, which run on one's own machine. */
export const hostedNames = (names: readonly string[]): readonly string[] => names.filter((name) => !/^tools\//i.test(name));
