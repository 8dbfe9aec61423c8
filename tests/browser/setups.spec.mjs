// Setups in the browser's storage: nothing is lost, whatever storage does.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext, pause } from "./support/browser.mjs";
import { LIBRARY, SET_ASIDE, Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

/** Puts a text under a key before the page first runs, once. */
function stored(context, key, text) {
  return context.addInitScript(
    ([key, text]) => {
      if (location.origin === "null") return; // a sandboxed frame has no storage
      if (!sessionStorage.getItem("put")) localStorage.setItem(key, text);
      sessionStorage.setItem("put", "1");
    },
    [key, text],
  );
}

/** Every key in storage. */
const keys = (sharing) => sharing.page.evaluate(() => Object.keys(localStorage).sort());

test("setups are added, chosen, renamed, copied, deleted and put back", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  assert.deepEqual(await here.names(), []);
  assert.deepEqual(await keys(here), [], "looking stores nothing");
  await here.rename("Van");
  await here.press("Copy this one");
  assert.deepEqual(await here.names(), ["Van", "Van 2"]);
  await here.press("New, empty");
  assert.deepEqual(await here.chosen(), ["New setup"]);
  await here.page.getByRole("button", { name: /^Van\b(?! 2)/ }).click();
  assert.deepEqual(await here.chosen(), ["Van"]);
  await here.page.getByRole("button", { name: "Delete Van", exact: true }).click();
  assert.deepEqual(await here.names(), ["Van 2", "New setup"]);
  await here.press("Undo");
  assert.deepEqual(await here.names(), ["Van", "Van 2", "New setup"]);
  assert.deepEqual(await here.chosen(), ["Van"]);
  await here.settled();
  await here.nightbank.reload();
  assert.deepEqual(await here.names(), ["Van", "Van 2", "New setup"]);
  assert.ok((await keys(here)).every((key) => key.startsWith("nightbank.")), "own prefix only");
  watch.assertClean(server.origin);
});

test("what is on screen never runs into another setup", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("First");
  await here.press("New, empty");
  // Typed and switched away at once, before anything was written.
  await here.page.getByLabel("Name of this setup").fill("Second");
  await here.page.getByRole("button", { name: /^First/ }).click();
  await here.settled();
  const entries = JSON.parse(await here.stored()).entries.map(({ setup }) => [setup.name, setup.loads.length > 0]);
  assert.deepEqual(entries, [["First", true], ["Second", false]]);
});

test("the last keystrokes before the page goes away are kept", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.part("More");
  await here.page.getByLabel("Name of this setup").fill("Just now");
  await here.page.goto("about:blank");
  await here.nightbank.goto(server.url);
  assert.deepEqual(await here.names(), ["Just now"]);
});

test("two tabs: changes to different setups both count, to the same one both are kept", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const one = await Sharing.open(context, server.url);
  await one.rename("Van");
  await one.press("New, empty");
  await one.settled();
  const two = await Sharing.open(context, server.url);
  await two.page.getByRole("navigation").getByRole("button", { name: "More", exact: true }).click();
  await two.page.getByRole("button", { name: /^Van/ }).click();
  await two.rename("Van by the sea");
  await one.rename("Caravan");
  for (const tab of [one, two]) {
    await eventually("both tabs know both changes", async () => (await tab.names()).join() === "Van by the sea,Caravan");
  }
  assert.deepEqual(await two.chosen(), ["Van by the sea"], "each tab goes on showing its own");
  assert.deepEqual(await one.chosen(), ["Caravan"]);

  // The same setup in both, changed in both before either hears of the other.
  await one.page.getByRole("button", { name: /^Van by the sea/ }).click();
  await one.settled();
  const type = (tab, name) => tab.page.getByLabel("Name of this setup").fill(name);
  await Promise.all([type(one, "Lake"), type(two, "Hill")]);
  await one.settled();
  for (const tab of [one, two]) {
    await eventually("nothing typed is lost", async () => {
      const names = await tab.names();
      return names.includes("Lake") && names.includes("Hill") && names.length === 3;
    });
  }
  const told = `${await one.notices().innerText()} ${await two.notices().innerText()}`;
  assert.match(told, /changed in another tab too\. Both versions are kept/);
  const writes = await one.stored();
  // What must not happen has no mark to wait for.
  await pause(one.page, 700);
  assert.equal(await one.stored(), writes, "the tabs do not answer each other for ever");
  watch.assertClean(server.origin);
});

