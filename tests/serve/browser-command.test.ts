import { browserCommand } from "../../src/serve/browser-command";

const url = "http://127.0.0.1:3000/";
const on = (platform: string, env: Record<string, string> = {}, files: readonly string[] = []) =>
  browserCommand(url, { platform, env, exists: (file) => files.includes(file) });

test("Windows opens its default browser", () => {
  expect(on("win32")).toEqual(["cmd", "/c", "start", "", url]);
});

test("Mac opens its default browser", () => {
  expect(on("darwin")).toEqual(["open", url]);
});

test.each([{ DISPLAY: ":0" }, { WAYLAND_DISPLAY: "wayland-0" }])("Linux with a screen, %j, opens its default browser", (screen) => {
  expect(on("linux", { ...screen, PATH: "/bin:/usr/bin" }, ["/usr/bin/xdg-open"])).toEqual(["xdg-open", url]);
});

test("Linux without a screen opens nothing", () => {
  expect(on("linux", { PATH: "/usr/bin" }, ["/usr/bin/xdg-open"])).toBeUndefined();
});

test("Linux without xdg-open opens nothing", () => {
  expect(on("linux", { DISPLAY: ":0", PATH: "/usr/bin" })).toBeUndefined();
});

test.each(["win32", "darwin", "linux"])("on %s the browser can be turned off", (platform) => {
  const env = { TREADSHEET_NO_BROWSER: "1", DISPLAY: ":0", PATH: "/usr/bin" };
  expect(on(platform, env, ["/usr/bin/xdg-open"])).toBeUndefined();
});
