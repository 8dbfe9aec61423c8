// Every figure of the answer and of what stands below it tells on tap where it comes from.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

const wattHours = (text) => Number(text.replace("\u2212", "-").replace(/[^\d.-]/g, ""));
/** The amount at the end of a sentence such as "Charging losses: 5.2 Wh a day." */
const amounts = (text) => [...text.matchAll(/(\d[\d,.]*)\u202fWh a day/g)].map((found) => Number(found[1].replaceAll(",", "")));

async function atNights(t, options) {
  const { context, watch } = await freshContext(t, browser, options);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.page.getByTestId("answer-working").waitFor({ state: "detached", timeout: 20_000 });
  await nightbank.openDetails();
  // What stands below comes in turns.
  await nightbank.page.getByRole("main").locator("details").nth(2).waitFor();
  t.after(() => watch.assertClean(server.origin));
  return nightbank;
}

const figure = (page, name) => page.getByTestId("figure").filter({ has: page.getByTestId("figure-name").filter({ hasText: name }) }).first();

test("each figure of an average day and of what takes most opens its origin, by tap and by keyboard", async (t) => {
  const { page } = await atNights(t);
  const all = page.getByTestId("figure");
  const count = await all.count();
  assert.ok(count > 12, `${count} figures`);
  for (let at = 0; at < count; at += 1) {
    const one = all.nth(at);
    assert.equal(await one.getByTestId("figure-origin").isVisible(), false);
    if (at % 2) await one.locator("summary").press("Enter");
    else await one.locator("summary").click();
    const text = await one.getByTestId("figure-origin").innerText();
    assert.ok(text.length > 20 && !/[{}]/.test(text), `${await one.getByTestId("figure-name").innerText()}: ${text}`);
  }
});

test("what an origin says adds up to its figure", async (t) => {
  const { page } = await atNights(t);
  for (const [name, sign] of [["Lost in the battery", -1], ["Appliances", -1]]) {
    const one = figure(page, name);
    await one.locator("summary").click();
    const parts = amounts(await one.getByTestId("figure-origin").innerText());
    assert.ok(parts.length > 0);
    const sum = parts.reduce((sum, part) => sum + part, 0);
    const shown = wattHours(await one.getByTestId("figure-value").innerText());
    // Each part is rounded as shown, to 0.1 or 1 Wh.
    assert.ok(Math.abs(sign * sum - shown) <= 0.6 + 0.1 * parts.length, `${name}: ${parts} is not ${shown}`);
  }
  const fridge = figure(page, "Compressor fridge");
  await fridge.locator("summary").click();
  const text = await fridge.getByTestId("figure-origin").innerText();
  const [, power] = /(\d+)\u202fW ·/.exec(text);
  const [, share] = /it runs: (\d+)%/.exec(text);
  const shown = wattHours(await fridge.getByTestId("figure-value").innerText());
  // Watts for a share of the day's 24 hours, the share rounded to a percent.
  assert.ok(Math.abs(power * 24 * (share / 100) - shown) <= 0.005 * power * 24 + 0.5, `${text}: not ${shown} Wh`);
});

test("what is open stays open while the figures change, in the answer and below it", async (t) => {
  const { page } = await atNights(t, { viewport: { width: 1280, height: 800 } });
  await figure(page, "Appliances").locator("summary").click();
  await page.getByTestId("answer-sure").locator("summary").click();
  assert.match(await page.getByTestId("answer-sure").locator("details").innerText(), /9 times out of 10 the battery stays above your limit/);
  const before = await figure(page, "Appliances").getByTestId("figure-value").innerText();
  const tab = (name) => page.getByRole("navigation", { name: "Sections" }).getByRole("button", { name, exact: true });
  await tab("Appliances").click();
  await page.getByRole("main").getByRole("switch").first().click({ force: true });
  assert.ok(await page.getByTestId("answer-sure").locator("details p").isVisible(), "the answer stands beside, its origin still open");
  await tab("Nights").click();
  await eventually("the figure follows", async () => (await figure(page, "Appliances").getByTestId("figure-value").innerText()) !== before);
  assert.ok(await page.getByTestId("answer-sure").locator("details p").isVisible());
});

test("in the answer each statement has its question mark, which stays where it is", async (t) => {
  const { page } = await atNights(t);
  const marks = page.locator("#answer details summary[aria-label]");
  assert.equal(await marks.count(), 2, "nights and chance");
  for (const mark of await marks.all()) {
    await mark.scrollIntoViewIfNeeded();
    const place = () => mark.evaluate((element) => element.getBoundingClientRect().x);
    const before = await place();
    await mark.click();
    assert.equal(await place(), before);
    assert.ok((await mark.locator("xpath=..").locator("p").innerText()).length > 40);
  }
});

test("an appliance that follows the air says so where it is edited", async (t) => {
  const nightbank = await atNights(t);
  const { page } = nightbank;
  await nightbank.openPart("Appliances");
  await page.getByTestId("load-button").filter({ hasText: "Compressor fridge" }).click();
  const told = page.getByTestId("quick").getByText(/it runs: \d+% of the time/);
  await told.waitFor();
  const before = await told.innerText();
  await page.getByTestId("quick").getByRole("textbox", { name: /Share of the time at 25/ }).fill("60");
  await eventually("it follows", async () => (await told.innerText()) !== before);
});

test("each row of the battery's bill tells where it comes from, and stays open while its figure changes", async (t) => {
  const nightbank = await atNights(t);
  await nightbank.openPart("Power");
  const battery = nightbank.card("Battery");
  await nightbank.unfold(battery, "Usable at");
  const rows = battery.getByTestId("figure");
  await rows.first().waitFor();
  assert.equal(await rows.count(), 5);
  for (const row of await rows.all()) {
    await row.locator("summary").click();
    assert.ok((await row.getByTestId("figure-origin").innerText()).length > 40);
  }
  const kept = rows.filter({ hasText: "Reserve below" }).getByTestId("figure-origin");
  assert.match(await kept.innerText(), /below 50%/);
  await battery.getByLabel("Your limit").fill("60");
  await eventually("it follows", async () => /below 60%/.test(await kept.innerText()));
  assert.ok(await kept.isVisible());
});
