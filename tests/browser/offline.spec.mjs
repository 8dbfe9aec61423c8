// Without a network, from a sub-path, and across updates. The server is really stopped: a browser's own offline
// switch does not reach everything a service worker does.
import assert from "node:assert/strict";
import { readFile, writeFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { eventually, freshContext, launch, pause, serve } from "./support/browser.mjs";
import { copyOfBuild, DIST, relabel } from "./support/builds.mjs";
import { Nightbank } from "./support/nightbank.mjs";

let browser;
before(async () => (browser = await launch()));
after(() => browser?.close());

test("after one visit the page opens with the server gone: reload, new tab, link with a fragment and a query", async (t) => {
  const server = await serve(t, DIST);
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await server.stop();
  await assert.rejects(fetch(server.url), "the server is really gone");

  await nightbank.reload();
  await Nightbank.open(context, server.url);
  await Nightbank.open(context, `${server.url}index.html`);
  await Nightbank.open(context, `${server.url}?from=forum`);
  watch.assertClean(server.origin);
});

test("everything the page may ask for later is stored too", async (t) => {
  const server = await serve(t, DIST);
  const { context } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  await server.stop();
  const listed = await nightbank.page.evaluate(async () => {
    const [name] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return Promise.all(requests.map(async ({ url }) => [url, (await fetch(url)).status]));
  });
  assert.ok(listed.length >= 6, `only ${listed.length} files stored`);
  assert.deepEqual(listed.filter(([, status]) => status !== 200), []);
  assert.ok(listed.some(([url]) => url.endsWith(".wasm")));
});

test("a village is found and has its climate with the server gone", async (t) => {
  const server = await serve(t, DIST);
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  await server.stop();
  await nightbank.reload();
  await nightbank.openPart("Trip");
  const place = nightbank.card("Place");
  await place.getByLabel("Another place").fill("Windermere");
  await place.getByRole("button", { name: /Windermere/ }).first().click();
  await nightbank.main().getByText(/^Sun from a climate table/).first().waitFor({ state: "attached" });
  watch.assertClean(server.origin);
});

test("works under a sub-path, and leaves the rest of the origin and its caches alone", async (t) => {
  const server = await serve(t, DIST, { base: "/some/where/" });
  const { context, watch } = await freshContext(t, browser);
  // Another project on the same origin has a cache of its own.
  const page = await context.newPage();
  await page.route(`${server.origin}/other/`, (route) => route.fulfill({ body: "<title>other</title>", contentType: "text/html" }));
  await page.goto(`${server.origin}/other/`);
  await page.evaluate(() => caches.open("other-project-v1"));

  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  assert.equal(
    await nightbank.page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).scope),
    server.url,
  );
  const names = await nightbank.caches();
  assert.ok(names.includes("other-project-v1"));
  assert.equal(names.filter((name) => name.startsWith("nightbank-")).length, 1);
  const outside = server.log.filter((entry) => !entry.url.startsWith("/some/where/") && entry.url !== "/favicon.ico");
  assert.deepEqual(outside, []);

  // A path that is not ours is not answered with the page.
  const missing = await nightbank.page.evaluate(async () => (await fetch("./nothing-here")).status);
  assert.equal(missing, 404);
  watch.complaints = watch.complaints.filter((complaint) => !/nothing-here|404/.test(complaint));

  await server.stop();
  await nightbank.reload();
  watch.assertClean(server.origin);
});

test("a newer build is fetched quietly, waits, and takes over only when asked", async (t) => {
  const build = await copyOfBuild(t);
  const first = await relabel(build, "build one");
  const server = await serve(t, build);
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  await nightbank.page.evaluate(() => localStorage.setItem("nightbank-test", "kept"));
  assert.deepEqual(await nightbank.caches(), [`nightbank-${first.version}`]);

  const second = await relabel(build, "build two");
  assert.notEqual(second.version, first.version);
  const loads = watch.loads;
  await nightbank.lookForUpdate();
  await eventually("the newer build waits", () => nightbank.updateIsWaiting());
  // What must not happen has no mark to wait for.
  await pause(nightbank.page, 500);
  assert.equal(watch.loads, loads, "nothing reloaded by itself");
  assert.equal(await nightbank.page.title(), "build one");

  // Neither does a reload or a second tab switch by itself: both builds are stored, the older one answers.
  await nightbank.reload();
  assert.equal(await nightbank.page.title(), "build one");
  assert.equal((await nightbank.caches()).length, 2);

  await nightbank.page.evaluate(async () => {
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true }));
    (await navigator.serviceWorker.getRegistration()).waiting.postMessage("skip-waiting");
    await changed;
  });
  await nightbank.reload();
  assert.equal(await nightbank.page.title(), "build two");
  assert.equal(await nightbank.page.evaluate(() => localStorage.getItem("nightbank-test")), "kept");
  await eventually("the older build is dropped", async () => (await nightbank.caches()).join() === `nightbank-${second.version}`);
  await server.stop();
  await nightbank.reload();
  assert.equal(await nightbank.page.title(), "build two");
  watch.assertClean(server.origin);
});