test("three tabs, one of them frozen by the browser: each change counts once it wakes", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const one = await Sharing.open(context, server.url);
  await one.rename("Van");
  await one.press("New, empty");
  await one.rename("Caravan");
  await one.press("New, empty");
  await one.rename("Boat");
  await one.settled();
  const [two, three] = [await Sharing.open(context, server.url), await Sharing.open(context, server.url)];
  const choose = async (tab, name) => {
    await tab.part("More");
    await tab.page.getByRole("button", { name: new RegExp(`^${name}`) }).click();
    await tab.settled();
  };
  await choose(two, "Van");
  await choose(three, "Caravan");
  const cdp = await context.newCDPSession(two.page);
  // Typed, and frozen before it is due to be written.
  await two.page.getByLabel("Name of this setup").fill("Van by the sea");
  await cdp.send("Page.setWebLifecycleState", { state: "frozen" });
  await three.rename("Caravan by the lake");
  await one.rename("Boat on the river");
  await cdp.send("Page.setWebLifecycleState", { state: "active" });
  const all = "Van by the sea,Caravan by the lake,Boat on the river";
  for (const tab of [one, two, three]) {
    await eventually("every tab knows every change", async () => (await tab.names()).join() === all);
  }
  await two.settled();
  assert.equal((await two.storedNames()).join(), all);
  assert.deepEqual([await one.chosen(), await two.chosen(), await three.chosen()], [["Boat on the river"], ["Van by the sea"], ["Caravan by the lake"]]);
  watch.assertClean(server.origin);
});

test("storage forbidden: told, works in memory, link and file are there", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  await context.addInitScript(() => {
    const refuse = () => {
      throw new DOMException("denied", "SecurityError");
    };
    for (const name of ["localStorage", "sessionStorage"]) Object.defineProperty(window, name, { get: refuse });
  });
  const here = await Sharing.open(context, server.url);
  assert.match(await here.notices().innerText(), /cannot store anything for this page/);
  await here.rename("Mine");
  await here.press("Copy this one");
  assert.deepEqual(await here.names(), ["Mine", "Mine 2"]);
  const { text } = await here.download(() => here.press("Save all setups as one file"));
  assert.deepEqual(JSON.parse(text).setups.map((setup) => setup.name), ["Mine", "Mine 2"]);
  assert.match(await here.link(), /#1\w+$/);
  // The address alone brings the setup back.
  await here.nightbank.reload();
  assert.deepEqual(await here.chosen(), ["Mine 2"]);
  watch.assertClean(server.origin);
});

test("storage full: told, nothing lost, written as soon as there is room", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  // Really full: as much as the browser takes.
  await here.page.evaluate(() => {
    let piece = "x".repeat(1 << 20);
    for (let n = 0; piece.length > 16; n += 1) {
      try {
        localStorage.setItem(`other.${n}`, piece);
      } catch {
        piece = piece.slice(piece.length >> 1);
      }
    }
  });
  await here.press("Copy this one");
  await eventually("told", async () => /storage is full or blocked/.test(await here.notices().innerText()));
  assert.deepEqual(await here.names(), ["Mine", "Mine 2"]);
  assert.deepEqual(await here.storedNames(), ["Mine"], "what was stored is still whole");
  await here.page.evaluate(() => {
    for (const key of Object.keys(localStorage)) if (key.startsWith("other.")) localStorage.removeItem(key);
  });
  await here.rename("Mine again");
  assert.deepEqual(await here.storedNames(), ["Mine", "Mine again"]);
  assert.doesNotMatch(await here.notices().innerText(), /storage is full/);
  watch.assertClean(server.origin);
});

