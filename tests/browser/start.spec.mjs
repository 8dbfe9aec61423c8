// The page starts, quietly, from its own files alone; and says what is wrong where it cannot.
import assert from "node:assert/strict";
import { readdir, rm } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { eventually, freshContext, serve } from "./support/browser.mjs";
import { copyOfBuild, DIST } from "./support/builds.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { LIBRARY } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

test("mounts without a complaint, a policy violation or a request to another host", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  assert.equal(await nightbank.page.locator("#shell").count(), 0, "the static outline is gone");
  assert.ok(await nightbank.main().isVisible());
  await nightbank.storedOffline();
  await nightbank.settled();
  watch.assertClean(server.origin);
  assert.deepEqual(server.log.filter((entry) => entry.status >= 400), [], "nothing asked for is missing");
  assert.deepEqual(await context.cookies(), [], "no cookies");
});

test("the content policy really stops foreign code, styles and requests", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const { page } = await Nightbank.open(context, server.url);
  const outcome = await page.evaluate(async () => {
    const script = document.createElement("script");
    script.textContent = "window.injected = true";
    document.body.append(script);
    const styled = document.createElement("p");
    styled.setAttribute("style", "position:fixed");
    document.body.append(styled);
    // In a task of its own: the browser driver may evaluate what it likes, and everything it calls directly.
    const evaluated = await new Promise((resolve) =>
      setTimeout(() => {
        try {
          resolve(Function("return 1")());
        } catch {
          resolve("stopped");
        }
      }),
    );
    const fetched = await fetch("http://other.invalid/").catch(() => "stopped");
    return { injected: window.injected, position: getComputedStyle(styled).position, evaluated, fetched };
  });
  assert.deepEqual(outcome, { injected: undefined, position: "static", evaluated: "stopped", fetched: "stopped" });
  // The events come after the deeds.
  await eventually("each of them is reported", () => {
    const reported = new Set(watch.violations.map((violation) => violation.split(":")[0]));
    return ["connect-src", "script-src", "script-src-elem", "style-src-attr"].every((directive) => reported.has(directive));
  });
});

test("the static outline stands before the wasm arrives", async (t) => {
  const { context } = await freshContext(t, browser);
  let release;
  const held = new Promise((resolve) => (release = resolve));
  await context.route(/\.wasm$/, async (route) => {
    await held;
    await route.continue();
  });
  const page = await context.newPage();
  await page.goto(server.url, { waitUntil: "commit" });
  await page.locator("#shell h1").waitFor();
  assert.match(await page.locator("#shell").innerText(), /How many nights will my battery last/);
  assert.equal(await page.locator("#app[data-ready]").count(), 0);
  release();
  await new Nightbank(page).ready();
  assert.ok(await page.locator("#trouble").isHidden());
});

test("says so when a part of the page does not arrive", async (t) => {
  const build = await copyOfBuild(t);
  const broken = await serve(t, build);
  const { context } = await freshContext(t, browser);
  for (const name of await readdir(build)) {
    if (name.endsWith(".wasm")) await rm(path.join(build, name));
  }
  const page = await context.newPage();
  await page.goto(broken.url);
  await page.locator("#trouble").waitFor({ state: "visible" });
  assert.match(await page.locator("#trouble").innerText(), /could not start[\s\S]*load the page again/);
  assert.ok(await page.locator("#shell").isHidden());
});

test("opened from a file: says that it needs a web address", async (t) => {
  const { context } = await freshContext(t, browser);
  const page = await context.newPage();
  await page.goto(pathToFileURL(path.join(DIST, "index.html")).href);
  await page.locator("#trouble").waitFor({ state: "visible" });
  assert.match(await page.locator("#trouble").innerText(), /cannot run from a file[\s\S]*http/);
});

test("without scripts: says what it needs and why", async (t) => {
  const { context } = await freshContext(t, browser, { javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(server.url);
  assert.match(await page.locator("body").innerText(), /needs JavaScript and WebAssembly/);
});

/** What is kept of the setup on the page; nothing before something is kept. */
const keptSetup = (page) =>
  page.evaluate((key) => {
    const find = (value) => (value?.bank ? value : Object.values(Object(value)).map((one) => typeof one === "object" && find(one)).find(Boolean));
    return find(JSON.parse(localStorage.getItem(key) ?? "null"));
  }, LIBRARY);

test("started empty, nothing of the example stays: neither battery, place, panels nor appliances", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  const { page } = nightbank;
  // The example is kept once something of it is changed.
  await nightbank.openPart("Appliances");
  await page.getByRole("main").getByRole("switch").first().click({ force: true });
  await eventually("the example is kept", async () => (await keptSetup(page))?.loads.length > 3);
  const example = await keptSetup(page);
  assert.ok(example.trip.place.name && example.solar.length, JSON.stringify(example));
  await page.getByRole("button", { name: "Start with your own" }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Start empty" }).click();
  await eventually("no appliance is left", async () => (await keptSetup(page))?.loads.length === 0);
  const empty = await keptSetup(page);
  assert.deepEqual([empty.solar, empty.other, empty.readings, empty.cables, empty.example], [[], [], [], [], false]);
  assert.notDeepEqual(empty.trip.place, example.trip.place);
  assert.notDeepEqual(empty.bank, example.bank);
  assert.ok(!JSON.stringify(empty).includes(example.trip.place.name));
  assert.deepEqual([empty.inverter.fitted, empty.driving.fitted, empty.hook_up.fitted], [false, false, false]);
  watch.assertClean(server.origin);
});

test("a missing file is a 404, not the page", async (t) => {
  const response = await fetch(new URL("no-such-file.js", server.url));
  assert.equal(response.status, 404);
  const wasm = server.log.find((entry) => entry.url.endsWith(".wasm"));
  const served = await fetch(new URL(wasm.url, server.origin));
  assert.equal(served.headers.get("content-type"), "application/wasm");
});

test("without the part that keeps setups the answer is there, and the page says so and fetches it again", async (t) => {
  const { context } = await freshContext(t, browser);
  const page = await context.newPage();
  let cut = true;
  await page.route(/\/part-storage-[0-9a-f]/, (route) => (cut ? route.abort() : route.continue()));
  await page.goto(server.url);
  const notice = page.getByRole("alert").filter({ hasText: "could not be loaded" });
  await notice.waitFor();
  assert.match(await page.getByTestId("answer-figure").innerText(), /\d+\s+nights?/);
  assert.equal(await page.locator("#app[data-keeps]").count(), 0);
  cut = false;
  await notice.getByRole("button", { name: "Try again" }).click();
  await page.locator("#app[data-keeps]").waitFor();
  await notice.waitFor({ state: "detached" });
});
