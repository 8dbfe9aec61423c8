// A small static server for dist/: for `.ci/serve` and for the browser tests, which need one that can be stopped
// for good, started again on the same port, moved under a sub-path, and that keeps a log.
//
// It behaves like a plain static host: gzip, ETag with 304, no fallback page (what is not there is a 404).
import { createHash } from "node:crypto";
import { createServer } from "node:http";
import { readFile, stat } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import zlib from "node:zlib";

const gzip = promisify(zlib.gzip);

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".ftl": "text/plain; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json; charset=utf-8",
};
const HASHED = /-[0-9a-f]{8,16}(_bg)?\.(js|wasm|css)$/;

export class StaticServer {
  /**
   * @param {string} directory what to serve
   * @param {{ port?: number, host?: string, base?: string, pageForAll?: boolean, types?: Record<string, string> }} options
   *   `base` is a sub-path like "/somewhere/"; `pageForAll` answers with the page where there is no such file, as some
   *   hosts do; `types` are others by ending, as a badly set up host sends them
   */
  constructor(directory, { port = 0, host = "127.0.0.1", base = "/", pageForAll = false, types = {} } = {}) {
    this.directory = path.resolve(directory);
    this.port = port;
    this.host = host;
    this.base = base;
    this.pageForAll = pageForAll;
    this.types = { ...TYPES, ...types };
    /** Every request so far: { method, url, status }. */
    this.log = [];
    this.packed = new Map();
  }

  get origin() {
    return `http://${this.host.includes(":") ? `[${this.host}]` : this.host}:${this.port}`;
  }

  get url() {
    return this.origin + this.base;
  }

  /** Starts, and starts again on the port it had. */
  async start() {
    if (this.server) return this;
    const server = createServer((request, response) => {
      this.answer(request, response).catch((error) => {
        console.error(`${request.method} ${request.url}:`, error);
        if (!response.headersSent) response.writeHead(500);
        response.end();
      });
    });
    await new Promise((resolve, reject) => {
      server.once("error", reject);
      server.listen(this.port, this.host, resolve);
    });
    this.server = server;
    this.port = server.address().port;
    return this;
  }

  /** Really stops: open connections are cut, new ones are refused. */
  async stop() {
    const { server } = this;
    if (!server) return;
    this.server = undefined;
    const closed = new Promise((resolve) => server.close(resolve));
    server.closeAllConnections();
    await closed;
  }

  async answer(request, response) {
    const send = (status, headers = {}, body = undefined) => {
      this.log.push({ method: request.method, url: request.url, status });
      response.writeHead(status, { "X-Content-Type-Options": "nosniff", ...headers });
      response.end(request.method === "HEAD" ? undefined : body);
    };
    if (request.method !== "GET" && request.method !== "HEAD") return send(405, { Allow: "GET, HEAD" });

    let pathname;
    try {
      pathname = decodeURIComponent(new URL(request.url, "http://host").pathname);
    } catch {
      return send(400);
    }
    if (`${pathname}/` === this.base) return send(301, { Location: this.base });
    if (!pathname.startsWith(this.base) || pathname.includes("\0")) return send(404, {}, "not found\n");

    let file = path.resolve(this.directory, `./${pathname.slice(this.base.length)}`);
    if (file !== this.directory && !file.startsWith(this.directory + path.sep)) return send(404, {}, "not found\n");
    try {
      if ((await stat(file)).isDirectory()) {
        if (!pathname.endsWith("/")) return send(301, { Location: `${encodeURI(pathname)}/` });
        file = path.join(file, "index.html");
      }
    } catch {
      if (!this.pageForAll) return send(404, {}, "not found\n");
      file = path.join(this.directory, "index.html");
    }

    let body;
    try {
      body = await readFile(file);
    } catch {
      return send(404, {}, "not found\n");
    }
    const digest = createHash("sha256").update(body).digest("base64url").slice(0, 22);
    const headers = {
      "Content-Type": this.types[path.extname(file)] ?? "application/octet-stream",
      "Cache-Control": HASHED.test(file) ? "public, max-age=31536000, immutable" : "no-cache",
      ETag: `"${digest}"`,
      Vary: "Accept-Encoding",
    };
    if (request.headers["if-none-match"] === headers.ETag) return send(304, headers);
    if (!/\.png$/.test(file) && /\bgzip\b/.test(request.headers["accept-encoding"] ?? "")) {
      if (!this.packed.has(digest)) this.packed.set(digest, await gzip(body, { level: 9 }));
      body = this.packed.get(digest);
      headers["Content-Encoding"] = "gzip";
    }
    headers["Content-Length"] = body.length;
    return send(200, headers, body);
  }
}

/** Starts on the wanted port, or the next free one. */
async function startNear(directory, host, wanted) {
  for (let port = wanted; ; port += 1) {
    try {
      return await new StaticServer(directory, { host, port }).start();
    } catch (error) {
      if (error.code !== "EADDRINUSE" || port >= wanted + 20) throw error;
    }
  }
}

if (process.argv[1] && path.resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const directory = process.argv[2] ?? fileURLToPath(new URL("../dist", import.meta.url));
  const host = process.env.HOST || "127.0.0.1";
  const port = Number(process.env.PORT || 8080);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    console.error(`PORT is "${process.env.PORT}", not a port number`);
    process.exit(1);
  }
  const server = await startNear(directory, host, port);
  console.log(`\n  Nightbank is at ${server.url}   (Ctrl-C stops it)\n`);
  for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => server.stop().then(() => process.exit(0)));
}
