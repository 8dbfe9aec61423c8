// Puts the pieces into which the program is cut into few files: a phone that fetches the chart asks for three
// files instead of a dozen, some of which would be a few hundred bytes.
//
// A file is the pieces one after the other. It is called .wasm all the same: hosts compress that, and few compress what
// they do not know.

/** What a first visit fetches right behind the start; other parts do not bring along what only these need. */
const EARLY = ["storage", "outlook"];

/** How a piece is fetched, as the splitter (`wasm_split_cli_support`) writes it; a comment before one that several parts share lists them. */
const FETCHED = /((?:\/\* ([\w, ]+) \*\/\s*const __chunk_\d+ = )?)makeLoad\(\(\) => \{\s*const src = fetch\(new URL\("\.\/([\w.-]+)\.wasm", import\.meta\.url\)\);\s*src\.catch\(\(\) => \{\}\);\s*return async \(imports\) => \(WebAssembly\.instantiateStreaming\(src, imports\)\);\s*\}\s*,/g;

/**
 * Takes the place of that. What did not arrive, or is not what it should be (cut short, or a host's page in its place), is
 * fetched again the next time it is asked for, then past everything stored on the way.
 */
const ARRIVAL = `
const arriving = new Map();
const spoilt = new Set();
function arrive(file) {
    if (!arriving.has(file)) {
        const bytes = fetch(new URL(file, import.meta.url), { cache: spoilt.has(file) ? "reload" : "default" }).then((response) => {
            if (!response.ok) throw new Error(\`\${file}: \${response.status}\`);
            return response.arrayBuffer();
        });
        const over = () => arriving.delete(file);
        bytes.then(over, over);
        arriving.set(file, bytes);
    }
    return arriving.get(file);
}
function piece(file, from, length) {
    return () => {
        const bytes = arrive(file);
        return async (imports) => {
            try {
                return await WebAssembly.instantiate(new Uint8Array(await bytes, from, length), imports);
            } catch (error) {
                spoilt.add(file);
                throw error;
            }
        };
    };
}
`;

/** The file for a piece that these parts need. */
function packOf(parts) {
  const early = EARLY.filter((part) => parts.includes(part));
  if (early.length) return early.join("-");
  return parts.length === 1 ? parts[0] : "shared";
}

/** Names of the pieces that this script fetches, with the file each belongs into, in the order of the script. */
function piecesOf(script) {
  return [...script.matchAll(FETCHED)].map(([, , parts, name]) => ({
    name,
    pack: packOf(parts?.split(", ") ?? [name.replace(/^split_/, "")]),
  }));
}

/**
 * Packs the pieces that `script` fetches; `contents` maps their names, without ending, to their bytes, and `nameOf` names
 * a file by its pack and its bytes. Gives the script that fetches the files, and the files by name.
 */
export function packed(script, contents, nameOf) {
  const pieces = piecesOf(script);
  const all = script.match(/instantiateStreaming/g)?.length ?? 0;
  if (!all || all !== pieces.length) throw new Error(`the script fetches ${all} pieces, of which ${pieces.length} are understood`);
  for (const name of contents.keys()) {
    if (!pieces.some((piece) => piece.name === name)) throw new Error(`nothing fetches ${name}`);
  }
  const files = new Map();
  const places = new Map();
  for (const pack of new Set(pieces.map((piece) => piece.pack))) {
    let from = 0;
    const bytes = [];
    for (const { name } of pieces.filter((piece) => piece.pack === pack)) {
      const content = contents.get(name);
      if (!content) throw new Error(`${name} is missing`);
      places.set(name, { pack, from, length: content.length });
      bytes.push(content);
      from += content.length;
    }
    files.set(pack, Buffer.concat(bytes));
  }
  const names = new Map([...files].map(([pack, bytes]) => [pack, nameOf(pack, bytes)]));
  const filled = script.replace(FETCHED, (_, head, parts, name) => {
    const { pack, from, length } = places.get(name);
    return `${head}makeLoad(piece("./${names.get(pack)}", ${from}, ${length}),`;
  });
  const [imported] = filled.match(/^\s*import [^;]*;/) ?? [""];
  return {
    script: imported + ARRIVAL + filled.slice(imported.length),
    files: new Map([...files].map(([pack, bytes]) => [names.get(pack), bytes])),
  };
}
