// The built page, and copies of it that differ like a later build would.
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { writeServiceWorker } from "../../../src/shell/stage.mjs";

export const DIST = fileURLToPath(new URL("../../../dist", import.meta.url));

/** A copy of dist/ in a directory of its own, removed when the test `t` ends. */
export async function copyOfBuild(t) {
  const directory = await mkdtemp(path.join(os.tmpdir(), "nightbank-build-"));
  await cp(DIST, directory, { recursive: true });
  t.after(() => rm(directory, { recursive: true, force: true }));
  return directory;
}

/** Turns a copy into another build: the title says so, and the service worker is written anew, as Trunk's hook does. */
export async function relabel(directory, label) {
  const file = path.join(directory, "index.html");
  const html = await readFile(file, "utf8");
  const changed = html.replace(/<title>[^<]*<\/title>/, `<title>${label}</title>`);
  if (changed === html) throw new Error("index.html has no <title> to change");
  await writeFile(file, changed);
  return writeServiceWorker(directory);
}
