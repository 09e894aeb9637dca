import { coverage, limitsOn, type Topic, TOPIC_NAMES } from "../solver/code/coverage";
import type { CodeProfile, SourceStatus } from "../solver/code/profile";
import { STATE_AMENDMENTS, type StateAmendments } from "../solver/code/state-amendments";
import type { Block } from "./page";

const FOUNDED: readonly (readonly [SourceStatus, string])[] = [
  ["checked against the code's text", "in its text"],
  ["checked against another edition", "in another edition"],
  ["not yet checked", "not yet checked"],
];

/** How many limits of a code answer a topic and how each was read, that it has none, or that nothing is on file. */
export const topicCell = (topic: Topic, profile: CodeProfile): string => {
  const answer = coverage(topic, profile);
  if (answer !== "limit") return answer;
  const rows = limitsOn(topic, profile);
  return FOUNDED.flatMap(([status, words]) => {
    const count = rows.filter((row) => row.status === status).length;
    return count === 0 ? [] : [`${count} ${words}`];
  }).join(", ");
};

/** Which topics of a stair each code answers. */
export const coverageBlocks = (profiles: readonly CodeProfile[]): readonly Block[] => [
  { kind: "heading", level: 2, text: "What is on file, topic by topic", name: "coverage" },
  {
    kind: "text",
    text:
      "How many limits answer a topic, and how they were read: in the text of that edition, in another edition or one that is " +
      "not named, or not yet checked: from memory, or given by a text that is not the code. " +
      "None in this code: it was read that the code has no such limit. Not on file: the code may have one; look it up.",
  },
  {
    kind: "table",
    headings: ["code", ...TOPIC_NAMES],
    rows: profiles
      .filter(({ isCode }) => isCode !== false)
      .map((profile) => [profile.id, ...TOPIC_NAMES.map((topic) => topicCell(topic, profile))]),
  },
];

const stateBlocks = ({ state, code, source, amendments, remark }: StateAmendments): Block[] => [
  { kind: "heading", level: 3, text: `${state}, which adopts ${code}`, name: `amendments ${state.toLowerCase()}` },
  { kind: "text", text: `Source: ${source}.${remark === undefined ? "" : ` Beside it: ${remark}.`}` },
  {
    kind: "table",
    headings: ["item", "limit", "authority", "clause"],
    rows: amendments.map(({ item, limit, clause }) => [item, `${limit} in`, state, clause]),
  },
];

/** Tables of amended limits that go into CHECK as they stand. */
export const amendmentBlocks = (): readonly Block[] => [
  { kind: "heading", level: 2, text: "Amendments of states, ready for CHECK", name: "amendments" },
  {
    kind: "text",
    text:
      "Copy a table with its headings into the sheet and give it to CHECK as amendments; rows of your county go under it. " +
      "California has a code of its own, crc-2025. " +
      ("Texas, Alaska, Tennessee, Arkansas, Colorado and Georgia had the figures of the model code in the clauses compared; other " +
        "states were not read."),
  },
  ...STATE_AMENDMENTS.flatMap(stateBlocks),
];
