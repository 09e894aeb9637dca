import { readFileSync } from "node:fs";

/** The milliseconds a step of the start took, as it was written down, or nothing where it was not. */
export const recordedTime = (file: string): number | undefined => {
  try {
    const { milliseconds } = JSON.parse(readFileSync(file, "utf8")) as { milliseconds?: unknown };
    return typeof milliseconds === "number" ? milliseconds : undefined;
  } catch {
    return undefined;
  }
};
