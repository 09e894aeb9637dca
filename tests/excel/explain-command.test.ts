import { readFileSync } from "node:fs";
import path from "node:path";
import { EXPLAIN_COMMAND, onExplain } from "../../src/excel/explain-command";

type Action = (event: { readonly completed: () => void }) => Promise<void>;

/** "Associates the ID or name of an action with a function" (Actions.associate); "Shows the task pane" (Addin.showAsTaskpane). */
const office = (show: () => Promise<void>) => {
  const actions = new Map<string, Action>();
  Object.assign(globalThis, {
    Office: { actions: { associate: (id: string, action: Action) => void actions.set(id, action) }, addin: { showAsTaskpane: show } },
  });
  return actions;
};

afterEach(() => void Reflect.deleteProperty(globalThis, "Office"));

const chosen = async (show: () => Promise<void>): Promise<readonly string[]> => {
  const did: string[] = [];
  const actions = office(async () => {
    did.push("pane shown");
    await show();
  });
  onExplain(() => void did.push("explained"));
  await actions.get(EXPLAIN_COMMAND)?.({ completed: () => void did.push("completed") });
  return did;
};

test("the command explains, opens the pane, and says that it is done", async () => {
  expect(await chosen(async () => undefined)).toEqual(["explained", "pane shown", "completed"]);
});

// "Calls to showAsTaskpane are ignored" for add-ins of the marketplace (Show or hide the task pane); some may refuse.
test("it is done where Excel opens no pane, too", async () => {
  const did = await chosen(async () => Promise.reject(new Error("not here")));
  expect(did).toEqual(["explained", "pane shown", "completed"]);
});

test("a page without actions is left as it is", () => {
  Object.assign(globalThis, { Office: {} });
  expect(() => onExplain(() => undefined)).not.toThrow();
});

test("it has the name that the manifest calls", () => {
  const manifest = readFileSync(path.resolve(__dirname, "../../manifest.xml"), "utf8");
  expect(manifest).toContain(`<FunctionName>${EXPLAIN_COMMAND}</FunctionName>`);
});
