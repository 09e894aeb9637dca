import { createHash } from "node:crypto";
import { type Files, loadedBy } from "./hashed-names";

export const WORKER = "worker.js";

const PAGE = "index.html";
/** Every page that opens without a signal. */
const PAGES: readonly string[] = [PAGE, "at-stair.html"];
/** The page's address within the folder: some hosts send who asks for index.html on to it, and an answer sent on opens no page. */
const FOLDER = "./";

/**
 * The worker, told what the live sheet and the reading screen are made of: each file with what it must be, so that no two builds are ever
 * mixed.
 */
export const workerFile = (files: Files, worker: Buffer, hashOf: (content: Buffer) => string): Buffer => {
  const digest = (name: string): string => `sha256-${createHash("sha256").update(files.get(name) ?? "").digest("base64")}`;
  const names = new Set(PAGES.flatMap((page) => [page, ...loadedBy(files, page)]));
  const kept = [...names].map((name) => [name === PAGE ? FOLDER : name, digest(name)] as const);
  const build = hashOf(Buffer.from(JSON.stringify(kept)));
  return Buffer.from(`self.treadsheetKept = ${JSON.stringify({ build, files: kept })};\n${worker.toString("utf8")}`);
};