test("storage that cannot be read is set aside whole, can be saved, and goes only when asked to", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const broken = '{"format":"nightbank","schema":1,"entries":[{"id":1,"setup":{"name":"Half';
  await stored(context, LIBRARY, broken);
  const here = await Sharing.open(context, server.url);
  assert.match(await here.notices().innerText(), /could not be read\. It was set aside unchanged, not deleted/);
  assert.deepEqual(JSON.parse(await here.stored(SET_ASIDE)), [broken]);
  const saved = await here.download(() => here.notices().getByRole("button", { name: "Save it as a file" }).click());
  assert.equal(saved.text, broken);
  await here.rename("New start");
  assert.deepEqual(await here.storedNames(), ["New start"]);
  await here.nightbank.reload();
  assert.deepEqual(JSON.parse(await here.stored(SET_ASIDE)), [broken], "kept from visit to visit");
  assert.doesNotMatch(await here.notices().innerText(), /could not be read/, "told once");
  await here.part("More");
  await here.page.getByText("Remove it from this browser").click();
  await here.press("Remove it for good");
  assert.equal(await here.stored(SET_ASIDE), null);
  watch.assertClean(server.origin);
});

test("one setup that cannot be read does not cost the others", async (t) => {
  const { context } = await freshContext(t, browser);
  const entry = (id, setup) => ({ id, changed_at_ms: 0, setup });
  const entries = [entry(1, { name: "Good" }), entry(2, "Bad")];
  await stored(context, LIBRARY, JSON.stringify({ format: "nightbank", schema: 1, current: 1, entries }));
  const here = await Sharing.open(context, server.url);
  assert.deepEqual(await here.names(), ["Good"]);
  const [aside] = JSON.parse(await here.stored(SET_ASIDE));
  assert.deepEqual(JSON.parse(aside), entries[1]);
});

test("a stored field that does not fit costs no more than itself, and is told once", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const loads = [{ id: 1, appliance: 1, usage: { every_evening: {} } }, { id: 2, name: "Lamp", draw: { power: { watts: 6.5 } } }];
  const setup = { name: "Van", loads, bank: { capacity_20h: 95, chemistry: "stone" }, trip: { nights: 2.5 } };
  const entries = [{ id: 1, changed_at_ms: 0, setup }];
  await stored(context, LIBRARY, JSON.stringify({ format: "nightbank", schema: 1, current: 1, entries }));
  const here = await Sharing.open(context, server.url);
  const told = await here.notices().innerText();
  assert.match(told, /2 values could not be read[\s\S]*Battery \(chemistry\); [^(]*[Ff]ridge[^(]* \(usage\)\. Please check them/);
  assert.match(told, /One value was out of range/);
  assert.match(told, /set aside unchanged, not deleted/);
  assert.deepEqual(JSON.parse(JSON.parse(await here.stored(SET_ASIDE))[0]), entries[0], "kept as it was");
  assert.deepEqual(await here.chosen(), ["Van"]);
  const kept = JSON.parse(await here.stored()).entries[0].setup;
  assert.deepEqual([kept.bank.capacity_20h, kept.bank.chemistry, kept.trip.nights], [95, "agm", 3]);
  assert.deepEqual(kept.loads.map(({ id, name }) => [id, name]), [[1, ""], [2, "Lamp"]]);
  assert.ok(kept.loads[0].usage.duty, "as in the catalogue");
  assert.equal(kept.loads[1].draw.power.watts, 6.5);
  await here.nightbank.reload();
  assert.doesNotMatch(await here.notices().innerText(), /could not be read|out of range/, "told once");
  assert.deepEqual(await here.names(), ["Van"]);
  watch.assertClean(server.origin);
});

test("where what does not fit cannot be set aside, nothing stored is written over", async (t) => {
  const { context } = await freshContext(t, browser);
  const entries = [{ id: 1, changed_at_ms: 0, setup: { name: "Van", bank: 7 } }];
  const text = JSON.stringify({ format: "nightbank", schema: 1, current: 1, entries });
  await stored(context, LIBRARY, text);
  await context.addInitScript(() => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = function (key, value) {
      if (key === "nightbank.set-aside") throw new DOMException("full", "QuotaExceededError");
      return setItem.call(this, key, value);
    };
  });
  const here = await Sharing.open(context, server.url);
  assert.match(await here.notices().innerText(), /One value could not be read[\s\S]*Battery/);
  await here.rename("Van by the sea");
  assert.deepEqual(await here.names(), ["Van by the sea"], "works in memory");
  assert.equal(await here.stored(), text);
});

