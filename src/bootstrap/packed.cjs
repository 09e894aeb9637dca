const fs = require("node:fs");
const path = require("node:path");
const { root } = require("./record.cjs");

// npm puts these in, whatever `files` says.
const always = ["package.json", "README.md", "LICENSE"];

const filesIn = (name) => {
  const at = path.join(root, name);
  return fs.statSync(at).isDirectory() ? fs.readdirSync(at).flatMap((inner) => filesIn(`${name}/${inner}`)) : [name];
};

// A package that is linked stands in the lock a second time, under its own folder.
const isInstalled = ([name, { dev, link }]) => name !== "" && dev !== true && link !== true;

/** What `npm pack` packs: its files with their bytes, and how many other packages npm installs with it. */
const packed = () => {
  const { files } = JSON.parse(fs.readFileSync(path.join(root, "package.json"), "utf8"));
  const { packages } = JSON.parse(fs.readFileSync(path.join(root, "package-lock.json"), "utf8"));
  const names = [...always, ...files].flatMap(filesIn).sort();
  return {
    files: names.map((name) => ({ name, bytes: fs.statSync(path.join(root, name)).size })),
    others: Object.entries(packages).filter(isInstalled).length,
  };
};

const megabyte = 1e6;

const packedText = ({ files, others }) => {
  const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  return (
    `The package that npm pack makes holds ${files.length} files, ${(bytes / megabyte).toFixed(1)} MB, and installs ` +
    `${others === 0 ? "no" : others} other package${others > 1 ? "s" : ""}.`
  );
};

module.exports = { packed, packedText };
