// Tools run on one's own machine. The live sheet is served there too: the engine it is made of is not made small for a network.
const LEFT_OUT: readonly RegExp[] = [/^tools\//, /^index[.]html$/, /^web[.](js|css)$/, /^engine[.]css$/, /^stand-in[.]js$/];

/** The files of dist that go to a host. */
export const hostedNames = (names: readonly string[]): readonly string[] =>
  names.filter((name) => !LEFT_OUT.some((left) => left.test(name)));
