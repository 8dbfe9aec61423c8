// What the build does to the staged files: policy, preview addresses, list and version of the service worker.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { parse } from "acorn";
import { contentSecurityPolicy, stage, stageParts, stageTexts, withAddress, withBoot, withPolicy } from "../../src/shell/stage.mjs";
import { DIST } from "./support/builds.mjs";

const PAGE = `<!doctype html><html lang=en><meta charset=utf-8><title>t</title><link href=./app-0123456789abcdef.js rel=modulepreload><style>p{margin:0}</style><script type=module>start()</script><script src="./other.js"></script>`;

const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

async function staged(t, files) {
  const directory = await mkdtemp(path.join(os.tmpdir(), "nightbank-stage-"));
  t.after(() => rm(directory, { recursive: true, force: true }));
  for (const [name, text] of Object.entries(files)) {
    await mkdir(path.dirname(path.join(directory, name)), { recursive: true });
    await writeFile(path.join(directory, name), text);
  }
  return { directory, build: await stage(directory) };
}

test("the policy names the inline code of this page and nothing more", () => {
  const directives = Object.fromEntries(
    contentSecurityPolicy(PAGE).split("; ").map((directive) => [directive.split(" ")[0], directive.split(" ").slice(1)]),
  );
  assert.deepEqual(directives["default-src"], ["'none'"]);
  assert.deepEqual(directives["script-src"], ["'self'", "'wasm-unsafe-eval'", hash("start()")]);
  assert.deepEqual(directives["style-src"], ["'self'", hash("p{margin:0}")]);
  assert.deepEqual(directives["connect-src"], ["'self'"]);
  const allowed = Object.values(directives).flat().filter((source) => !source.startsWith("'sha256-"));
  assert.deepEqual([...new Set(allowed)].sort(), ["'none'", "'self'", "'wasm-unsafe-eval'", "blob:", "data:"]);
});

test("the policy stands before everything it governs, and only once", () => {
  const html = withPolicy(PAGE);
  assert.match(html, /<meta charset=utf-8>\s*<meta http-equiv="Content-Security-Policy"/);
  assert.throws(() => withPolicy(html), /a policy already/);
});

test("a page that the policy would break does not build", () => {
  assert.throws(() => withPolicy(`${PAGE}<p onclick="x()">`), /event handler/);
  assert.throws(() => withPolicy(`${PAGE}<p style="margin:0">`), /style attribute/);
  assert.throws(() => withPolicy("<title>t</title>"), /charset/);
});

const PREVIEW = `<meta property="og:title" content="t"><meta property="og:image" content="./icons/card.png"><meta content=./icons/card.png property=og:image><meta content=./ property=og:url><meta content=630 property=og:image:height><meta name="twitter:card" content="summary_large_image">`;

test("preview tags get the published address, in any order of attributes, quoted or not", () => {
  assert.equal(
    withAddress(PREVIEW, "https://example.org/nightbank"),
    `<meta property="og:title" content="t"><meta property="og:image" content="https://example.org/nightbank/icons/card.png"><meta content="https://example.org/nightbank/icons/card.png" property=og:image><meta content="https://example.org/nightbank/" property=og:url><meta content=630 property=og:image:height><meta name="twitter:card" content="summary_large_image">`,
  );
  assert.throws(() => withAddress(PREVIEW, "example.org"), /Invalid URL/);
});

