// Browsers that lack something, and hosts that answer with something else: told in plain words, or done without.
import assert from "node:assert/strict";
import { readFile, readdir, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { test } from "node:test";
import { eventually, freshContext, serve } from "./support/browser.mjs";
import { copyOfBuild, DIST, relabel } from "./support/builds.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

/** What the page says instead of starting. */
async function trouble(t, { prepare = () => {}, url = server.url, locale = "en-GB" } = {}) {
  const { context } = await freshContext(t, browser, { locale });
  await context.addInitScript(prepare);
  const page = await context.newPage();
  await page.goto(url);
  await page.locator("#trouble").waitFor({ state: "visible" });
  assert.ok(await page.locator("#shell").isHidden(), "nothing that looks as if it were still coming");
  return page.locator("#trouble").innerText();
}

/** Other words for the same, each in one language. */
const OLD = { "en-GB": /too old[\s\S]*Safari 15\.4, Chrome 96, Firefox 98/, "de-DE": /zu alt/, "fr-FR": /trop ancien/, "nl-NL": /te oud/ };

for (const [locale, words] of Object.entries(OLD)) {
  test(`a browser without dialogs is told that it is too old, in ${locale}`, async (t) => {
    assert.match(await trouble(t, { prepare: () => delete HTMLDialogElement.prototype.showModal, locale }), words);
  });
}

test("a browser of before WebAssembly is too old", async (t) => {
  const prepare = () => {
    delete HTMLDialogElement.prototype.showModal;
    delete window.WebAssembly;
  };
  assert.match(await trouble(t, { prepare }), OLD["en-GB"]);
});

test("a browser whose WebAssembly has no references is too old", async (t) => {
  const prepare = () => {
    // As an engine without them: a table (section 4) may hold functions (0x70) and nothing else.
    const { validate } = WebAssembly;
    WebAssembly.validate = (bytes) => !(bytes[8] === 4 && bytes[11] !== 0x70) && validate(bytes);
  };
  assert.match(await trouble(t, { prepare }), OLD["en-GB"]);
});

const OFF = { "en-GB": /switched off[\s\S]*lockdown mode[\s\S]*exception/i, "de-DE": /ausgeschaltet[\s\S]*Ausnahme/, "fr-FR": /désactivé[\s\S]*exception/, "nl-NL": /staat uit[\s\S]*uitzondering/ };

for (const [locale, words] of Object.entries(OFF)) {
  test(`a newer browser without WebAssembly is told what to do, in ${locale}`, async (t) => {
    assert.match(await trouble(t, { prepare: () => delete window.WebAssembly, locale }), words);
  });
}

for (const [what, prepare] of [
  ["Intl", () => delete window.Intl],
  ["dates, plurals and names of languages", () => ["DateTimeFormat", "PluralRules", "getCanonicalLocales"].forEach((name) => delete Intl[name])],
  ["numbers with options", () => {
    const own = Intl.NumberFormat;
    Intl.NumberFormat = function (locales, options) {
      if (options && Object.keys(options).length) throw new RangeError("no such option");
      return new own(locales);
    };
  }],
  ["kinds of navigation, media queries, clipboard, share sheet and weak references", () => {
    delete Performance.prototype.getEntriesByType;
    ["matchMedia", "FinalizationRegistry", "WeakRef"].forEach((name) => delete window[name]);
    ["clipboard", "share"].forEach((name) => delete Navigator.prototype[name]);
  }],
  ["performance", () => delete window.performance],
]) {
  test(`without ${what} the page starts, answers and opens every part`, async (t) => {
    const { context } = await freshContext(t, browser);
    await context.addInitScript(prepare);
    const nightbank = await Nightbank.open(context, server.url);
    const { page } = nightbank;
    assert.match(await page.getByTestId("answer-figure").innerText(), /^\d+\s+nights?$/);
    for (const part of ["Appliances", "Power", "Trip", "Improve", "More", "Nights"]) {
      await page.getByRole("navigation").getByRole("button", { name: part, exact: true }).click();
      await page.locator("main h1").first().waitFor({ state: "attached" });
    }
    await nightbank.settled();
    assert.equal(await page.locator("#recovery").count(), 0);
    assert.ok(await nightbank.trouble().isHidden());
  });
}

test("a browser that cannot unpack takes the plain tables, also with the server gone", async (t) => {
  const own = await serve(t, DIST);
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => delete window.DecompressionStream);
  // The service worker too lacks it.
  await context.route(/\/sw\.js$/, async (route) => route.fulfill({ contentType: "text/javascript", body: `delete self.DecompressionStream;${await readFile(path.join(DIST, "sw.js"), "utf8")}` }));
  const nightbank = await Nightbank.open(context, own.url);
  await nightbank.openPart("Trip");
  const place = nightbank.card("Place");
  await place.getByLabel("Another place").fill("Windermere");
  await place.getByRole("button", { name: /Windermere/ }).first().click();
  await nightbank.main().getByText(/^Sun from a climate table/).first().waitFor({ state: "attached" });
  assert.deepEqual(own.log.filter(({ url }) => /\/(climate\.bin|places\.txt)$/.test(url)), []);
  // The page keeps working without a network, and with what it had.
  await nightbank.storedOffline();
  const stored = await nightbank.page.evaluate(async () => (await (await caches.open((await caches.keys())[0])).keys()).map(({ url }) => url.split("/").pop()));
  assert.deepEqual(["climate.bin", "places.txt", "plain-climate.bin", "plain-places.txt"].map((name) => stored.includes(name)), [false, false, true, true]);
});

