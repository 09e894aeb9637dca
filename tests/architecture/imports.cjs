// Who may import whom, in the order from the inside out. Arrows in DEVELOPERS.md point the same way.
const mayImport = {
  solver: [],
  "long-search": ["solver"],
  functions: ["solver"],
  bundle: ["functions"],
  package: ["functions"],
  drawing: ["functions", "solver"],
  readings: ["functions", "solver"],
  "at-stair": ["functions", "readings", "solver"],
  sheets: ["functions", "solver"],
  "workbook-file": ["sheets"],
  workbook: ["sheets"],
  cli: ["sheets", "workbook", "workbook-file", "long-search", "drawing"],
  "ready-files": ["sheets", "workbook", "workbook-file"],
  generate: ["functions", "solver", "drawing", "package"],
  pane: ["functions", "sheets", "drawing"],
  excel: ["pane", "sheets"],
  taskpane: ["pane", "excel"],
  web: ["drawing", "pane", "readings", "ready-files", "sheets", "workbook", "workbook-file"],
  "on-site": [],
  serve: [],
  sideload: ["serve"],
  licences: [],
  hosting: ["serve"],
  calc: ["workbook-file"],
  bootstrap: [],
};

// Folders that may use Node's own modules: the ones that read or write disk or answer requests.
const onNode = ["long-search", "generate", "serve", "sideload", "licences", "hosting", "bootstrap", "workbook/node", "cli",
  "ready-files", "calc"];

// A package may be imported only from the folders named here.
const packages = {
  "decimal.js": ["solver", "functions"],
  "fastest-levenshtein": ["solver"],
  "highs": ["long-search"],
  "@univerjs": ["workbook"],
  "numfmt": ["workbook"],
  "fflate": ["workbook-file"],
  "saxes": ["workbook-file"],
  "papaparse": ["web"],
  "office-addin-debugging": ["sideload"],
  "office-addin-dev-certs": ["sideload"],
  "spdx-satisfies": ["licences"],
  "marked": ["generate"],
};

const comment = "See DEVELOPERS.md, Who may import whom. Move the code inward or pass the value in.";
const everyFolder = Object.keys(mayImport);
const escaped = (text) => text.replaceAll(".", "[.]");

const onlyInward = everyFolder.map((folder) => ({
  name: `${folder}-imports-only-${mayImport[folder].join("-") || "itself"}`,
  comment,
  severity: "error",
  from: { path: `^src/${folder}/` },
  to: { path: "^(src|tests)/", pathNot: [folder, ...mayImport[folder]].map((f) => `^src/${f}/`) },
}));

const packageRules = Object.entries(packages).map(([name, folders]) => ({
  name: `${name}-only-in-${folders.join("-")}`,
  comment,
  severity: "error",
  from: { path: "^src/", pathNot: folders.map((f) => `^src/${f}/`) },
  to: { path: `node_modules/(@types/)?${escaped(name)}(/|$)` },
}));

module.exports = {
  forbidden: [
    ...onlyInward,
    ...packageRules,
    {
      name: "folders-are-listed",
      comment: "A folder under src/ that this file does not list has no rules yet: add it.",
      severity: "error",
      from: { path: "^src/", pathNot: everyFolder.map((f) => `^src/${f}/`) },
      to: {},
    },
    {
      name: "no-other-package",
      comment: "Packages used by src/ are named one by one in tests/architecture/imports.cjs.",
      severity: "error",
      from: { path: "^src/" },
      to: {
        dependencyTypes: ["npm", "npm-dev", "npm-optional", "npm-peer", "npm-bundled", "npm-no-pkg", "npm-unknown"],
        pathNot: Object.keys(packages).map((name) => `node_modules/(@types/)?${escaped(name)}(/|$)`),
      },
    },
    {
      name: "codes-are-records-alone",
      comment:
        "A file of src/solver/code/profiles holds what one code prints: it takes the builders of records and shared conditions, " +
        "and nothing that judges.",
      severity: "error",
      from: { path: "^src/solver/code/profiles/" },
      to: { path: ".", pathNot: ["^src/solver/code/(profiles|record)/", "^src/solver/code/profile[.]ts$"] },
    },
    {
      name: "records-know-no-check",
      comment: "What builds records reads printed text and knows the shape of a profile, and nothing that judges.",
      severity: "error",
      from: { path: "^src/solver/code/record/" },
      to: { path: "^src/solver/code/", pathNot: ["^src/solver/code/record/", "^src/solver/code/profile[.]ts$"] },
    },
    {
      name: "codes-come-from-the-list",
      comment: "Whatever judges treats every code alike: take a profile from src/solver/code/profiles.ts.",
      severity: "error",
      from: { path: "^src/", pathNot: ["^src/solver/code/profiles/", "^src/solver/code/profiles[.]ts$"] },
      to: { path: "^src/solver/code/profiles/" },
    },
    {
      name: "a-file-is-plain-data",
      comment: "src/workbook-file turns bytes into plain data and back: it takes what sheets are made of, and no sheet of a job.",
      severity: "error",
      from: { path: "^src/workbook-file/" },
      to: { path: "^src/sheets/", pathNot: "^src/sheets/(cell-(address|blocks|format|looks)|own-look|sheet-data|tape-rules)[.]ts$" },
    },
    {
      name: "node-modules-only-at-the-edge",
      comment: `Only ${onNode.join(", ")} touch disk or network.`,
      severity: "error",
      from: { path: "^src/", pathNot: onNode.map((f) => `^src/${f}/`) },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "package-json-only-for-the-version",
      comment,
      severity: "error",
      from: { path: "^src/", pathNot: "^src/(functions|generate|pane|cli|calc)/" },
      to: { path: "^package[.]json$" },
    },
    {
      name: "nothing-imports-an-entry-point",
      comment: "main.ts is where a program begins; what others need belongs in a file of its own.",
      severity: "error",
      from: {},
      to: { path: "^src/.*/main[.]ts$" },
    },
    {
      name: "imports-resolve",
      comment: "The file or package named does not exist.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    { name: "no-cycles", comment, severity: "error", from: {}, to: { circular: true } },
    {
      name: "no-orphans",
      // webpack.config.js puts no-hyphenation in the place of the engine's own files.
      comment: "Nothing imports this file and it imports nothing: wire it up or remove it.",
      severity: "error",
      from: { orphan: true, path: "^src/", pathNot: "/main[.]ts$|^src/bootstrap/|^src/workbook/no-hyphenation[.]ts$" },
      to: {},
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: {
      extensions: [".ts", ".js", ".cjs", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["require", "node", "default"],
    },
  },
};