test("a list of setups without any is told, until it is understood", async (t) => {
  const { context } = await freshContext(t, browser);
  await stored(context, LIBRARY, JSON.stringify({ format: "nightbank", schema: 1, current: null, entries: [] }));
  const here = await Sharing.open(context, server.url);
  const told = async () => /list of setups in this browser is empty/.test(await here.notices().innerText());
  assert.ok(await told());
  await here.nightbank.reload();
  assert.ok(await told(), "not yet understood");
  await here.press("Close");
  assert.ok(!(await told()));
  await here.nightbank.reload();
  assert.ok(!(await told()), "understood");
  // Setups of one's own, and their loss, are told anew.
  await here.rename("Mine");
  await here.nightbank.reload();
  await context.addInitScript((key) => {
    if (location.origin !== "null") localStorage.setItem(key, '{"format":"nightbank","schema":1,"entries":["lost"]}');
  }, LIBRARY);
  await here.nightbank.reload();
  assert.ok(await told());
  assert.match(await here.notices().innerText(), /set aside unchanged, not deleted/);
});

test("values out of bounds are pulled in and counted", async (t) => {
  const { context } = await freshContext(t, browser);
  const setup = { name: "Odd", trip: { nights: 7, month: 99 }, bank: { capacity_20h: -5 } };
  const library = { format: "nightbank", schema: 1, current: 1, entries: [{ id: 1, changed_at_ms: 0, setup }] };
  await stored(context, LIBRARY, JSON.stringify(library));
  const here = await Sharing.open(context, server.url);
  assert.match(await here.notices().innerText(), /2 values were out of range/);
});

test("what a newer version stored is never written over", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const newer = JSON.stringify({ format: "nightbank", schema: 99, wagons: [] });
  await stored(context, LIBRARY, newer);
  const here = await Sharing.open(context, server.url);
  assert.match(await here.notices().innerText(), /newer version of the page stored your setups/);
  await here.rename("Mine");
  assert.equal(await here.stored(), newer);
  assert.deepEqual(await here.names(), ["Mine"], "works in memory");
  watch.assertClean(server.origin);
});

test("the browser is asked once to keep the setups, after the first of one's own", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => {
    window.asked = 0;
    navigator.storage.persist = async () => {
      window.asked += 1;
      throw new Error("refused");
    };
  });
  const here = await Sharing.open(context, server.url);
  assert.equal(await here.page.evaluate(() => window.asked), 0);
  await here.rename("Mine");
  assert.equal(await here.page.evaluate(() => window.asked), 1);
  await here.rename("Mine too");
  await here.nightbank.reload();
  await here.rename("Mine again");
  assert.equal(await here.page.evaluate(() => window.asked), 0, "not asked again");
});

test("on iOS the seven days are explained once, to who has something to lose", async (t) => {
  const userAgent = "Mozilla/5.0 (iPhone; CPU iPhone OS 17_4 like Mac OS X) AppleWebKit/605.1.15 Version/17.4 Mobile/15E148 Safari/604.1";
  const { context } = await freshContext(t, browser, { userAgent });
  const here = await Sharing.open(context, server.url);
  assert.doesNotMatch(await here.notices().innerText(), /seven days/);
  await here.rename("Mine");
  assert.match(await here.notices().innerText(), /for seven days without visiting/);
  await here.press("Understood");
  await here.nightbank.reload();
  assert.doesNotMatch(await here.notices().innerText(), /seven days/);
});