test("an error in the page is not put down to the network", async (t) => {
  const { context } = await freshContext(t, browser);
  // Nothing of the program comes, so that what is told is told of this error alone.
  await context.route(/\.wasm$/, () => {});
  await context.addInitScript(() => addEventListener("DOMContentLoaded", () => Promise.reject(new RangeError("for a test"))));
  const page = await context.newPage();
  await page.goto(server.url, { waitUntil: "commit" });
  await page.locator("#trouble").waitFor({ state: "visible" });
  assert.match(await page.locator("#trouble").innerText(), /Everything arrived, but something failed/);
});

/** A copy of the build, and the names of its files that match. */
async function copyWith(t, pattern) {
  const directory = await copyOfBuild(t);
  const names = (await readdir(directory)).filter((name) => pattern.test(name));
  assert.ok(names.length, String(pattern));
  return { directory, files: names.map((name) => path.join(directory, name)) };
}

for (const [what, pattern] of [
  ["the script of the program", /^nightbank-[0-9a-f]+\.js$/],
  ["the script of the parts", /^parts-[0-9a-f]+\.js$/],
  ["the program", /_bg\.wasm$/],
]) {
  for (const [host, options] of [["nothing", {}], ["the page", { pageForAll: true }]]) {
    test(`a host that has ${host} in the place of ${what}: told, and nothing of it is stored`, async (t) => {
      const { directory, files } = await copyWith(t, pattern);
      for (const file of files) await rm(file);
      const host = await serve(t, directory, options);
      assert.match(await trouble(t, { url: host.url }), /part of the page did not arrive/);
    });
  }
}

for (const [what, spoil] of [
  ["missing", (file) => rm(file)],
  ["cut short", async (file) => writeFile(file, (await readFile(file)).subarray(0, 40_000))],
]) {
  for (const pageForAll of [false, true]) {
    test(`a part that is ${what}, ${pageForAll ? "the page in its place" : "a plain host"}: said there, the rest works, and it comes when it is whole`, async (t) => {
      const { directory, files } = await copyWith(t, /^part-change-/);
      const [file] = files;
      const whole = await readFile(file);
      await spoil(file);
      const host = await serve(t, directory, { pageForAll });
      const { context } = await freshContext(t, browser);
      const nightbank = new Nightbank(await context.newPage());
      await nightbank.goto(host.url);
      await nightbank.page.getByRole("navigation").getByRole("button", { name: "Improve", exact: true }).click();
      const notice = nightbank.page.getByText("This part could not be loaded").first();
      await notice.waitFor();
      assert.deepEqual(await nightbank.page.evaluate(() => caches.keys()), [], "half a build is not stored");
      await nightbank.openPart("Trip");
      await nightbank.page.getByRole("navigation").getByRole("button", { name: "Improve", exact: true }).click();
      await notice.waitFor();
      await writeFile(file, whole);
      await nightbank.page.getByRole("button", { name: "Try again" }).first().click();
      await nightbank.main().locator("button[data-part=ways]").waitFor();
    });
  }
}

