import { backupName, backupText, fileName, workbooksIn } from "../../src/web/workbook-files";
import { oneSheet } from "./shelf";

const mine = oneSheet({ A1: { value: "7 5/8" } });

test("a file goes by the workbook's name and the day, without what no file name may have", () => {
  const late = new Date(2026, 10, 9, 23, 59);
  expect(fileName("Kitchen stair", late)).toBe("Kitchen stair 2026-11-09.json");
  expect(fileName('a/b\\c:d*e?f"g<h>i|j\n..', late)).toBe("a b c d e f g h i j 2026-11-09.json");
  expect(fileName("  ", late)).toBe("Workbook 2026-11-09.json");
  expect(fileName("x".repeat(300), late)).toBe(`${"x".repeat(60)} 2026-11-09.json`);
  expect(backupName(late)).toBe("Treadsheet workbooks 2026-11-09.json");
});

test.each(["Kitchen stair 2026-11-09.json", "Kitchen stair 2026-11-09 (1).json", "Kitchen stair.JSON"])(
  "a workbook opened from %s goes by the name it had", (file) => {
    expect(workbooksIn(JSON.stringify(mine), file)).toEqual([{ name: "Kitchen stair", data: mine }]);
  },
);

test("a backup opens as every workbook in it", () => {
  const all = [{ name: "Kitchen stair", data: mine }, { name: "Barn", data: oneSheet({}) }];
  expect(workbooksIn(backupText(all), "anything.json")).toEqual(all);
});

test.each([
  ["not a file of ours", /^it begins as a file that was saved here and is cut short, or was changed/],
  ["[]", "workbook: must be an object, got []"],
  ["null", "workbook: must be an object, got null"],
  ['{"version":1,"workbooks":[]}', "backup, workbooks: must be a list of one workbook or more"],
  ['{"version":2,"workbooks":[]}', "backup, version: this program reads version 1, got 2"],
  ['{"version":1,"workbooks":[7]}', "workbook 1, name: must be text, got undefined"],
  [
    '{"version":1,"workbooks":[{"name":"Barn","data":{"version":1,"sheets":[{"name":"Job","cells":{"a1":{}}}]}}]}',
    'workbook 1 "Barn": sheet "Job", cells: an address is written A1 to XFD1048576, in capitals, got "a1"',
  ],
])("%s is refused by what is wrong with it", (text, says) => {
  expect(() => workbooksIn(text, "file.json")).toThrow(says);
});
