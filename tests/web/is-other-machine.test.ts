import { isOtherMachine } from "../../src/web/on-site/is-other-machine";

// What browsers take for the machine itself: https://www.w3.org/TR/secure-contexts/#is-origin-trustworthy, 127.0.0.0/8, ::1/128, localhost.
test.each([
  ["https:", "shop.example", true],
  ["https:", "intranet", true],
  ["https:", "localhost.example", true],
  ["https:", "127.example", true],
  ["https:", "192.0.2.7", true],
  ["http:", "shop.example", false],
  ["https:", "localhost", false],
  ["https:", "sheet.localhost", false],
  ["https:", "127.0.0.1", false],
  ["https:", "127.8.9.10", false],
  ["https:", "[::1]", false],
  ["http:", "127.0.0.1", false],
  ["file:", "", false],
])("a page over %s from %s comes from another machine over https: %s", (protocol, hostname, answer) => {
  expect(isOtherMachine({ protocol, hostname })).toBe(answer);
});
