import { createServer, type Server } from "node:net";
import { askedPort } from "../../src/serve/asked-port";
import { listeningPort } from "../../src/serve/listening-port";

const open: Server[] = [];
const server = (): Server => {
  const made = createServer();
  open.push(made);
  return made;
};

afterEach(async () => {
  await Promise.all(open.splice(0).map((one) => new Promise((resolve) => one.close(resolve))));
});

test("a taken port is left alone and a later one is used", async () => {
  const taken = await listeningPort(server(), 0);
  const next = await listeningPort(server(), taken);
  expect(next).toBeGreaterThan(taken);
});

test("the server listens on this machine only", async () => {
  const made = server();
  await listeningPort(made, 0);
  expect(made.address()).toMatchObject({ address: "127.0.0.1" });
});

test("a failure that is not a taken port is reported", async () => {
  const made = server();
  await listeningPort(made, 0);
  await expect(listeningPort(made, 0)).rejects.toThrow(/listen/i);
});

test("without a setting the port is 3000", () => {
  expect([askedPort(undefined), askedPort(" ")]).toEqual([3000, 3000]);
});

test("a port is taken from the setting", () => {
  expect(askedPort("8080")).toBe(8080);
});

test.each(["many", "-1", "3000.5", "65536", "1e9"])("PORT=%s is refused in plain words", (setting) => {
  expect(() => askedPort(setting)).toThrow(`PORT: must be a whole number from 0 to 65535, got "${setting}".`);
});