test("one tap on the notice loads the newer build, once; what was typed is kept", async (t) => {
  const build = await copyOfBuild(t);
  await relabel(build, "build one");
  const server = await serve(t, build);
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  const other = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  await nightbank.page.evaluate(() => localStorage.setItem("nightbank-test", "kept"));
  assert.equal(await nightbank.newVersionNotice().count(), 0);

  await relabel(build, "build two");
  await nightbank.lookForUpdate();
  await nightbank.newVersionNotice().waitFor();
  const loads = watch.loads;
  await nightbank.loadNewVersion();
  await eventually("the page is loaded anew", async () => (await nightbank.page.title()) === "build two");
  await nightbank.ready();
  // What must not happen has no mark to wait for.
  await pause(nightbank.page, 500);
  assert.equal(watch.loads, loads + 1, "one load, of the tab that asked");
  assert.equal(await nightbank.page.evaluate(() => localStorage.getItem("nightbank-test")), "kept");
  assert.equal(await nightbank.newVersionNotice().count(), 0);

  // The other tab goes on with what it has, and is told.
  assert.equal(await other.page.title(), "build one");
  await other.newVersionNotice().waitFor();
  await other.loadNewVersion();
  await eventually("the other tab follows", async () => (await other.page.title()) === "build two");
  watch.assertClean(server.origin);
});

test("the newer build also takes over when every tab was closed", async (t) => {
  const build = await copyOfBuild(t);
  await relabel(build, "build one");
  const server = await serve(t, build);
  const { context } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();
  await relabel(build, "build two");
  await nightbank.lookForUpdate();
  await eventually("the newer build waits", () => nightbank.updateIsWaiting());
  await nightbank.page.close();
  await eventually("a later visit has it", async () => {
    const page = await context.newPage();
    await page.goto(server.url);
    const title = await page.title();
    await page.close();
    return title === "build two";
  });
});

test("an upload caught half-way is not stored: the older build stays", async (t) => {
  const build = await copyOfBuild(t);
  const first = await relabel(build, "build one");
  const server = await serve(t, build);
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.storedOffline();
  await nightbank.controlled();

  // The new worker is there already, but one of its files is not.
  const worker = `${build}/sw.js`;
  await writeFile(worker, (await readFile(worker, "utf8")).replace('"files":[', '"files":["not-uploaded-yet.js",').replace(first.version, "half"));
  const updated = await nightbank.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update();
    const worker = registration.installing;
    if (!worker) return registration.waiting ? "waiting" : "none";
    return new Promise((resolve) => worker.addEventListener("statechange", () => resolve(worker.state)));
  });
  assert.equal(updated, "redundant");
  assert.deepEqual(await nightbank.caches(), [`nightbank-${first.version}`]);
  await server.stop();
  await nightbank.reload();
  assert.equal(await nightbank.page.title(), "build one");
  watch.complaints = watch.complaints.filter((complaint) => !/not-uploaded-yet|404/.test(complaint));
  watch.assertClean(server.origin);
});

for (const [what, script] of [
  ["there is none", () => delete Navigator.prototype.serviceWorker],
  ["asking for it throws", () =>
    Object.defineProperty(Navigator.prototype, "serviceWorker", {
      get() {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    })],
  ["registering throws", () => {
    // The first, empty document of a tab has no such thing.
    if (!("ServiceWorkerContainer" in window)) return;
    ServiceWorkerContainer.prototype.register = () => {
      throw new TypeError("no");
    };
  }],
  ["registering is refused", () => {
    if (!("ServiceWorkerContainer" in window)) return;
    ServiceWorkerContainer.prototype.register = () => Promise.reject(new TypeError("no"));
  }],
]) {
  test(`the page works where service workers do not: ${what}`, async (t) => {
    const server = await serve(t, DIST);
    const { context, watch } = await freshContext(t, browser);
    await context.addInitScript(script);
    const nightbank = await Nightbank.open(context, server.url);
    await nightbank.settled();
    assert.ok(await nightbank.main().isVisible());
    assert.deepEqual(watch.complaints.filter((complaint) => !complaint.includes("not kept offline")), []);
    await server.stop();
    });
}
