const fs = require("node:fs");
const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const { BannerPlugin, NormalModuleReplacementPlugin } = require("webpack");
const { PackageModules } = require("./src/licences/package-modules.cjs");

const dist = path.resolve(__dirname, "dist");

const rulesFor = (target) => [{
  test: /[.]ts$/, loader: "swc-loader", options: { jsc: { parser: { syntax: "typescript" }, target } },
}];
const rules = rulesFor("es2022");

// devtool false: the pages forbid eval, which webpack's development source maps use.
const config = (name, { plugins = [], copied = [], ...rest }) => ({
  name,
  plugins: [...plugins, new PackageModules(path.join(dist, "tools", "modules"), copied)],
  mode: "production",
  devtool: false,
  context: __dirname,
  resolve: { extensions: [".ts", ".js"] },
  module: { parser: { json: { namedExports: true } }, rules },
  performance: { hints: false },
  stats: { preset: "errors-warnings", warningsCount: false, errorsCount: false },
  ...rest,
});

// The sheet engine formats numbers with numfmt: it gets ours, and ours alone gets the package.
const numfmt = require.resolve("numfmt");
const ownFormat = ["number-format", "fraction-format", "full-date"].map((name) => path.resolve(__dirname, `src/workbook/${name}.ts`));
const withOwnFormat = { numfmt$: ownFormat[0] };
const engineModule = {
  rules: [
    ...rules,
    { include: ownFormat, resolve: { alias: { numfmt$: numfmt } } },
    // What cells show, and no formula, goes through this package of the engine.
    {
      include: /[\\/]@univerjs[\\/]sheets-numfmt[\\/]/,
      resolve: { alias: { "@univerjs/core$": path.resolve(__dirname, "src/workbook/core-as-shown.ts") } },
    },
  ],
};

// Each language is a file beside the renderer, named for it and a hash.
const withoutHyphenation = new NormalModuleReplacementPlugin(/^[.][/][\w-]+-[\w-]{8}[.]js$/, (request) => {
  if (/[\\/]engine-render[\\/]/.test(request.context)) request.request = path.resolve(__dirname, "src/workbook/no-hyphenation.ts");
});

const [engineStyles, ...moreStyles] = [
  "preset-sheets-core", "sheets-data-validation-ui", "sheets-filter-ui", "find-replace", "sheets-sort-ui",
].map((name) => require.resolve(`@univerjs/${name}/lib/index.css`));
const withMoreStyles = (first) => Buffer.concat([first, ...moreStyles.map((file) => fs.readFileSync(file))]);

const highs = require.resolve("highs");

const minifiedWith = (minimizerOptions) => ({
  minimize: true,
  minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false, minimizerOptions })],
  splitChunks: false,
  runtimeChunk: false,
});
const minified = minifiedWith({});
// The engine finds its commands, services and functions by the names of their classes.
const names = { keep_classnames: true, keep_fnames: true };
const minifiedWithNames = minifiedWith({ compress: names, mangle: names });

const onNode = {
  target: "node20",
  output: { path: path.join(dist, "tools"), filename: "[name].js" },
  // The built tools find dist/ and the project by their own place on disk.
  node: { __dirname: false, __filename: false },
  externals: {
    "office-addin-dev-certs": "commonjs office-addin-dev-certs",
    "office-addin-debugging": "commonjs office-addin-debugging",
    "spdx-satisfies": "commonjs spdx-satisfies",
  },
  optimization: { minimize: false },
};

