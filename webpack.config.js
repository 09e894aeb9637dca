const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");

const dist = path.resolve(__dirname, "dist");

// devtool false: the pages forbid eval, which webpack's development source maps use.
const config = (name, rest) => ({
  name,
  mode: "production",
  devtool: false,
  context: __dirname,
  resolve: { extensions: [".ts", ".js"] },
  module: {
    parser: { json: { namedExports: true } },
    rules: [
      {
        test: /[.]ts$/,
        loader: "swc-loader",
        options: { jsc: { parser: { syntax: "typescript" }, target: "es2022" } },
      },
    ],
  },
  performance: { hints: false },
  stats: { preset: "errors-warnings", warningsCount: false, errorsCount: false },
  ...rest,
});

const minified = {
  minimize: true,
  minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false })],
  splitChunks: false,
  runtimeChunk: false,
};

module.exports = [
  config("functions", {
    // No "web": the spreadsheet may run this file where there is no page, so nothing of a page may be assumed.
    target: "es2022",
    entry: { functions: "./src/bundle/main.ts" },
    output: { path: dist, filename: "[name].js", iife: true, chunkFormat: false, chunkLoading: false, wasmLoading: false },
    optimization: minified,
  }),
  config("pages", {
    target: ["web", "es2022"],
    entry: { taskpane: "./src/taskpane/main.ts", web: "./src/web/main.ts", "stand-in": "./src/web/stand-in/main.ts" },
    output: { path: dist, filename: "[name].js", iife: true },
    optimization: minified,
    plugins: [
      new CopyPlugin({
        patterns: [
          { from: "src/taskpane/taskpane.html" },
          { from: "src/taskpane/icons", to: "assets" },
          { from: "src/pane/*.css", to: "[name][ext]" },
          { from: "src/web/web.css" },
          { from: "src/web/index.html" },
          { from: "manifest.xml" },
        ],
      }),
    ],
  }),
  config("tools", {
    target: "node20",
    entry: { serve: "./src/serve/main.ts", generate: "./src/generate/main.ts", sideload: "./src/sideload/main.ts" },
    output: { path: path.join(dist, "tools"), filename: "[name].js" },
    // The built tools find dist/ and the project by their own place on disk.
    node: { __dirname: false, __filename: false },
    externals: {
      "office-addin-dev-certs": "commonjs office-addin-dev-certs",
      "office-addin-debugging": "commonjs office-addin-debugging",
    },
    optimization: { minimize: false },
  }),
];
