// Runs the browser tests (all, or those whose file name contains an argument) and closes with counts.
//
//   node tests/browser/run.mjs [part of a file name...]
import { spawn } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { availableParallelism } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";

const here = path.dirname(fileURLToPath(import.meta.url));
if (!existsSync(path.join(here, "../../dist/sw.js"))) {
  console.error("There is no release build in dist/. Build it first: bash .ci/build");
  process.exit(1);
}
/** These take longest and go first, so that none of them is left over at the end. */
const LONGEST = ["engines", "reach", "memory", "layout", "setups", "keyboard", "links", "offline"];
const place = (name) => (LONGEST.findIndex((long) => name.startsWith(long)) + LONGEST.length + 1) % (LONGEST.length + 1);
const wanted = process.argv.slice(2);
const specs = readdirSync(here)
  .filter((name) => name.endsWith(".spec.mjs"))
  .filter((name) => !wanted.length || wanted.some((part) => name.includes(part)))
  .sort((a, b) => place(a) - place(b) || a.localeCompare(b));
if (!specs.length) {
  console.error(`No test file matches ${wanted.join(", ")}`);
  process.exit(1);
}
const child = spawn(
  process.execPath,
  ["--test", "--test-reporter=spec", `--test-concurrency=${availableParallelism() + 1}`, "--test-timeout=1200000", ...specs.map((name) => path.join(here, name))],
  { stdio: ["ignore", "inherit", "inherit"], cwd: here },
);
child.on("exit", (code) => process.exit(code ?? 1));
