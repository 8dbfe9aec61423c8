// The main job: open, add an appliance, edit it, read one's own number of nights, find it again after a reload.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext, PHONE } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

/** The page with its invented example, open at the appliances. */
async function atLoads(t, options) {
  const { context, watch } = await freshContext(t, browser, options);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Appliances");
  t.after(() => watch.assertClean(server.origin));
  return nightbank;
}

const row = (nightbank, name) => nightbank.page.getByTestId("load").filter({ hasText: name });
const energy = async (nightbank, name) =>
  Number((await row(nightbank, name).getByTestId("load-energy").first().innerText()).replace(/[^\d.]/g, ""));
const nights = (nightbank) => nightbank.page.getByTestId("answer-bar-figure").innerText();

async function add(nightbank, search, name) {
  await nightbank.page.getByRole("button", { name: "Add an appliance" }).click();
  const sheet = nightbank.page.getByRole("dialog");
  await sheet.getByRole("searchbox").fill(search);
  await sheet.getByRole("button", { name }).first().click();
  await sheet.getByRole("button", { name: "Done", exact: true }).click();
}

test("an appliance is found by a word, added in two taps, edited, and there after a reload", async (t) => {
  const nightbank = await atLoads(t, PHONE);
  const before_ = await nights(nightbank);
  await add(nightbank, "toast", /^Toaster/);
  const toaster = row(nightbank, "Toaster");
  await toaster.getByTestId("load-button").click();
  await toaster.getByLabel("Power", { exact: true }).fill("800,5");
  await toaster.getByLabel("or minutes a day").fill("60");
  // 800.5 W for one hour is 800.5 Wh at the socket, more at the battery.
  await eventually("the energy follows", async () => (await energy(nightbank, "Toaster")) > 800.5);
  await eventually("fewer nights", async () => Number.parseInt(await nights(nightbank), 10) < Number.parseInt(before_, 10));
  const after_ = await nights(nightbank);
  assert.equal(await nightbank.overflows(), false);
  await nightbank.settled();
  await nightbank.reload();
  await nightbank.openPart("Appliances");
  assert.equal(await row(nightbank, "Toaster").count(), 1);
  await eventually("the same nights", async () => (await nights(nightbank)) === after_);
  await row(nightbank, "Toaster").getByTestId("load-button").click();
  assert.equal(await row(nightbank, "Toaster").getByLabel("Power", { exact: true }).inputValue(), "800.5");
});

test("watts and amperes follow each other", async (t) => {
  const nightbank = await atLoads(t);
  const panel = row(nightbank, "Control panel");
  await panel.getByTestId("load-button").click();
  await panel.getByLabel("or current").fill("0.26");
  await panel.getByLabel("or current").blur();
  // 0.26 A at 12 V is over 70 Wh a day (common practice, no source).
  const power = panel.getByLabel("Power", { exact: true });
  await eventually("the power follows", async () => Number((await power.inputValue()).replace(",", ".")) > 2.9);
  await eventually("a standby drain adds up", async () => (await energy(nightbank, "Control panel")) > 70);
});

test("a bad number is told at the field and the last good one counts", async (t) => {
  const nightbank = await atLoads(t);
  const laptop = row(nightbank, "Laptop");
  const good = await energy(nightbank, "Laptop");
  await laptop.getByTestId("load-button").click();
  const power = laptop.getByLabel("Power", { exact: true });
  await power.fill("12x");
  await eventually("a message", async () => /not a number/.test(await nightbank.faultOf(power)));
  assert.equal(await energy(nightbank, "Laptop"), good);
  assert.equal(await power.inputValue(), "12x", "what was typed stays");
});

test("a deletion is undone", async (t) => {
  const nightbank = await atLoads(t);
  const before_ = await nightbank.page.getByTestId("load").count();
  const laptop = row(nightbank, "Laptop");
  await laptop.getByTestId("load-button").click();
  await laptop.getByRole("button", { name: "Delete", exact: true }).click();
  await eventually("the row is gone", async () => (await nightbank.page.getByTestId("load").count()) === before_ - 1);
  await nightbank.page.getByRole("button", { name: "Undo", exact: true }).click();
  await eventually("the row is back", async () => (await nightbank.page.getByTestId("load").count()) === before_);
  assert.equal(await row(nightbank, "Laptop").count(), 1);
});
