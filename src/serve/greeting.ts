export interface Page {
  readonly file: string;
  readonly says: string;
}

export interface Times {
  readonly install: number | undefined;
  readonly build: number | undefined;
  readonly start: number;
}

const pages: readonly Page[] = [
  { file: "", says: "a live sheet with one stair from tape to price" },
  { file: "at-stair.html", says: "the reading screen, for a telephone at the stair" },
  { file: "taskpane.html", says: "the pane, as Excel shows it" },
  { file: "reference.html", says: "every function, with examples" },
  { file: "install.html", says: "how to put it into Excel" },
  { file: "codes.html", says: "every limit of every code, with its source" },
];

const seconds = (milliseconds: number | undefined): string =>
  milliseconds === undefined ? "not measured" : `${(milliseconds / 1000).toFixed(1)} s`;

/** What `npm start` says: the address, the pages there, how to stop, and how long each part took (milliseconds in). */
export const greeting = (address: string, exists: (file: string) => boolean, times: Times): string => {
  const open = pages.filter(({ file }) => exists(file === "" ? "index.html" : file));
  const width = Math.max(...open.map(({ file }) => address.length + file.length));
  return [
    `Treadsheet is open at ${address}`,
    ...open.map(({ file, says }) => `  ${(address + file).padEnd(width)}  ${says}`),
    `Took: install ${seconds(times.install)}, build ${seconds(times.build)}, start ${seconds(times.start)}.`,
    "Stop with Ctrl+C.",
  ].join("\n");
};
