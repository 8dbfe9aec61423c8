// The service worker: keeps one complete build of the page on the device.
//
// The build step fills in BUILD (see stage.mjs): `version` is a hash over the bytes of every file, `files` is
// everything the page may ask for, `parts` are the hashed files that the page of this build names, `sums` says what the
// bytes of a file have to be.
const BUILD = /*BUILD*/ { version: "dev", files: [], parts: [], sums: {} };

// Origins are shared (many projects live under one github.io name): touch only caches with our own prefix.
const PREFIX = "nightbank-";
const CACHE = PREFIX + BUILD.version;
const PAGE = new URL("./", self.location).href;
// Mail programs and share plugins write "#" as "%23": a shared link is then asked for as a file of that name.
const LINK_AS_FILE = `${PAGE}%23`;
// Tables come packed, and plain for browsers that cannot unpack them: one of both is enough.
const unpacks = "DecompressionStream" in self;
const packedOf = (file) => file.replace(/^plain-/, "");
const spare = (file) => (unpacks ? file !== packedOf(file) : BUILD.files.includes(`plain-${file}`));
const FILES = BUILD.files.filter((file) => !spare(file));
const LISTED = new Set(FILES.map((file) => new URL(file, self.location).href));

// All of it or nothing: a build that is only partly kept would be a dead page without a network.
async function keepThisBuild() {
  const responses = await Promise.all(
    ["", ...FILES].map(async (file) => {
      const url = new URL(file || "./", self.location).href;
      // "no-cache" asks the server whether a stored copy is still good, so nothing stale gets in. The browser compares the
      // sum: a host may answer with a page of its own in the place of a file, or with half of it.
      const asked = { cache: "no-cache", credentials: "same-origin", integrity: BUILD.sums[file] ?? "" };
      const response = await fetch(new Request(url, asked));
      if (!response.ok) throw new Error(`${url}: ${response.status}`);
      return [url, response];
    }),
  );
  // In the middle of an upload the server may hand out the older page together with this worker.
  const page = await responses[0][1].clone().text();
  const missing = BUILD.parts.filter((part) => !page.includes(part));
  if (missing.length) throw new Error(`the page on the server is of another build (no ${missing[0]})`);

  const cache = await caches.open(CACHE);
  try {
    await Promise.all(responses.map(async ([url, response]) => cache.put(url, await unredirected(response))));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

// A navigation may not be answered with a response that was redirected on its way in.
async function unredirected(response) {
  if (!response.redirected) return response;
  return new Response(await response.blob(), { headers: response.headers });
}

async function dropOtherBuilds() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)));
}

async function fromThisBuild(url, request) {
  const cache = await caches.open(CACHE);
  // The browser may have evicted it: the network is then as good as on the first visit.
  return (await cache.match(url)) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(keepThisBuild()));

self.addEventListener("activate", (event) =>
  event.waitUntil(dropOtherBuilds().then(() => self.clients.claim())),
);

// A new build waits until every tab is closed, or until someone says so in the page: never in the middle of an edit.
self.addEventListener("message", (event) => {
  if (event.data === "skip-waiting") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  const url = new URL(event.request.url);
  url.search = "";
  url.hash = "";
  const href = url.href;
  if (href === PAGE || (event.request.mode === "navigate" && href === PAGE + "index.html")) {
    event.respondWith(fromThisBuild(PAGE, event.request));
  } else if (event.request.mode === "navigate" && href.startsWith(LINK_AS_FILE)) {
    event.respondWith(Response.redirect(`${PAGE}#${href.slice(LINK_AS_FILE.length)}`));
  } else if (LISTED.has(href)) {
    event.respondWith(fromThisBuild(href, event.request));
  }
  // Anything else is not ours: the browser does what it would do without a service worker.
});
