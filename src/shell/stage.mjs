// Trunk's post_build hook, run on the staged files of a release build before they become dist/:
//
// 1. index.html gets a Content-Security-Policy that names the hash of each inline script and style, so that
//    nothing else can run; and absolute addresses in its preview tags if NIGHTBANK_ORIGIN says where it will live.
// 2. sw.js is written: the service worker with the list of files and a version that is a hash of their bytes.
//
// A debug build (trunk serve) gets neither: its reload script and stale caches would be in each other's way.
import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** Files that a page never loads: crawlers do, and installers of the icon once. */
const NOT_KEPT_OFFLINE = [/^index\.html$/, /^sw\.js$/, /^icons\/card-/, /\.map$/];

/** A name that Trunk gave a content hash. */
const HASHED = /-[0-9a-f]{8,16}(_bg)?\.(js|wasm|css)$/;

const sha256 = (text) => `'sha256-${createHash("sha256").update(text, "utf8").digest("base64")}'`;

/** The bodies of all inline elements of this kind. */
function inlineBodies(html, tag) {
  const bodies = [];
  for (const [, attributes, body] of html.matchAll(new RegExp(`<${tag}\\b([^>]*)>([\\s\\S]*?)</${tag}>`, "gi"))) {
    if (/\ssrc\s*=/i.test(attributes)) continue;
    bodies.push(body);
  }
  return bodies;
}

/** The policy for a page with this HTML: own files only, no inline code but the given. */
export function contentSecurityPolicy(html) {
  const scripts = inlineBodies(html, "script").map(sha256);
  const styles = inlineBodies(html, "style").map(sha256);
  return [
    "default-src 'none'",
    ["script-src 'self' 'wasm-unsafe-eval'", ...scripts].join(" "),
    ["style-src 'self'", ...styles].join(" "),
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/** Puts the policy right after the charset, before anything it is to govern. */
export function withPolicy(html) {
  const charset = /<meta charset="?utf-8"?\s*\/?>/i;
  if (!charset.test(html)) throw new Error("index.html has no <meta charset=utf-8> to put the policy after");
  if (/http-equiv="?content-security-policy/i.test(html)) throw new Error("index.html has a policy already");
  if (/<[^>]+\son[a-z]+\s*=/i.test(html)) throw new Error("index.html has an inline event handler; the policy forbids those");
  if (/<[^>]+\sstyle\s*=/i.test(html)) throw new Error("index.html has a style attribute; the policy forbids those");
  const meta = `<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy(html)}">`;
  return html.replace(charset, (found) => `${found}\n${meta}`);
}

/** Crawlers want absolute addresses in preview tags; only who publishes the page knows them. */
export function withOrigin(html, origin) {
  if (!origin) return html;
  const base = new URL(origin.endsWith("/") ? origin : `${origin}/`).href;
  return html.replace(/<meta\b[^>]*\bog:(?:image|url)\b(?!:)[^>]*>/g, (tag) =>
    tag.replace(/\bcontent=("?)\.\/([^"\s>]*)\1/, `content="${base}$2"`),
  );
}

async function walk(directory, prefix = "") {
  const found = [];
  for (const entry of await readdir(directory, { withFileTypes: true })) {
    const name = prefix + entry.name;
    if (entry.isDirectory()) found.push(...(await walk(path.join(directory, entry.name), `${name}/`)));
    else found.push(name);
  }
  return found.sort();
}

/** Writes policy and service worker into the directory of a finished build. */
export async function stage(directory, { origin, template } = {}) {
  const page = path.join(directory, "index.html");
  const html = withPolicy(withOrigin(await readFile(page, "utf8"), origin));
  await writeFile(page, html);
  return writeServiceWorker(directory, template);
}

/** Writes sw.js for the files as they are now. */
export async function writeServiceWorker(directory, template = fileURLToPath(new URL("sw.js", import.meta.url))) {
  const html = await readFile(path.join(directory, "index.html"), "utf8");
  const names = await walk(directory);
  const hash = createHash("sha256");
  for (const name of names) {
    if (name === "sw.js") continue;
    hash.update(`${name}\0`).update(createHash("sha256").update(await readFile(path.join(directory, name))).digest());
  }
  const source = await readFile(template, "utf8");
  hash.update(source);
  const files = names.filter((name) => !NOT_KEPT_OFFLINE.some((pattern) => pattern.test(name)));
  const build = {
    version: hash.digest("hex").slice(0, 16),
    files: files.map((name) => name.split("/").map(encodeURIComponent).join("/")),
    parts: files.filter((name) => HASHED.test(name) && html.includes(path.posix.basename(name))),
  };
  const filled = source.replace(/\/\*BUILD\*\/ \{[^}]*\}/, () => JSON.stringify(build));
  if (filled === source) throw new Error("sw.js has lost the place for its BUILD");
  await writeFile(path.join(directory, "sw.js"), filled);
  return build;
}

if (process.argv[1] && path.resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  if (process.env.TRUNK_PROFILE !== "release") {
    console.log("debug build: no content policy, no service worker");
  } else if (!process.env.TRUNK_STAGING_DIR) {
    console.error("stage.mjs is run by trunk, which sets TRUNK_STAGING_DIR");
    process.exit(1);
  } else {
    const build = await stage(process.env.TRUNK_STAGING_DIR, { origin: process.env.NIGHTBANK_ORIGIN });
    console.log(`build ${build.version}: ${build.files.length} files kept offline`);
  }
}
