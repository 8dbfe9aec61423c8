// Makes what wasm-bindgen wrote smaller, before wasm-opt sees it:
//
// - exports that nothing calls are dropped with all they reach. A crate under the page's framework exports streams of
//   a server to JavaScript; this page has no server;
// - imports get short names in place of a name with a hash, in the program and in its script;
// - the script is minified.
//
//   node slim.mjs <folder> <name>        with wasm-metadce and terser on the PATH
import { execFileSync } from "node:child_process";
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

const [folder, name] = process.argv.slice(2);
if (!folder || !name) throw new Error("usage: node slim.mjs <folder> <name>");
const program = path.join(folder, `${name}_bg.wasm`);
const script = path.join(folder, `${name}.js`);

/** Classes of the script, and exports behind them, that only a server's streams would use. */
const UNUSED = /IntoUnderlying(ByteSource|Sink|Source)/i;

async function dropUnusedExports() {
  const { exports } = WebAssembly.Module;
  const used = exports(await WebAssembly.compile(readFileSync(program))).map((entry) => entry.name).filter((entry) => !UNUSED.test(entry));
  const graph = [
    { name: "outside", root: true, reaches: used.map((_, index) => `export ${index}`) },
    ...used.map((entry, index) => ({ name: `export ${index}`, export: entry })),
  ];
  const [graphFile, out] = [`${program}.graph.json`, `${program}.out`];
  writeFileSync(graphFile, JSON.stringify(graph));
  const features = ["bulk-memory", "reference-types", "sign-ext", "nontrapping-float-to-int", "mutable-globals", "multivalue"];
  execFileSync("wasm-metadce", [program, "-g", ...features.map((feature) => `--enable-${feature}`), "--graph-file", graphFile, "-o", out], { stdio: ["ignore", "ignore", "inherit"] });
  renameSync(out, program);
  rmSync(graphFile);
  let text = readFileSync(script, "utf8");
  text = text.replace(/^export class IntoUnderlying\w+ \{\n[\s\S]*?\n\}\nif \(Symbol\.dispose\)[^\n]*\n/gm, "");
  text = text.replace(/^const IntoUnderlying\w+ = \(typeof FinalizationRegistry[\s\S]*?\);\n/gm, "");
  if (UNUSED.test(text)) throw new Error("slim.mjs: wasm-bindgen writes classes in a new way; see UNUSED");
  writeFileSync(script, text);
}

/** LEB128 of an unsigned number, as the WebAssembly binary format has it. */
function leb128(value) {
  const bytes = [];
  do {
    const low = value & 0x7f;
    value >>>= 7;
    bytes.push(value ? low | 0x80 : low);
  } while (value);
  return Buffer.from(bytes);
}

/** Gives every import of the script a short name; all else of the program stays byte for byte. */
function shortenImports() {
  const bytes = readFileSync(program);
  let at = 8;
  const number = () => {
    for (let value = 0, shift = 0; ; shift += 7) {
      const byte = bytes[at++];
      value += (byte & 0x7f) * 2 ** shift;
      if (byte < 0x80) return value;
    }
  };
  const limits = () => {
    const flags = number();
    number();
    if (flags & 1) number();
  };
  /** Steps over what is imported: a function, table, memory, global or tag. */
  const description = () => {
    const kind = bytes[at++];
    if (kind === 0) number();
    else if (kind === 1) at++, limits();
    else if (kind === 2) limits();
    else if (kind === 3) at += 2;
    else if (kind === 4) at++, number();
    else throw new Error(`slim.mjs: import of unknown kind ${kind}`);
  };
  const text = readFileSync(script, "utf8");
  const short = new Map();
  const shorten = (from) => {
    if (!/^__wb/.test(from) || !text.includes(from)) return from;
    if (!short.has(from)) short.set(from, `_${short.size.toString(36)}`);
    return short.get(from);
  };
  const string = (value) => [leb128(Buffer.byteLength(value)), Buffer.from(value)];
  const out = [bytes.subarray(0, 8)];
  while (at < bytes.length) {
    const start = at;
    const id = bytes[at++];
    const end = number() + at;
    if (id === 2) {
      const count = number();
      const body = [leb128(count)];
      const read = () => {
        const length = number();
        return bytes.toString("utf8", at, (at += length));
      };
      for (let index = 0; index < count; index += 1) {
        body.push(...string(read()), ...string(shorten(read())));
        const from = at;
        description();
        body.push(bytes.subarray(from, at));
      }
      const section = Buffer.concat(body);
      out.push(Buffer.from([2]), leb128(section.length), section);
    } else {
      out.push(bytes.subarray(start, end));
    }
    at = end;
  }
  writeFileSync(program, Buffer.concat(out));
  writeFileSync(script, text.replace(/\b__wb\w+/g, (word) => short.get(word) ?? word));
}

await dropUnusedExports();
shortenImports();
execFileSync("terser", [script, "--module", "--compress", "--mangle", "--output", script], { stdio: "inherit" });
