const fs = require("node:fs");
const path = require("node:path");

/** Typed-in tables are held by tests of their own, figure by figure. */
const DATA = [/^src\/solver\/code\/profiles\//, /^src\/solver\/wood\/species/, /^src\/functions\/.*\/[a-z]+\.ts$/];

const isCode = (line) =>
  /[a-z0-9]/i.test(line) && !/^\s*(\*|\/\/|\/\*|import|export (type|interface)|interface|type|readonly|\} from)/.test(line);

const filesBelow = (folder) =>
  fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const file = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesBelow(file) : file.endsWith(".ts") ? [file] : [];
  });

/** Numbers from 0 to 1 out of a seed, the same everywhere: the minimal standard generator (Park and Miller 1988). */
const numbersFrom = (seed) => {
  let state = (seed % 2147483646) + 1;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
};

/** So many lines of the solver and of what reads arguments, as ranges Stryker takes; declarations and tables of figures are left out. */
module.exports = (root, below, wanted, seed) => {
  const lines = ["src/solver", "src/functions"]
    .flatMap((folder) => filesBelow(path.posix.join(root.replaceAll("\\", "/"), folder)))
    .map((file) => path.relative(root, file).replaceAll("\\", "/"))
    .filter((file) => file.startsWith(`${below}/`) && !DATA.some((data) => data.test(file)))
    .sort()
    .flatMap((file) =>
      fs
        .readFileSync(path.join(root, file), "utf8")
        .split("\n")
        .flatMap((line, place) => (isCode(line) ? [`${file}:${place + 1}-${place + 1}`] : [])),
    );
  const next = numbersFrom(seed);
  for (let last = lines.length - 1; last > 0; last -= 1) {
    const place = Math.floor(next() * (last + 1));
    [lines[last], lines[place]] = [lines[place], lines[last]];
  }
  return lines.slice(0, wanted);
};
