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

/** Runs in a watched build before anything else. */
const WATCH = `window.complaints = [];
addEventListener("error", (event) => complaints.push("uncaught: " + (event.message || event.target.outerHTML)), true);
addEventListener("unhandledrejection", (event) => complaints.push("rejected: " + event.reason));
addEventListener("securitypolicyviolation", (event) => complaints.push(event.effectiveDirective + ": " + event.blockedURI));
["error", "warn"].forEach((name) => {
  const usual = console[name];
  console[name] = (...said) => (complaints.push(name + ": " + said.join(" ")), usual.apply(console, said));
});
if (location.search === "?without-storage") {
  const get = () => {
    throw new DOMException("denied", "SecurityError");
  };
  ["localStorage", "sessionStorage"].forEach((name) => Object.defineProperty(window, name, { get }));
}
`;

/** A copy of dist/ that gathers what a browser complains of, for browsers that tell nobody else. */
export async function watchedBuild() {
  const directory = await mkdtemp(path.join(os.tmpdir(), "nightbank-watched-"));
  await cp(DIST, directory, { recursive: true });
  const page = path.join(directory, "index.html");
  const html = await readFile(page, "utf8");
  const policy = /<meta http-equiv="?Content-Security-Policy"?[^>]*>/i;
  if (!policy.test(html)) throw new Error("index.html has no content policy to put a script behind");
  await writeFile(page, html.replace(policy, '$&<script src="./watch.js"></script>'));
  await writeFile(path.join(directory, "watch.js"), WATCH);
  await writeServiceWorker(directory);
  return { directory, remove: () => rm(directory, { recursive: true, force: true }) };
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
