import type { CodeProfile, Limit } from "../../../src/solver/code/profile";

/** A limit invented for a test: unconditional and binding, but for what the test says of it. */
export const limitOf = (row: Pick<Limit, "item" | "unit" | "rule"> & Partial<Limit>): Limit => ({
  clause: "1",
  text: "",
  measured: "",
  applies: [],
  exceptions: [],
  advisory: false,
  status: "checked against the code's text",
  sources: [],
  remark: "",
  ...row,
});

/** A code invented for a test, with the kinds of limit other codes have; being no code, it has no topics. */
export const codeOf = (...limits: readonly Limit[]): CodeProfile => ({
  id: "invented",
  title: "Invented",
  edition: "1",
  region: "nowhere",
  isCode: false,
  limits,
  outOfScope: [],
});
