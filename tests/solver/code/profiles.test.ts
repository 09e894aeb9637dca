import { codeProfile, foundCode, PROFILES } from "../../../src/solver/code/profiles";

test.each(["irc-2021", "IRC 2021", " Irc2021 "])("%s is the IRC of 2021", (spelling) => {
  expect(codeProfile(spelling)).toMatchObject({ id: "irc-2021", edition: "2021" });
});

test("a code that is not known is a problem that names the nearest and all known ones", () => {
  const found = codeProfile("irc-2012");
  expect(found).toMatchObject({ problem: "unknown-code", details: { code: "irc-2012", hint: '; nearest is "irc-2018"' } });
  expect(found).toHaveProperty("details.known", PROFILES.map(({ id }) => id).join(", "));
});

// What people call a code: of those with editions the newest on file, of those for several kinds of stair none of them by itself.
test.each([
  ["IRC", "irc-2024"], ["IBC", "ibc-2024"], ["OBC", "obc-2024-part9"], ["NBC CA", "nbc-ca-2020"], ["nbc-ca", "nbc-ca-2020"],
  ["CRC", "crc-2025"], ["BC", "bc-2024-part9"], ["ADA", "ada-2010"], ["IE TGD K", "ie-tgd-k"], ["AS 1657", "as-1657-2018"],
])("%s is %s", (name, id) => {
  expect(codeProfile(name)).toMatchObject({ id });
});

test.each([
  ["OSHA", "osha-1910.25 or osha-1926.1052"], ["DIN 18065", "din-18065-dwelling or din-18065-general"],
  ["AU NCC", "au-ncc-2022-class1 or au-ncc-2022-vol1"], ["uk adk", "uk-adk-private or uk-adk-utility or uk-adk-general"],
  ["NZ", "nz-d1as1 or nz-d1as1-secondary or nz-d1as1-minor or nz-d1as1-accessible"],
])("%s is for several kinds of stair: which one has to be said", (name, ids) => {
  expect(codeProfile(name)).toMatchObject({ problem: "unknown-code", details: { code: name, hint: `; say which: ${ids}` } });
});

test("a name that was typed whole is not the newest by default, and one of a family is told from it", () => {
  expect(foundCode("IE TGD K")).toMatchObject({ isNewest: false });
  expect(foundCode("IRC")).toMatchObject({ isNewest: true });
  expect(foundCode("irc-2024")).toMatchObject({ isNewest: false });
  expect(foundCode("OSHA 1910.26")).toMatchObject({ details: { hint: '; nearest is "osha-1910.25"' } });
  expect(foundCode("")).toMatchObject({ problem: "unknown-code", details: { hint: "" } });
});
