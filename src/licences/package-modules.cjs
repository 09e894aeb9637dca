const fs = require("node:fs");
const path = require("node:path");

// Every bundle begins with a few lines of webpack's own.
const webpack = require.resolve("webpack/package.json");

/** Webpack plugin: writes down every file of a package that a bundle is made of, or that is copied beside it. */
class PackageModules {
  constructor(folder, copied) {
    this.folder = folder;
    this.copied = copied;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("PackageModules", (compilation) => {
      compilation.hooks.afterProcessAssets.tap("PackageModules", () => {
        const modules = [...compilation.chunks].flatMap((chunk) => [...compilation.chunkGraph.getChunkModulesIterable(chunk)]);
        // A module that webpack joined of several holds them as its own modules.
        const files = modules
          .flatMap((module) => [module, ...(module.modules ?? [])])
          .flatMap(({ resource }) => resource?.replace(/[?].*$/, "") ?? []);
        const names = [...files, ...this.copied, webpack].map((file) => path.relative(compiler.context, file).split(path.sep).join("/"));
        const list = [...new Set(names)].filter((name) => name.includes("node_modules/")).sort();
        fs.mkdirSync(this.folder, { recursive: true });
        fs.writeFileSync(path.join(this.folder, `${compiler.name.replaceAll(" ", "-")}.json`), `${JSON.stringify(list, null, 1)}\n`);
      });
    });
  }
}

module.exports = { PackageModules };
