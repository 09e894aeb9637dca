import { codeProfile, PROFILES } from "../../../src/solver/code/profiles";

test.each(["irc-2021", "IRC 2021", " Irc2021 "])("%s is the IRC of 2021", (spelling) => {
  expect(codeProfile(spelling)).toMatchObject({ id: "irc-2021", edition: "2021" });
});

test("a code that is not known is a problem that names the nearest and all known ones", () => {
  const found = codeProfile("irc-2012");
  expect(found).toMatchObject({ problem: "unknown-code", details: { code: "irc-2012", hint: '; nearest is "irc-2018"' } });
  expect(found).toHaveProperty("details.known", PROFILES.map(({ id }) => id).join(", "));
});
