import { greeting } from "../../src/serve/greeting";

const address = "http://127.0.0.1:3000/";

test("the greeting names the address, the pages that exist, the times and how to stop", () => {
  const says = greeting(address, (file) => !["reference.html", "codes.html", "install.html"].includes(file), {
    install: 0,
    build: 4321,
    start: 160,
  });
  expect(says.split("\n")).toEqual([
    "Treadsheet is open at http://127.0.0.1:3000/",
    "  http://127.0.0.1:3000/               a live sheet with one stair from tape to price",
    "  http://127.0.0.1:3000/at-stair.html  the reading screen, for a telephone at the stair",
    "  http://127.0.0.1:3000/taskpane.html  the pane, as Excel shows it",
    "Took: install 0.0 s, build 4.3 s, start 0.2 s.",
    "Stop with Ctrl+C.",
  ]);
});

test("a time that was not written down is said to be missing", () => {
  expect(greeting(address, () => true, { install: undefined, build: 1000, start: 100 })).toContain("install not measured, build 1.0 s");
});
