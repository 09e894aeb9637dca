import type { Headers } from "./headers";

export interface Hosted {
  readonly address: string;
  readonly version: string;
  /** Every file with what is sent with it. */
  readonly files: readonly (readonly [name: string, headers: Headers])[];
}

const alike = (files: Hosted["files"]): readonly (readonly [names: readonly string[], headers: Headers])[] => {
  const groups = new Map<string, { readonly names: string[]; readonly headers: Headers }>();
  for (const [name, headers] of files) {
    const key = JSON.stringify(headers);
    const group = groups.get(key) ?? { names: [], headers };
    group.names.push(name);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ names, headers }) => [names, headers] as const);
};

const headerBlocks = (files: Hosted["files"]): readonly string[] =>
  alike(files).map(([names, headers]) =>
    [...names, ...Object.entries(headers).map(([header, value]) => `    ${header}: ${value}`), ""].join("\n"),
  );

/** What whoever owns the host is asked to do, in plain text. */
export const hostingText = ({ address, version, files }: Hosted): string =>
  [
    `Treadsheet ${version} for ${address}/`,
    "",
    "1. PUT THE FILES THERE",
    "",
    `Copy everything in this folder to your host, so that ${address}/functions.json opens in a browser.`,
    "The host only hands out files: no database, no program and no account of ours is needed.",
    "The address must be https with a certificate that browsers trust.",
    `${address}/ itself opens the live sheet, on a telephone too: let the host answer it with index.html. What is typed`,
    "there stays in that browser, and nothing of it comes to the host. install.html says how to put the add-in into Excel.",
    `${address}/at-stair.html is the reading screen for a telephone at the stair; opened once with a signal, it opens without one.`,
    "",
    "Each file must arrive as it is here, byte for byte. worker.js keeps the live sheet and the reading screen for use without a",
    "signal, and keeps none that was changed on its way. It answers for index.html, at-stair.html and what they load by names",
    "with a hash; taskpane.html, functions.js and all other pages always come from your host.",
    "",
    "2. WHAT THE HOST SENDS WITH EACH FILE",
    "",
    "Under each group of files stand the headers. no-cache does not mean never kept: it means asked for anew each time.",
    "Names with a hash may be kept for a year, since another content has another name. Icons must be allowed to be kept,",
    "or Excel does not show them.",
    "",
    ...headerBlocks(files),
    "Access-Control-Allow-Origin is no option: Excel on the web reads functions.json from a page of Microsoft's, and without the",
    "header the browser keeps it from it and no function is registered (github.com/OfficeDev/office-js/issues/3970). Check it with",
    "",
    `    curl -sI -H "Origin: https://excel.officeapps.live.com" "${address}/functions.json"`,
    "",
    "Among the lines that come must be HTTP with 200, Content-Type: application/json and Access-Control-Allow-Origin: *",
    "The same for functions.js. Windows has curl too; in PowerShell write curl.exe.",
    "",
    "The policy of taskpane.html lets Microsoft's own script show one frame from its own address, frame-src: with it the script",
    "asks whether the page around the pane is to be trusted (excel-web-16.00.debug.js of @microsoft/office-js 1.1.110).",
    "Do not send X-Frame-Options, and no frame-ancestors for taskpane.html: Excel on the web shows that page inside a page of",
    "Microsoft's, and Microsoft publishes no list of the addresses it uses (github.com/OfficeDev/office-js/issues/1005).",
    "For every other page you may add: frame-ancestors 'none'",
    "A host that lets you set no headers will do for Excel on the desktop and for the live sheet where it sends the Content-Type:",
    "the policies are in the pages too. For Excel on the web it must send Access-Control-Allow-Origin as well.",
    "",
    "3. WHEN THERE IS A NEW VERSION",
    "",
    `This folder is version ${version}; the number is in manifest.xml. The id in it never changes.`,
    "Excel keeps functions.json and functions.js for up to 24 hours, whatever the headers say, and asks again at once when the",
    "manifest's version rises (github.com/OfficeDev/office-js/issues/2777). So:",
    "",
    "what is new                                      what to do",
    "functions, their arguments, or their answers     raise the version, put the folder up, hand out manifest.xml again",
    "the button, a menu, names, icons, the address    raise the version, put the folder up, hand out manifest.xml again",
    "the pane, the live sheet and the other pages     put the folder up; they are asked for anew each time",
    "",
    "To raise it, raise version in package.json and Version in manifest.xml alike (0.2.0 there, 0.2.0.0 here), and build again.",
    "It never goes down. Put the folder up before you hand out the manifest, and take the files of the version before away a",
    "day later, when no Excel asks for them. How it is handed out again: update-and-remove.html. Changed numbers: changelog.html.",
    "",
    "The manifest stays XML. The JSON form of it is not read by Office that is bought once, on a Mac, or before version 2304",
    "(learn.microsoft.com/office/dev/add-ins/develop/unified-manifest-overview, as dated 10 October 2025); those get an XML made of",
    "it only for an add-in of Microsoft's store, not for a shop's own: in the admin centre neither.",
    "",
  ].join("\n");