test("without an address the page has no preview tag that would need one", async () => {
  assert.equal(withAddress(PREVIEW, undefined), `<meta property="og:title" content="t">`);
  const source = await readFile(new URL("../../index.html", import.meta.url), "utf8");
  assert.doesNotMatch(withAddress(source, ""), /og:image|og:url|twitter:card/);
  assert.doesNotMatch(withAddress(source, "https://example.org/"), /<meta property="og[^>]*"\.\//);
});

test("the service worker lists what the page may load, not itself, not the preview card", async (t) => {
  const { directory, build } = await staged(t, {
    "index.html": PAGE,
    "app-0123456789abcdef.js": "1",
    "texts/de.ftl": "a = b",
    "icons/card-1200x630.png": "x",
    "icons/a b.svg": "<svg/>",
  });
  assert.deepEqual(build.files, ["app-0123456789abcdef.js", "icons/a%20b.svg", "texts/de.ftl"]);
  assert.deepEqual(build.parts, ["app-0123456789abcdef.js"]);
  const worker = await readFile(path.join(directory, "sw.js"), "utf8");
  assert.ok(worker.includes(`"version":"${build.version}"`));
  // SHA-256 of "1", by sha256sum.
  assert.equal(Buffer.from(build.sums["app-0123456789abcdef.js"].slice("sha256-".length), "base64").toString("hex"), "6b86b273ff34fce19d6b804eff5a3f5747ada4eaa22f1d49c01e52ddb7875b4b");
  assert.deepEqual(Object.keys(build.sums), ["app-0123456789abcdef.js", "texts/de.ftl"], "a host may make pictures smaller");
});

test("the script that says what is wrong is one that a browser of 2009 reads", async () => {
  const built = await readFile(path.join(DIST, "index.html"), "utf8");
  const [, script] = built.match(/<script>([\s\S]*?)<\/script>/);
  assert.doesNotThrow(() => parse(script, { ecmaVersion: 5 }));
  const more = await readFile(path.join(DIST, "trouble.js"), "utf8");
  assert.doesNotThrow(() => parse(more, { ecmaVersion: 5 }));
  assert.throws(() => parse("let a = () => 1", { ecmaVersion: 5 }), "such a reader knows newer words from older ones");
  const page = "<script>old()</script><script type=module>m()</script>";
  assert.equal(await withBoot(page, async () => "new($&)"), "<script>new($&)</script><script type=module>m()</script>");
  await assert.rejects(withBoot("<p>", async () => ""), /0 plain inline scripts/);
});

test("the version changes with any byte of any file, and with a name, and with nothing else", async (t) => {
  const files = { "index.html": PAGE, "app-0123456789abcdef.js": "1", "texts/de.ftl": "a = b" };
  const version = async (changed) => (await staged(t, changed)).build.version;
  const first = await version(files);
  assert.equal(await version(files), first);
  assert.notEqual(await version({ ...files, "texts/de.ftl": "a = c" }), first);
  assert.notEqual(await version({ ...files, "index.html": `${PAGE} ` }), first);
  const { "texts/de.ftl": text, ...rest } = files;
  assert.notEqual(await version({ ...rest, "texts/nl.ftl": text }), first);
});

test("a debug build gets texts and data and is left alone otherwise", async (t) => {
  const directory = await mkdtemp(path.join(os.tmpdir(), "nightbank-stage-"));
  t.after(() => rm(directory, { recursive: true, force: true }));
  await writeFile(path.join(directory, "index.html"), PAGE);
  const hook = fileURLToPath(new URL("../../src/shell/stage.mjs", import.meta.url));
  await promisify(execFile)(process.execPath, [hook], { env: { ...process.env, TRUNK_PROFILE: "debug", TRUNK_STAGING_DIR: directory } });
  assert.deepEqual((await readdir(directory)).sort(), ["climate.bin", "i18n", "index.html", "places.txt", "plain-climate.bin", "plain-places.txt"]);
  assert.deepEqual((await readdir(path.join(directory, "i18n"))).sort(), ["de.ftl", "fr.ftl", "nl.ftl"]);
  assert.equal(await readFile(path.join(directory, "index.html"), "utf8"), PAGE);
});

/** How a piece is fetched, as the splitter writes it. */
const fetched = (name) => `makeLoad(() => {
    const src = fetch(new URL("./${name}.wasm", import.meta.url));
    src.catch(() => {});
    return async (imports) => (WebAssembly.instantiateStreaming(src, imports));
}
`;
const SPLIT = `import { initSync } from "./app.js";
const makeLoad = (fetcher, deps) => async () => [...(await Promise.all(deps.map((dep) => dep()))).flat(), await fetcher()({})];
/* forms, storage, outlook */
const __chunk_6 = ${fetched("chunk_6")}, []);
/* forms, more */
const __chunk_7 = ${fetched("chunk_7")}, []);
export const load_forms = ${fetched("split_forms")}, [__chunk_6, __chunk_7]);
export const load_outlook = ${fetched("split_outlook")}, [__chunk_6]);
`;

/** Splits nothing, but stages what a split program looks like. */
async function parted(t, { program = 'import * as p from "./__wasm_split.js"; go({ "./__wasm_split.js": p })', forms = "forms", files = {} } = {}) {
  const directory = await mkdtemp(path.join(os.tmpdir(), "nightbank-stage-"));
  const parts = await mkdtemp(path.join(os.tmpdir(), "nightbank-parts-"));
  t.after(() => Promise.all([directory, parts].map((folder) => rm(folder, { recursive: true, force: true }))));
  await writeFile(path.join(directory, "index.html"), PAGE);
  await writeFile(path.join(directory, "app-0123456789abcdef.js"), program);
  const pieces = { "chunk_6.wasm": "six", "chunk_7.wasm": "seven", "split_forms.wasm": forms, "split_outlook.wasm": "outlook" };
  for (const [name, text] of Object.entries({ "__wasm_split.js": SPLIT, ...pieces, ...files })) {
    if (text !== null) await writeFile(path.join(parts, name), text);
  }
  await stageParts(directory, parts, (file) => readFile(file));
  const read = (name) => readFile(path.join(directory, name), "utf8");
  return { names: (await readdir(directory)).sort(), read, directory };
}

test("parts are named after their content, and both scripts and the page find each other", async (t) => {
  const { names, read } = await parted(t);
  const [app, page, forms, outlook, shared, both, script] = names;
  assert.match(app, /^app-[0-9a-f]{16}\.js$/);
  assert.notEqual(app, "app-0123456789abcdef.js");
  assert.equal(page, "index.html");
  const packs = [forms, outlook, shared, both];
  assert.deepEqual(packs.map((name) => name.replace(/-[0-9a-f]{16}\.wasm$/, "")), ["part-forms", "part-outlook", "part-shared", "part-storage-outlook"]);
  assert.match(script, /^parts-[0-9a-f]{16}\.js$/);
  assert.equal(await read(app), `import * as p from "./${script}"; go({ "./__wasm_split.js": p })`);
  const fetches = await read(script);
  for (const name of [app, ...packs]) assert.ok(fetches.includes(`"./${name}"`), name);
  const html = await read("index.html");
  assert.ok(html.includes(`<link href=./${app} rel=modulepreload><link href=./${script} rel=modulepreload>`), html);
});

test("each part gets its own pieces out of the files, fetches a file once, and asks again for what did not arrive", async (t) => {
  const { names, read, directory } = await parted(t);
  const script = names.at(-1);
  await writeFile(path.join(directory, names[0]), "export const initSync = 0;");
  await writeFile(path.join(directory, "package.json"), '{ "type": "module" }');
  const { fetch } = globalThis;
  const { instantiate } = WebAssembly;
  t.after(() => Object.assign(globalThis, { fetch }) && Object.assign(WebAssembly, { instantiate }));
  const asked = [];
  let offline = true;
  globalThis.fetch = async (url) => {
    asked.push(path.basename(url.pathname));
    return offline ? new Response("", { status: 503 }) : new Response(await read(path.basename(url.pathname)));
  };
  // Node's own fetch is in WebAssembly too.
  WebAssembly.instantiate = async (given, ...rest) => (given instanceof Uint8Array ? Buffer.from(given).toString() : instantiate(given, ...rest));
  const { load_forms, load_outlook } = await import(path.join(directory, script));
  await assert.rejects(load_forms(), /503/);
  asked.length = 0;
  offline = false;
  assert.deepEqual(await load_forms(), ["six", "seven", "forms"]);
  assert.deepEqual(asked.sort(), [names[2], names[4], names[5]]);
  assert.deepEqual(await load_outlook(), ["six", "outlook"]);
});

test("another part or program gets other names; the same gets the same", async (t) => {
  const first = (await parted(t)).names;
  assert.deepEqual((await parted(t)).names, first);
  const other = (await parted(t, { forms: "other" })).names;
  for (const [at, name] of first.entries()) assert.equal(other[at] === name, ![0, 2, 6].includes(at), name);
  const program = (await parted(t, { program: 'import * as p from "./__wasm_split.js"; other()' })).names;
  assert.notEqual(program[0], first[0]);
});

test("a program that was not split, or a part that nothing fetches or that is missing, does not build", async (t) => {
  await assert.rejects(parted(t, { program: "go()" }), /does not fetch parts/);
  await assert.rejects(parted(t, { files: { "split_more.wasm": "x" } }), /nothing fetches split_more/);
  await assert.rejects(parted(t, { files: { "chunk_6.wasm": null } }), /chunk_6 is missing/);
  const unknown = SPLIT.replace("src.catch(() => {});", "src.catch(console.error);");
  await assert.rejects(parted(t, { files: { "__wasm_split.js": unknown } }), /fetches 4 pieces, of which 3 are understood/);
});

test("the texts of a language are one file without comments", async (t) => {
  const { directory } = await staged(t, { "index.html": PAGE, "app-0123456789abcdef.js": "1" });
  const texts = path.join(directory, "texts");
  for (const [name, text] of [["en/a.ftl", "a = b"], ["de/a.ftl", "# c\na = ä\n\n## d\nb = ö\n"], ["de/b.ftl", "c = ü\n"]]) {
    await mkdir(path.dirname(path.join(texts, name)), { recursive: true });
    await writeFile(path.join(texts, name), text);
  }
  await stageTexts(directory, texts);
  assert.deepEqual(await readdir(path.join(directory, "i18n")), ["de.ftl"]);
  assert.equal(await readFile(path.join(directory, "i18n", "de.ftl"), "utf8"), "a = ä\nb = ö\nc = ü\n");
});