module.exports = [
  config("functions", {
    // No "web": the spreadsheet may run this file where there is no page, so nothing of a page may be assumed. An older edition than the
    // rest: desktop Excel runs it in the browser of its system, and a Mac of 2020 knows no later one.
    target: "es2020",
    entry: { functions: "./src/bundle/main.ts" },
    output: { path: dist, filename: "[name].js", iife: true, chunkFormat: false, chunkLoading: false, wasmLoading: false },
    module: { parser: { json: { namedExports: true } }, rules: rulesFor("es2020") },
    optimization: minifiedWith({ ecma: 2020 }),
  }),
  // Excel's pane and the telephone's page are of the edition of the functions.
  config("pages", {
    target: ["web", "es2020"],
    entry: { taskpane: "./src/taskpane/main.ts", "stand-in": "./src/web/stand-in/main.ts", "at-stair": "./src/at-stair/main.ts" },
    output: { path: dist, filename: "[name].js", iife: true },
    module: { parser: { json: { namedExports: true } }, rules: rulesFor("es2020") },
    optimization: minifiedWith({ ecma: 2020 }),
    copied: [engineStyles, ...moreStyles],
    plugins: [
      new CopyPlugin({
        patterns: [
          { from: "src/taskpane/taskpane.html" },
          { from: "src/taskpane/icons", to: "assets" },
          { from: "src/pane/*.css", to: "[name][ext]" },
          { from: "src/generate/document.css" },
          { from: "src/web/web.css" },
          { from: "src/web/print.css" },
          { from: "src/web/index.html" },
          { from: "src/at-stair/*.{css,html}", to: "[name][ext]" },
          { from: engineStyles, to: "engine.css", transform: withMoreStyles },
          { from: "manifest.xml" },
        ],
      }),
    ],
  }),
  config("sheet page", {
    target: ["web", "es2022"],
    entry: { web: "./src/web/main.ts" },
    output: { path: dist, filename: "[name].js", iife: true, asyncChunks: false },
    resolve: { extensions: [".ts", ".js"], alias: withOwnFormat },
    module: { ...engineModule, parser: { json: { namedExports: true } } },
    plugins: [withoutHyphenation],
    optimization: minifiedWithNames,
  }),
  // For hosts alone: they lie with the tools, which nothing on loopback hands out.
  config("on site", {
    target: "es2022",
    entry: { "on-site": "./src/web/on-site/main.ts", worker: "./src/on-site/main.ts" },
    output: { path: path.join(dist, "tools", "on-site"), filename: "[name].js", iife: true, chunkFormat: false, chunkLoading: false },
    optimization: minified,
  }),
  config("tools", {
    ...onNode,
    entry: {
      serve: "./src/serve/main.ts", generate: "./src/generate/main.ts", licences: "./src/licences/main.ts", calc: "./src/calc/main.ts",
      answers: "./src/calc/child/main.ts",
    },
  }),
  config("more tools", {
    ...onNode,
    // The engine that is built beside them is found when they run.
    module: { parser: { json: { namedExports: true }, javascript: { createRequire: false } }, rules },
    entry: { sideload: "./src/sideload/main.ts", hosting: "./src/hosting/main.ts", workbooks: "./src/ready-files/main.ts" },
  }),
  config("long search", {
    ...onNode,
    entry: { "long-search": "./src/long-search/main.ts" },
    externals: {},
    // The package's other form finds its program by the address that its file had here.
    resolve: { extensions: [".ts", ".js"], alias: { highs$: highs } },
    plugins: [new CopyPlugin({ patterns: [{ from: path.join(path.dirname(highs), "highs.wasm") }] })],
  }),
  config("library", {
    target: "node20",
    entry: { functions: "./src/package/main.ts" },
    output: {
      path: path.join(dist, "tools", "package"), filename: "[name].cjs", library: { type: "commonjs2", export: "exported" },
    },
    // Whoever reads where an error was thrown reads lines.
    optimization: { minimize: false },
  }),
  config("engine", {
    target: "node20",
    entry: { engine: "./src/workbook/node/main.ts" },
    output: { path: path.join(dist, "tools"), filename: "[name].cjs", library: { type: "commonjs2" }, asyncChunks: false },
    resolve: { extensions: [".ts", ".js"], alias: withOwnFormat },
    module: engineModule,
    plugins: [withoutHyphenation],
    optimization: { minimize: false, splitChunks: false },
  }),
  config("command", {
    target: "node20",
    entry: { treadsheet: "./src/cli/main.ts" },
    output: { path: path.join(dist, "tools"), filename: "[name].cjs", asyncChunks: false },
    node: { __dirname: false, __filename: false },
    resolve: { extensions: [".ts", ".js"], alias: withOwnFormat },
    module: { ...engineModule, parser: { json: { namedExports: true } } },
    plugins: [withoutHyphenation, new BannerPlugin({ banner: "#!/usr/bin/env node", raw: true })],
    optimization: { minimize: false, splitChunks: false },
  }),
];
