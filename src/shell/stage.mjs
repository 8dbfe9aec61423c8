// Trunk's post_build hook, run on the staged files before they become dist/:
//
// 1. The texts of the languages are put beside the page, and so are the parts of the program that are fetched when needed.
// 2. The script that runs first is put into index.html so that old browsers can read it too. index.html gets a
//    Content-Security-Policy that names the hash of each inline script and style, so that nothing else can run; and
//    addresses in its preview tags if NIGHTBANK_ADDRESS says where the page will live.
// 3. sw.js is written: the service worker with the list of files and a version that is a hash of their bytes.
//
// A debug build (`trunk serve`, `.ci/dev`) is one program and gets texts and data alone: a policy would forbid the script that
// reloads the page, and a service worker would show the page of before.
import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, rename, writeFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { packed } from "./packs.mjs";

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

/**
 * Puts the script that says what is wrong into the page as `minify` makes it smaller. The build's own way of that writes
 * newer JavaScript, at which an old browser stops before it says anything.
 */
export async function withBoot(html, minify) {
  const inline = /<script>[\s\S]*?<\/script>/g;
  const found = html.match(inline) ?? [];
  if (found.length !== 1) throw new Error(`index.html has ${found.length} plain inline scripts, and one is expected`);
  const script = await minify(fileURLToPath(new URL("boot.js", import.meta.url)));
  if (/<\/script/i.test(script)) throw new Error("boot.js would end its own element");
  return html.replace(inline, () => `<script>${script}</script>`);
}

/** As small as it gets in the JavaScript of 2009. */
async function minifiedForAll(file) {
  const { stdout } = await promisify(execFile)("terser", [file, "--compress", "--mangle", "--ecma", "5"]);
  return stdout.trim();
}

/** A module of the program's, smaller. */
async function minifiedModule(text) {
  const work = promisify(execFile)("terser", ["--module", "--compress", "--mangle"]);
  work.child.stdin.end(text);
  return (await work).stdout;
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

/** Tags that make a preview of a link; crawlers want absolute addresses in them. */
const PREVIEW = /<meta\b[^>]*(?:\bog:(?:image|url)|\btwitter:card)\b[^>]*>\n?/g;

/** Gives the preview tags the address at which the page is published; without one there is nothing they could say. */
export function withAddress(html, address) {
  if (!address) return html.replace(PREVIEW, "");
  const base = new URL(address.endsWith("/") ? address : `${address}/`).href;
  return html.replace(PREVIEW, (tag) => tag.replace(/\bcontent=("?)\.\/([^"\s>]*)\1/, `content="${base}$2"`));
}

/** The script that fetches the parts, as the splitter writes it. */
const PARTS_SCRIPT = "__wasm_split.js";

const digest = (...pieces) => {
  const hash = createHash("sha256");
  for (const piece of pieces) hash.update(piece).update("\0");
  return hash.digest("hex").slice(0, 16);
};

/**
 * Puts the parts of the program in `parts` beside the page in `directory`, each named after its content, and gives
 * the two scripts that name each other one name after the content of both. `minify` makes the second one smaller.
 */
export async function stageParts(directory, parts, optimise, minify = (text) => text) {
  const page = path.join(directory, "index.html");
  let html = await readFile(page, "utf8");
  const found = html.match(/\.\/([\w.-]+-[0-9a-f]{8,16})\.js/);
  if (!found) throw new Error("index.html names no script of the program");
  const [, main] = found;
  const names = (await readdir(parts)).filter((name) => name.endsWith(".wasm")).sort();
  const contents = await eachOf(names, (name) => optimise(path.join(parts, name)));
  const pieces = new Map(names.map((name, index) => [name.replace(/\.wasm$/, ""), contents[index]]));
  const made = packed(await readFile(path.join(parts, PARTS_SCRIPT), "utf8"), pieces, (pack, bytes) => `part-${pack}-${digest(bytes)}.wasm`);
  let { script } = made;
  for (const [name, bytes] of made.files) await writeFile(path.join(directory, name), bytes);
  let program = await readFile(path.join(directory, `${main}.js`), "utf8");
  // Minified or not.
  const asked = new RegExp(`\\bfrom ?"\\./${PARTS_SCRIPT.replaceAll(".", "\\.")}"`, "g");
  if (!asked.test(program)) throw new Error(`${main}.js does not fetch parts`);
  const build = digest(script, program);
  const renamed = `${main.replace(/-[0-9a-f]+$/, "")}-${build}.js`;
  // The script alone: the program asks for its functions under the name that the splitter gave them.
  program = program.replaceAll(asked, `from "./parts-${build}.js"`);
  // The splitter knew the program by the name it had before Trunk added a hash.
  const imported = /^(import \{[^}]*\} from )"\.\/[\w-]+\.js"/m;
  if (!imported.test(script)) throw new Error(`${PARTS_SCRIPT} does not import the program`);
  script = script.replace(imported, `$1"./${renamed}"`);
  await rename(path.join(directory, `${main}.js`), path.join(directory, renamed));
  await writeFile(path.join(directory, renamed), program);
  await writeFile(path.join(directory, `parts-${build}.js`), await minify(script));
  html = html.replaceAll(`./${main}.js`, `./${renamed}`);
  const preload = /<link\b[^>]*\brel="?modulepreload"?[^>]*>/;
  if (!preload.test(html)) throw new Error("index.html preloads no script to put the other one beside");
  html = html.replace(preload, (link) => `${link}${link.replaceAll(renamed, `parts-${build}.js`)}`);
  await writeFile(page, html);
}

