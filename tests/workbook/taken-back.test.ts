/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { startedJob } from "../../src/sheets/job/started-job";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

/** For the engine to work a whole job out on a busy machine, in milliseconds. */
const ENGINE_TIME = 120_000;

afterAll(closeWorkbooks);

const ASKED = { job: "Hall stair", unit: "in", code: "irc-2021", totalRise: 106.125, run: 10, width: 36.75, openEnd: "right" } as const;

test("a job that waits for what is to be typed has nothing standing beside its requests once it is loaded", async () => {
  const book = await openedWorkbook({ Empty: {} });
  const { sheets } = startedJob(ASKED, [], false);
  book.load({ version: 1, sheets });
  await book.settled();
  const requests = sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula }]) => {
      const block = formula === undefined ? [] : book.spill(name, address);
      return String(block[0]?.[0]).startsWith("– type") ? [[name, address, block.flat().length]] : [];
    }));
  expect(requests.length).toBeGreaterThan(20);
  expect(requests.filter(([, , cells]) => cells !== 1)).toEqual([]);
}, ENGINE_TIME);