test("wrong types: a program sent as mere bytes runs; scripts sent as text are told", async (t) => {
  const { context } = await freshContext(t, browser);
  const bytes = await serve(t, DIST, { types: { ".wasm": "application/octet-stream", ".webmanifest": "text/plain", ".ftl": "application/octet-stream" } });
  const nightbank = await Nightbank.open(context, bytes.url);
  await nightbank.openPart("Improve");
  const text = await serve(t, DIST, { types: { ".js": "text/plain" } });
  assert.match(await trouble(t, { url: text.url }), /part of the page did not arrive/);
});

test("an older page out of some store, whose files are gone: told, and a reload brings the new one", async (t) => {
  const { directory, files } = await copyWith(t, /^(nightbank|parts)-[0-9a-f]+\.js$/);
  for (const file of files) await rename(file, `${file}.newer`);
  const host = await serve(t, directory);
  const { context } = await freshContext(t, browser);
  const page = await context.newPage();
  await page.goto(host.url);
  await page.locator("#trouble").waitFor({ state: "visible" });
  for (const file of files) await rename(`${file}.newer`, file);
  await page.reload();
  await new Nightbank(page).ready();
});

for (const [what, spoil] of [
  ["cut short", (whole) => whole.subarray(0, 40_000)],
  ["the host's own page", () => "<!doctype html><title>Welcome</title>"],
]) {
  test(`an update of which a file is ${what} is not stored: the older build stays, and works with the server gone`, async (t) => {
    const { directory, files } = await copyWith(t, /^part-change-/);
    const first = await relabel(directory, "build one");
    const host = await serve(t, directory);
    const { context } = await freshContext(t, browser);
    const nightbank = await Nightbank.open(context, host.url);
    await nightbank.storedOffline();
    await nightbank.controlled();
    await relabel(directory, "build two");
    await writeFile(files[0], spoil(await readFile(files[0])));
    const ended = await nightbank.page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      const found = new Promise((resolve) => registration.addEventListener("updatefound", () => resolve(registration.installing), { once: true }));
      await registration.update().catch(() => {});
      const worker = await found;
      if (worker.state === "redundant") return "redundant";
      return new Promise((resolve) => worker.addEventListener("statechange", () => resolve(worker.state)));
    });
    assert.equal(ended, "redundant");
    assert.deepEqual(await nightbank.caches(), [`nightbank-${first.version}`]);
    await host.stop();
    await nightbank.reload();
    assert.equal(await nightbank.page.title(), "build one");
    await nightbank.openPart("Improve");
  });
}

test("a language that the host answers with its page is told, and the one in force stays", async (t) => {
  const directory = await copyOfBuild(t);
  await rm(path.join(directory, "i18n/nl.ftl"));
  const host = await serve(t, directory, { pageForAll: true });
  const { context } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, host.url);
  await nightbank.openPart("More");
  await nightbank.page.getByRole("radio", { name: "Nederlands" }).check({ force: true });
  await nightbank.page.getByText(/could not be loaded/).first().waitFor();
  assert.equal(await nightbank.page.evaluate(() => document.documentElement.lang), "en");
  await eventually("English is still chosen", () => nightbank.page.getByRole("radio", { name: "English" }).isChecked());
});

test("left and come back to, the page goes on", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Power");
  await nightbank.card("Battery").getByLabel("Capacity of each battery").fill("82.5");
  await nightbank.settled();
  await nightbank.page.goto("about:blank");
  await nightbank.page.goBack();
  await nightbank.ready();
  await nightbank.openPart("Power");
  assert.equal(await nightbank.card("Battery").getByLabel("Capacity of each battery").inputValue(), "82.5");
  watch.assertClean(server.origin);
});