/** What `work` makes of each of `items`, as many at a time as there are processors. */
async function eachOf(items, work) {
  const made = [];
  const left = [...items.entries()];
  const worker = async () => {
    for (let next = left.shift(); next; next = left.shift()) made[next[0]] = await work(next[1]);
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return made;
}

async function optimised(file) {
  const run = promisify(execFile);
  const features = ["bulk-memory", "nontrapping-float-to-int", "sign-ext", "reference-types", "multivalue", "mutable-globals"];
  await run("wasm-opt", ["-Oz", ...features.map((name) => `--enable-${name}`), "--reorder-functions-by-name", file, "-o", `${file}.opt`], {
    // One thread for each: several files are on the way.
    env: { ...process.env, BINARYEN_CORES: "1" },
  });
  return readFile(`${file}.opt`);
}

/** Puts the texts of each language but English, which is built in, into one file. */
export async function stageTexts(directory, texts) {
  await mkdir(path.join(directory, "i18n"), { recursive: true });
  for (const entry of await readdir(texts, { withFileTypes: true })) {
    if (!entry.isDirectory() || entry.name === "en") continue;
    const folder = path.join(texts, entry.name);
    const names = (await readdir(folder)).filter((name) => name.endsWith(".ftl")).sort();
    const files = await Promise.all(names.map((name) => readFile(path.join(folder, name), "utf8")));
    // Comments are for translators.
    const text = files.join("\n").replace(/^#.*\n/gm, "").replace(/\n{2,}/g, "\n");
    await writeFile(path.join(directory, "i18n", `${entry.name}.ftl`), text);
  }
}

/** What is fetched when it is first needed: packed here, as not every server packs a file of bytes. */
const DATA = ["climate/climate.bin", "places/places.txt"];

/** Puts the tables beside the page, and once more as they are for browsers that cannot unpack (`view/fetched.rs`). */
export async function stageData(directory, model) {
  for (const file of DATA) {
    const bytes = await readFile(path.join(model, file));
    await writeFile(path.join(directory, path.basename(file)), gzipSync(bytes, { level: 9 }));
    await writeFile(path.join(directory, `plain-${path.basename(file)}`), bytes);
  }
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
export async function stage(directory, { address, template, minify } = {}) {
  const page = path.join(directory, "index.html");
  const written = await readFile(page, "utf8");
  const html = withPolicy(withAddress(minify ? await withBoot(written, minify) : written, address));
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
    sums: {},
  };
  // Of what the program is made of: a host may well make pictures smaller.
  for (const name of files.filter((name) => /\.(js|wasm|ftl|bin|txt)$/.test(name))) {
    build.sums[name] = `sha256-${createHash("sha256").update(await readFile(path.join(directory, name))).digest("base64")}`;
  }
  const filled = source.replace(/\/\*BUILD\*\/ \{.*\};/, () => `${JSON.stringify(build)};`);
  if (filled === source) throw new Error("sw.js has lost the place for its BUILD");
  await writeFile(path.join(directory, "sw.js"), filled);
  return build;
}

async function build(directory) {
  await stageTexts(directory, fileURLToPath(new URL("../i18n", import.meta.url)));
  await stageData(directory, fileURLToPath(new URL("../model", import.meta.url)));
  if (process.env.TRUNK_PROFILE !== "release") return;
  await stageParts(directory, path.join(process.env.CARGO_TARGET_DIR ?? "target", "wasm-bindgen/release/parts"), optimised, minifiedModule);
  const build = await stage(directory, { address: process.env.NIGHTBANK_ADDRESS, minify: minifiedForAll });
  console.log(`build ${build.version}: ${build.files.length} files kept offline`);
}

if (process.argv[1] && path.resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  if (!process.env.TRUNK_STAGING_DIR) {
    console.error("stage.mjs is run by trunk, which sets TRUNK_STAGING_DIR");
    process.exit(1);
  }
  await build(process.env.TRUNK_STAGING_DIR);
}
