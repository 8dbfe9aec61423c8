// The main job in browsers of three engines, as a camper does it: one suite for all of them.
//
// Leaves pictures of the parts of the page in tests/output/pictures/, to be looked at.
import assert from "node:assert/strict";
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { after, before, describe, test } from "node:test";
import { constants, inflateSync } from "node:zlib";
import { Key } from "selenium-webdriver";
import { eventually, serve } from "./support/browser.mjs";
import { watchedBuild } from "./support/builds.mjs";
import { Camper } from "./support/camper.mjs";
import { Driver, ENGINES } from "./support/engines.mjs";
import { PICTURES } from "./support/views.mjs";

const [NIGHTS, APPLIANCES, POWER, TRIP, IMPROVE, MORE] = [0, 1, 2, 3, 4, 5];
const PARTS = ["nights", "appliances", "power", "trip", "improve", "more"];

/** A small phone [CSS px]. */
const PHONE = [360, 640];

/** What the widths of the pictures stand for: a small old phone, a phone, a tablet, a desk [CSS px]. */
const PICTURED = [320, 360, 820, 1280];

/** The number of pages of a PDF, whose list of objects may be packed. */
function pagesOf(pdf) {
  const text = pdf.toString("latin1");
  const unpacked = [...text.matchAll(/stream\r?\n/g)].map(({ index, 0: { length } }) => {
    try {
      return inflateSync(pdf.subarray(index + length), { finishFlush: constants.Z_SYNC_FLUSH }).toString("latin1");
    } catch {
      return ""; // not packed, or the end of a stream
    }
  });
  return [text, ...unpacked].join("\n").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

for (const engine of ENGINES) {
  describe(engine.name, { skip: engine.missing && `${engine.name} is not to be had: ${engine.missing}` }, () => {
    /** @type {Driver} */
    let driver;
    /** @type {import("selenium-webdriver").WebDriver} */
    let session;
    let build;

    before(async () => {
      build = await watchedBuild();
      driver = await Driver.start(engine);
      session = await driver.browser();
      console.log(`Tried with ${driver.version}`);
    });

    after(async () => {
      await session?.quit().catch(() => {});
      driver?.stop();
      await build?.remove();
    });

    /** The page on a server of its own: another origin for each test, so nothing stored is left of the one before. */
    async function visit(t, query = "") {
      const server = await serve(t, build.directory);
      await driver.resize(session, ...PHONE);
      const camper = new Camper(session);
      await camper.open(server.url + query);
      return { camper, server };
    }

    test("starts and answers, with odds and a chart; every part opens, with room for all of it and without a complaint", async (t) => {
      const { camper, server } = await visit(t);
      const answer = await camper.answer();
      assert.match(answer[0], /^\d+ nights?$/);
      assert.ok(answer.filter((one) => /\d+ ?%/.test(one)).length >= 7, answer.join(" | "));
      await eventually("a chart", async () => (await camper.coloursOfChart()) > 3, { timeout_ms: 30_000 });
      for (const part of [APPLIANCES, POWER, TRIP, IMPROVE, MORE]) {
        await camper.part(part);
        await camper.ask(() => document.querySelectorAll("main details").forEach((details) => (details.open = true)));
        await session.sleep(200);
        assert.ok((await camper.overflow()) <= 0, `${PARTS[part]} is ${await camper.overflow()} px too wide`);
      }
      await camper.settled();
      assert.deepEqual(server.log.filter(({ status }) => status >= 400), []);
      assert.deepEqual(await camper.complaints(), []);
    });

    test("an appliance is added and set, with comma or point, and is there after a reload; keys do as well as taps", async (t) => {
      const { camper } = await visit(t);
      const nights = await camper.nights();
      await camper.part(APPLIANCES);
      await camper.add("toast", "/^Toaster/");
      await camper.type("How long a day", "60");
      await camper.unfold("/More exact/");
      await camper.type("Power", "800,5");
      await eventually("fewer nights", async () => (await camper.nights()) < nights);
      await camper.type("Power", "87.25");
      await camper.type("How long a day", "12x");
      await eventually("a message", async () => /not a number/.test(await camper.faultOf("How long a day")));
      assert.equal(await camper.contentOf("How long a day"), "12x", "what was typed stays");
      await camper.type("How long a day", "30");
      await camper.type("Power", "95,5");
      await camper.select("Group", "Water");
      await camper.press("Done");
      await camper.settled();
      await camper.reload();
      await camper.part(APPLIANCES);
      await camper.openAppliance("Toaster");
      await camper.unfold("/More exact/");
      assert.equal(await camper.contentOf("Power"), "95.5");
      assert.equal(await camper.contentOf("How long a day"), "30");
      assert.equal(await camper.chosenOf("Group"), "Water");
      // Keys alone: away from the sheet, back where they were, and into it again.
      await camper.escape();
      await eventually("the focus is back", () => camper.ask(() => document.activeElement.innerText.includes("Toaster")));
      await session.actions().sendKeys(Key.ENTER).perform();
      await camper.found("button", "Done");
      await eventually("the focus is in the sheet", () => camper.ask(() => document.querySelector("dialog[open]").contains(document.activeElement)));
      await camper.escape();
      assert.deepEqual(await camper.complaints(), []);
    });

    test("day and switch are set, and kept", async (t) => {
      const { camper } = await visit(t);
      await camper.part(TRIP);
      await camper.pickDay("Arrival", "2026-12-20");
      await camper.reads(/\bDec/);
      await camper.part(POWER);
      await camper.choose("An inverter is fitted");
      await eventually("it is on", () => camper.isOn("An inverter is fitted"));
      await camper.settled();
      await camper.reload();
      await camper.part(TRIP);
      assert.equal(await camper.contentOf("Arrival"), "2026-12-20");
      await camper.part(POWER);
      assert.ok(await camper.isOn("An inverter is fitted"));
      assert.deepEqual(await camper.complaints(), []);
    });

    test("a setup goes as a link: copied, opened beside one's own, kept", async (t) => {
      const { camper, server } = await visit(t);
      await camper.part(MORE);
      await camper.type("Name of this setup", "Lakeside");
      await camper.settled();
      const [answer] = await camper.answer();
      await camper.part(MORE);
      const link = await camper.contentOf("This setup as a link");
      assert.ok(link.startsWith(`${server.url}#1`), link);
      await camper.press("Copy the link");
      await camper.reads(/Copied/i);
      await camper.paste("/^Paste a link/");
      await eventually("the link is there", async () => (await camper.contentOf("/^Paste a link/")) === link);

      // Beside one's own, on another device.
      await visit(t);
      await camper.part(MORE);
      await camper.type("Name of this setup", "Mine");
      await camper.settled();
      await camper.ask((hash) => void (location.hash = hash), new URL(link).hash);
      await camper.reads(/a setup from a link: Lakeside/);
      assert.equal((await camper.answer())[0], answer);
      await camper.press("Keep in your setups");
      await camper.part(MORE);
      assert.deepEqual(await camper.setups(), ["Mine", "Lakeside"]);
      assert.deepEqual(await camper.complaints(), []);
    });

    test("four languages and four looks, kept", async (t) => {
      const { camper } = await visit(t);
      await camper.part(MORE);
      for (const [name, lang, nights] of [["Deutsch", "de", /N[aä]cht/], ["Français", "fr", /nuits?/], ["Nederlands", "nl", /nacht/], ["English", "en", /nights?/]]) {
        await camper.choose(name);
        await eventually(lang, () => camper.ask((lang) => document.documentElement.lang === lang, lang));
        await camper.part(NIGHTS);
        await camper.reads(nights);
        await camper.part(MORE);
      }
      const paper = () => camper.ask(() => getComputedStyle(document.body).backgroundColor);
      const papers = new Set();
      for (const look of ["Light", "Dark", "Red, for night vision", "Same as device"]) {
        await camper.choose(look);
        papers.add(await paper());
      }
      assert.equal(papers.size, 3, [...papers].join(" "));
      await camper.choose("Dark");
      const dark = await paper();
      await camper.reload();
      assert.equal(await paper(), dark);
      assert.deepEqual(await camper.complaints(), []);
    });

    test("printed, the answer is one sheet of paper", async (t) => {
      const { camper } = await visit(t);
      await camper.answer();
      await camper.part(MORE);
      await camper.type("Name of this setup", "Lakeside");
      await camper.settled();
      await camper.ask(() => void dispatchEvent(new Event("beforeprint")));
      const paper = () => document.querySelector("[data-testid=paper]")?.textContent ?? "";
      await eventually("the paper", async () => /Lakeside[\s\S]*night[\s\S]*What uses most/.test(await camper.ask(paper)));
      // One driver prints without telling the page before: the paper still lies there.
      if (engine.prints) {
        assert.equal(pagesOf(Buffer.from(await session.printPage(), "base64")), 1, "pages");
      }
      await camper.ask(() => void dispatchEvent(new Event("afterprint")));
      assert.equal(await camper.ask(paper), "");
      assert.deepEqual(await camper.complaints(), []);
    });

    test("with the server gone it opens again: reloaded, in another tab, by a link", async (t) => {
      const { camper, server } = await visit(t);
      await camper.part(MORE);
      await camper.type("Name of this setup", "Lakeside");
      await camper.settled();
      const link = await camper.contentOf("This setup as a link");
      await camper.storedOffline();
      await server.stop();
      await assert.rejects(fetch(server.url), "the server is really gone");
      await camper.reload();
      for (const part of [APPLIANCES, POWER, TRIP, IMPROVE, MORE]) await camper.part(part);
      assert.deepEqual(await camper.setups(), ["Lakeside"]);
      const first = await session.getWindowHandle();
      await session.switchTo().newWindow("tab");
      const other = new Camper(session);
      await other.open(link);
      assert.match((await other.answer())[0], /^\d+ nights?$/);
      await session.close();
      await session.switchTo().window(first);
    });

    test("where nothing may be stored it says so, and works", async (t) => {
      const { camper } = await visit(t, "?without-storage");
      await camper.reads(/cannot store anything for this page/);
      await camper.part(APPLIANCES);
      await camper.add("toast", "/^Toaster/");
      await camper.press("Done");
      assert.ok((await camper.appliances()).includes("Toaster"));
      await camper.part(MORE);
      assert.match(await camper.contentOf("This setup as a link"), /#1\w+$/);
    });

    test("pictures, with room for every part at every width", async (t) => {
      const { camper } = await visit(t);
      await camper.answer();
      await mkdir(PICTURES, { recursive: true });
      for (const part of [NIGHTS, APPLIANCES, POWER, TRIP, IMPROVE, MORE]) {
        await camper.part(part);
        for (const width of PICTURED) {
          await driver.resize(session, width, width < 700 ? 740 : 800);
          await camper.ask(() => scrollTo(0, 0));
          await session.sleep(150);
          const name = `${engine.name.toLowerCase()}-${PARTS[part]}-${width}.png`;
          await writeFile(path.join(PICTURES, name), await session.takeScreenshot(), "base64");
          assert.ok((await camper.overflow()) <= 0, name);
        }
        await driver.resize(session, ...PHONE);
      }
    });
  });
}
