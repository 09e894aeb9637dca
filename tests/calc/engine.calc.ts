import { execFileSync } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { python } from "./office";

const components = path.resolve(__dirname, "../../src/calc/component/pythonpath");

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-engine-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** What asking says twice, with a program of ours in the place of Node, and how often that was started. */
const asked = (program: string): { readonly said: readonly string[]; readonly starts: number } => {
  const [node, starts] = [path.join(folder, "node"), path.join(folder, "starts")];
  writeFileSync(node, `#!/bin/sh\necho started >> "${starts}"\n${program}\n`);
  chmodSync(node, 0o755);
  const code = [
    `import sys; sys.dont_write_bytecode = True; sys.path.insert(0, ${JSON.stringify(components)})`,
    "import treadsheet_engine as engine",
    `engine._node = lambda: ${JSON.stringify(node)}`,
    "one = engine.Engine()",
    "for _ in range(2):",
    "    try:",
    "        print(one.ask({'call': 'RISERS', 'cells': [108]}, 1))",
    "    except engine.EngineError as error:",
    "        print(error)",
    "one.stop()",
  ].join("\n");
  const said = execFileSync(python(), ["-c", code], { encoding: "utf8" }).trimEnd().split("\n");
  return { said, starts: readFileSync(starts, "utf8").trimEnd().split("\n").length };
};

test("one process answers call after call", () => {
  expect(asked("while read line; do echo '{\"value\": 14}'; done")).toEqual({ said: ["{'value': 14}", "{'value': 14}"], starts: 1 });
});

test("one that has died is started anew", () => {
  expect(asked("read line; echo '{\"value\": 14}'")).toEqual({ said: ["{'value': 14}", "{'value': 14}"], starts: 2 });
});

test("one that does not answer in time is given up, and the next call starts another", () => {
  const late = "The answer took longer than 1 seconds and was given up. Ask for less at once.";
  expect(asked("while read line; do :; done")).toEqual({ said: [late, late], starts: 2 });
});

test("one that ends without an answer is started once more, and what it complained of is said", () => {
  const ended = "Node ended without an answer. too old";
  expect(asked("echo too old >&2; exit 1")).toEqual({ said: [ended, ended], starts: 4 });
});