test("a storm of taps and keys, and tabs switched while odds are played: the page lives", { timeout: 240_000 }, async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  const errors = [];
  here.page.on("pageerror", (error) => errors.push(String(error)));
  await here.rename("Mine");
  const done = await here.page.evaluate(async () => {
    // Park and Miller's sequence: the same storm at every run.
    let seed = 20261128;
    const below = (n) => (seed = (seed * 48271) % 2147483647) % n;
    const pause = () => new Promise((resolve) => setTimeout(resolve, 0));
    const kept = /link|file|save|delete|remove|print|share|post|PNG|SVG|CSV|Deutsch|Français|Nederlands/i;
    const words = (one) => `${one.innerText} ${one.ariaLabel ?? ""} ${[...(one.labels ?? [])].map((label) => label.innerText)}`;
    let taps = 0;
    for (let n = 0; n < 400; n += 1) {
      const seen = [...document.querySelectorAll("button, summary, input, select")].filter((one) => one.checkVisibility?.() && !kept.test(words(one)));
      const one = seen[below(seen.length)];
      if (!one) continue;
      taps += 1;
      if (one.matches("input[type=text], input[inputmode], input:not([type])")) {
        one.focus();
        one.value = ["", "-", "1e9", "0", "7,5", "ä b", "999999999999"][below(7)];
        for (const kind of ["input", "change"]) one.dispatchEvent(new Event(kind, { bubbles: true }));
        one.blur();
      } else if (one.matches("select")) {
        one.selectedIndex = below(one.options.length);
        one.dispatchEvent(new Event("change", { bubbles: true }));
      } else if (!one.matches("input[type=file]")) one.click();
      if (n % 5 === 0) (document.activeElement ?? document.body).dispatchEvent(new KeyboardEvent("keydown", { key: ["Escape", "Enter", "Tab", "ArrowDown", "Delete"][below(5)], bubbles: true }));
      if (n % 4 === 0) await pause();
    }
    document.querySelectorAll("dialog[open]").forEach((one) => one.close());
    // Each switch asks for what the last one began to play.
    const tabs = document.querySelectorAll("[data-testid=tab]");
    for (let n = 0; n < 100; n += 1) {
      tabs[below(tabs.length)].click();
      if (n % 3 === 0) await pause();
    }
    return taps;
  });
  assert.ok(done > 300, `${done} taps`);
  assert.equal(await here.page.locator("#recovery").count(), 0);
  // Some browsers tell as an error that a size was watched while it changed.
  assert.deepEqual(errors.filter((error) => !/ResizeObserver loop/.test(error)), []);
  await here.settled();
  // A sheet that the storm asked for opens once its part is there.
  const sheets = here.page.locator("dialog[open]");
  await eventually("what has opened since closes with Escape", async () => {
    if (!(await sheets.count())) return true;
    await here.page.keyboard.press("Escape");
    return false;
  });
  await here.part("Nights");
  await here.page.locator("main h1").first().waitFor({ state: "attached" });
  await here.part("Trip");
});

test("a hundred damaged links, one after the other: the page lives, and nothing of one's own is touched", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const fragment = new URL(await here.link()).hash.slice(1);
  const stored = await here.stored();
  const met = await here.page.evaluate(async (fragment) => {
    const LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
    // Park and Miller's sequence: the same links at every run.
    let seed = 20261128;
    const below = (n) => (seed = (seed * 48271) % 2147483647) % n;
    const letter = () => LETTERS[below(62)];
    const kinds = [
      () => fragment.slice(0, 1 + below(fragment.length)),
      () => [...fragment].map((one) => (below(20) ? one : letter())).join(""),
      () => "1" + Array.from({ length: below(400) }, letter).join(""),
      () => fragment + Array.from({ length: below(60) }, letter).join(""),
      () => encodeURIComponent(String.fromCodePoint(...Array.from({ length: 1 + below(40) }, () => 32 + below(60_000)).filter((point) => point < 0xd800 || point > 0xdfff), 49)),
      () => "1" + letter().repeat(below(8_000)),
    ];
    const met = new Set();
    for (let n = 0; n < 102; n += 1) {
      location.hash = kinds[n % kinds.length]();
      await new Promise((resolve) => setTimeout(resolve, 8));
      met.add(document.querySelector("[data-testid=notices]")?.innerText.slice(0, 60) ?? "");
    }
    return [...met];
  }, fragment);
  assert.ok(met.length >= 3, `they are told apart: ${met.join(" | ")}`);
  assert.equal(await here.page.locator("#recovery").count(), 0);
  assert.equal(await here.stored(), stored);
  await here.page.evaluate(() => history.replaceState(null, "", location.pathname));
  await here.nightbank.reload();
  assert.deepEqual(await here.chosen(), ["Mine"]);
});
