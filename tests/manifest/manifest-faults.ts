import { spawnSync } from "node:child_process";
import path from "node:path";
import { EXPLAIN_COMMAND } from "../../src/excel/explain-command";
import { pngSize } from "./png-size";

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Element[];
}

interface Read {
  readonly faults: readonly string[];
  readonly root?: Element;
}

interface Expected {
  readonly version: string;
  readonly icons: string;
}

const read = (manifests: readonly string[]): readonly Read[] => {
  const { stdout, stderr, status } = spawnSync(process.execPath, [path.join(__dirname, "read-manifests.mjs")], {
    input: JSON.stringify(manifests),
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Read[];
};

const every = (root: Element, name: string): readonly Element[] => [
  ...(root.name === name ? [root] : []),
  ...root.children.flatMap((child) => every(child, name)),
];

const all = (root: Element): readonly Element[] => [root, ...root.children.flatMap(all)];

const resourceId = (root: Element, parent: string, child?: string): string | undefined => {
  const found = every(root, parent)[0];
  return (child === undefined ? found : found?.children.find(({ name }) => name === child))?.attributes["resid"];
};

const resourceFaults = (root: Element): readonly string[] => {
  const ids = all(root).flatMap(({ attributes }) => attributes["id"] ?? []);
  const used = all(root).flatMap(({ attributes }) => attributes["resid"] ?? []);
  const resources = (every(root, "Resources")[0]?.children ?? []).flatMap(({ children }) => children);
  const held = resources.flatMap(({ attributes }) => attributes["id"] ?? []);
  return [
    ...used.filter((id) => !held.includes(id)).map((id) => `resid ${id} is not among the resources`),
    ...held.filter((id) => !used.includes(id)).map((id) => `resource ${id} is used nowhere`),
    ...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `id ${id} is there twice`),
  ];
};

// A shared runtime is not started unless all three name the same page (Office add-ins, "Configure your add-in to use a shared runtime").
const runtimeFaults = (root: Element): readonly string[] => {
  const runtime = resourceId(root, "Runtime");
  const pages = { Page: resourceId(root, "Page", "SourceLocation"), FunctionFile: resourceId(root, "FunctionFile") };
  return Object.entries(pages)
    .filter(([, id]) => id !== runtime)
    .map(([name, id]) => `${name} is ${id}, the runtime is ${runtime}`);
};

// "A shared runtime only supports the use of one task pane" (the same page, multiple task panes), so one button opens it; and a command
// that runs nothing of ours does nothing.
const actionFaults = (root: Element): readonly string[] => {
  const actions = every(root, "Action");
  const opening = actions.filter(({ attributes }) => attributes["type"] === "ShowTaskpane");
  const called = actions.flatMap(({ children }) => children.filter(({ name }) => name === "FunctionName").map(({ text }) => text.trim()));
  return [
    ...(opening.length === 1 ? [] : [`${opening.length} buttons open a pane`]),
    ...called.filter((name) => name !== EXPLAIN_COMMAND).map((name) => `function ${name} is none of ours`),
  ];
};

const httpsFaults = (root: Element): readonly string[] =>
  all(root)
    .flatMap(({ attributes, text, children }) => [...Object.values(attributes), ...(children.length === 0 ? [text] : [])])
    .filter((value) => /^[a-z]+:\/\//i.test(value) && !value.startsWith("https://"))
    .map((address) => `${address} is not https`);

const iconFaults = (root: Element, folder: string): readonly string[] => {
  const address = (id: string | undefined): string | undefined =>
    all(root).find(({ attributes }) => attributes["id"] === id)?.attributes["DefaultValue"];
  const ribbon = every(root, "Image")
    .filter(({ attributes }) => attributes["size"] !== undefined)
    .map(({ attributes }) => [address(attributes["resid"]), Number(attributes["size"])] as const);
  // IconUrl 32 and HighResolutionIconUrl 64 pixels: Office add-in XML manifest overview, image requirements.
  const setting = (name: string): string | undefined => every(root, name)[0]?.attributes["DefaultValue"];
  const wanted = [...ribbon, [setting("IconUrl"), 32], [setting("HighResolutionIconUrl"), 64]] as const;
  return wanted.flatMap(([url, size]) => {
    const name = url?.replace(/^.*\/assets\//, "") ?? "";
    const found = pngSize(path.join(folder, name));
    if (found === undefined) return [`icon ${url} is no PNG file of ours`];
    return found.width === size && found.height === size ? [] : [`icon ${name} is ${found.width} x ${found.height}, not ${size}`];
  });
};

const versionFaults = (root: Element, version: string): readonly string[] => {
  const found = every(root, "Version")[0]?.text;
  return found === `${version}.0` ? [] : [`version ${found} is not that of package.json, ${version}.0`];
};

/** What is wrong with each manifest: its form by our schema, then what no schema can see. */
export const manifestFaults = (manifests: readonly string[], { version, icons }: Expected): readonly (readonly string[])[] =>
  read(manifests).map(({ faults, root }) =>
    root === undefined
      ? faults
      : [
          ...faults,
          ...resourceFaults(root),
          ...runtimeFaults(root),
          ...actionFaults(root),
          ...httpsFaults(root),
          ...iconFaults(root, icons),
          ...versionFaults(root, version),
        ],
  );
