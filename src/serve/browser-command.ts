import path from "node:path";

export interface Surroundings {
  readonly platform: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly exists: (file: string) => boolean;
}

const onPath = ({ env, exists }: Surroundings, program: string): boolean =>
  (env["PATH"] ?? "").split(":").some((folder) => folder !== "" && exists(path.posix.join(folder, program)));

/** The command that opens an address in the default browser, or nothing where there is no screen to open it on. */
export const browserCommand = (url: string, surroundings: Surroundings): readonly [string, ...string[]] | undefined => {
  const { platform, env } = surroundings;
  if (env["TREADSHEET_NO_BROWSER"] === "1") return undefined;
  // The empty argument is the window title, which `start` takes first.
  if (platform === "win32") return ["cmd", "/c", "start", "", url];
  if (platform === "darwin") return ["open", url];
  const screen = env["DISPLAY"] || env["WAYLAND_DISPLAY"];
  return screen && onPath(surroundings, "xdg-open") ? ["xdg-open", url] : undefined;
};
