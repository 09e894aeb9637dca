import { readFileSync } from "node:fs";
import path from "node:path";
import { version } from "../../package.json";
import { manifestFaults } from "./manifest-faults";

const project = path.resolve(__dirname, "../..");
const manifest = readFileSync(path.join(project, "manifest.xml"), "utf8");
const expected = { version, icons: path.join(project, "src/taskpane/icons") };

const swapped = (text: string, first: string, second: string): string =>
  text.replace(first, "\u0000").replace(second, first).replace("\u0000", second);

const runtimes = /<Runtimes>.*?<\/Runtimes>/s.exec(manifest)?.[0] ?? "";

const planted: readonly (readonly [fault: string, text: string, says: RegExp])[] = [
  ["is cut off in the middle", manifest.slice(0, manifest.length / 2), /not well-formed/],
  [
    "has Version after ProviderName",
    swapped(manifest, `<Version>${version}.0</Version>`, "<ProviderName>Treadsheet contributors</ProviderName>"),
    /ProviderName.*[Ee]xpected.*Version|not expected/s,
  ],
  [
    "has the runtime after the functions",
    manifest.replace(runtimes, "").replace("</AllFormFactors>", `</AllFormFactors>${runtimes}`),
    /AllFormFactors.*not expected/,
  ],
  ["asks for a permission that does not exist", manifest.replace("ReadWriteDocument", "WriteEverything"), /WriteEverything/],
  [
    "names a resource that is not there",
    manifest.replace('<bt:String id="Group.Label" DefaultValue="Stair shop"/>', ""),
    /resid Group\.Label is not among/,
  ],
  [
    "keeps a resource that nothing uses",
    manifest.replace("</bt:ShortStrings>", '<bt:String id="Left.Over" DefaultValue="x"/></bt:ShortStrings>'),
    /Left\.Over is used nowhere/,
  ],
  [
    "loads its functions over http",
    manifest.replace('https://localhost:3000/functions.js"', 'http://localhost:3000/functions.js"'),
    /http:\/\/localhost:3000\/functions\.js is not https/,
  ],
  ["has an app domain on http", manifest.replace("<AppDomain>https:", "<AppDomain>http:"), /http:\/\/localhost:3000 is not https/],
  ["has another version than the package", manifest.replace(`${version}.0`, "9.9.9.0"), /version 9\.9\.9\.0 is not that of package\.json/],
  [
    "runs its functions in another page",
    manifest.replace('<FunctionFile resid="Taskpane.Url"/>', '<FunctionFile resid="Reference.Url"/>'),
    /FunctionFile is Reference\.Url/,
  ],
  [
    "puts two commands into the menu of a cell",
    manifest.replace(/(<OfficeMenu id="ContextMenuCell">\s*)(<Control .*?<\/Control>)/s, (_, menu: string, control: string) =>
      `${menu}${control}${control.replace("Treadsheet.Explain", "Treadsheet.Explain2")}`),
    /Control.*not expected/,
  ],
  ["puts a command into a menu that is none", manifest.replace('"ContextMenuCell"', '"ContextMenuChart"'), /ContextMenuChart/],
  ["calls a function that is not ours", manifest.replace(">explainCell<", ">explainCells<"), /function explainCells is none of ours/],
  [
    "opens a second pane with a shared runtime",
    manifest.replace(
      /<Action xsi:type="ExecuteFunction">.*?<\/Action>/s,
      '<Action xsi:type="ShowTaskpane"><SourceLocation resid="Taskpane.Url"/></Action>',
    ),
    /2 buttons open a pane/,
  ],
  ["has an Id that is no UUID", manifest.replace(/<Id>.*?<\/Id>/, "<Id>treadsheet</Id>"), /treadsheet.*pattern|pattern.*treadsheet/s],
  ["has a label too long for the ribbon", manifest.replace('"Stair shop"', `"${"a".repeat(126)}"`), /maxLength|length/],
  ["gives one id twice", manifest.replace('<bt:Image id="Icon.20"', '<bt:Image id="Icon.16"'), /id Icon\.16 is there twice/],
  [
    "shows a small icon where a large one belongs",
    manifest.replace("assets/icon-80.png", "assets/icon-16.png"),
    /icon-16\.png is 16 x 16, not 80/,
  ],
  ["shows an icon that is not there", manifest.replace("assets/icon-48.png", "assets/icon-49.png"), /icon-49\.png is no PNG file/],
];

const [own, ...found] = manifestFaults([manifest, ...planted.map(([, text]) => text)], expected);

test("the manifest has no fault", () => {
  expect(own).toEqual([]);
});

test("the menu of a cell has Explain this cell", () => {
  const menu = /<OfficeMenu id="ContextMenuCell">.*?<\/OfficeMenu>/s.exec(manifest)?.[0] ?? "";
  expect(menu).toContain('<Label resid="Explain.Label"/>');
  expect(/<bt:String id="Explain.Label" DefaultValue="([^"]*)"/.exec(manifest)?.[1]).toBe("Explain this cell");
});

test.each(planted.map(([fault, text, says], index) => ({ fault, text, says, faults: found[index] ?? [] })))(
  "a manifest that $fault is caught",
  ({ text, says, faults }) => {
    expect(text).not.toBe(manifest);
    expect(faults.join("\n")).toMatch(says);
  },
);
