import { isOtherMachine } from "../../src/web/on-site/is-other-machine";

// What browsers take for the machine itself: https://www.w3.org/TR/secure-contexts/#is-origin-trustworthy, 127.0.0.0/8, ::1/128, localhost.
test.each([
  ["https://shop.example/stairs/", true],
  ["https://intranet:8443/", true],
  ["https://localhost.example/", true],
  ["https://127.example/", true],
  ["https://192.0.2.7/", true],
  ["http://shop.example/", false],
  ["https://localhost:3000/", false],
  ["https://LOCALHOST/", false],
  ["https://sheet.localhost/", false],
  ["https://127.0.0.1:3000/", false],
  ["https://127.8.9.10/", false],
  ["https://[::1]:3000/", false],
  ["http://127.0.0.1:3000/", false],
  ["file:///stairs/index.html", false],
])("a page of %s comes from another machine over https: %s", (address, answer) => {
  expect(isOtherMachine(new URL(address))).toBe(answer);
});
