// Units, clock and money are the reader's: those of the browser's language, or those asked for; setups stay as they are.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Appliances, wattHours } from "./support/appliances.mjs";
import { eventually, freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

/** The page with its invented example, in a browser of this language. */
async function at(t, locale) {
  const { context, watch } = await freshContext(t, browser, { locale });
  const nightbank = await Nightbank.open(context, server.url);
  t.after(() => watch.assertClean(server.origin));
  return nightbank;
}

const inside = (nightbank) => nightbank.card("Sun and temperature").getByLabel("Temperature inside, average of day and night", { exact: true });

async function atTemperature(nightbank) {
  await nightbank.openPart("Trip");
  await nightbank.unfold(nightbank.card("Sun and temperature"), "More exact");
  return inside(nightbank);
}

test("in the United States temperatures are typed in Fahrenheit, kept in Celsius, and come back as typed", async (t) => {
  const nightbank = await at(t, "en-US");
  const field = await atTemperature(nightbank);
  for (const [typed, celsius] of [["70", 21.111], ["68", 20]]) {
    await field.fill(typed);
    await field.blur();
    assert.equal(await field.inputValue(), typed);
    const kept = async () => Number(/"heated_to":([\d.]+)/.exec(await nightbank.page.evaluate(() => localStorage.getItem("nightbank.library") ?? ""))?.[1]);
    await eventually(`${typed} °F is ${celsius} °C`, async () => Math.abs((await kept()) - celsius) < 0.001);
  }
  await field.fill("400");
  await eventually("the limit is told in Fahrenheit", async () => /At most \d+\s°F/.test(await nightbank.faultOf(field)));
  await field.fill("68");
  await nightbank.settled();
  await nightbank.reload();
  assert.equal(await (await atTemperature(nightbank)).inputValue(), "68");
  assert.doesNotMatch(await nightbank.main().evaluate((main) => main.textContent), /°C|\d\skm\b/);
  await nightbank.unfold(nightbank.card("Dates"), "More exact");
  const hours = await nightbank.card("Dates").getByLabel("Arrival time").locator("option").allInnerTexts();
  assert.match(hours[16], /^4:00\sPM$/);
  // Cables as gauges, and lengths in feet.
  await nightbank.openPart("Power");
  const battery = nightbank.card("Battery");
  await nightbank.unfold(battery, "More exact");
  const size = battery.getByLabel("Cable size");
  await size.fill("2/0");
  await size.blur();
  assert.equal(await size.inputValue(), "2/0");
  assert.match(await battery.evaluate((card) => card.textContent), /AWG/);
});

test("what is asked for under More goes before the language of the browser, and the setup stays the same", async (t) => {
  const nightbank = await at(t, "en-US");
  const field = await atTemperature(nightbank);
  await field.fill("68");
  await nightbank.settled();
  const link = await nightbank.page.evaluate(() => location.hash);
  await nightbank.openPart("More");
  // The page is built anew, so there is nothing left to see the tick at.
  await nightbank.main().getByRole("radio", { name: "Metric" }).click({ force: true });
  assert.equal(await (await atTemperature(nightbank)).inputValue(), "20");
  assert.equal(await nightbank.page.evaluate(() => location.hash), link);
  await nightbank.reload();
  assert.equal(await (await atTemperature(nightbank)).inputValue(), "20");
  await nightbank.openPart("More");
  await nightbank.main().getByRole("radio", { name: /^US/ }).click({ force: true });
  assert.equal(await (await atTemperature(nightbank)).inputValue(), "68");
});

for (const [locale, price] of [["en-US", /\$\d/], ["en-GB", /£\d/], ["en-IE", /€\d/], ["de-DE", /\d\s€/], ["nl-NL", /€\s\d/]]) {
  test(`prices in ${locale} are in the money of the reader`, async (t) => {
    const nightbank = await at(t, locale);
    // Found without a word of theirs, so that they are in every language.
    await nightbank.page.getByTestId("tab").nth(4).click();
    await nightbank.main().locator("button[data-part=ways]").click();
    await nightbank.main().getByText(price).first().waitFor({ timeout: 30_000 });
  });
}

test("what runs once on arrival counts in the stay, not in a usual day", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const list = new Appliances(await Nightbank.open(context, server.url));
  await list.nightbank.openPart("Appliances");
  await list.add("kettle", /^Kettle/);
  await list.moreExact();
  await list.field("Pattern of use").selectOption({ label: "Once, on arrival or leaving" });
  await list.sheet().getByRole("radio", { name: "On leaving" }).check({ force: true });
  await list.sheet().getByRole("textbox", { name: "How long", exact: true }).fill("15");
  await list.done();
  const row = list.row("Kettle");
  assert.match(await row.innerText(), /15\smin on leaving/);
  assert.ok(wattHours(await row.getByTestId("load-energy").first().innerText()) < 1);
  await list.nightbank.settled();
  await list.nightbank.reload();
  await list.nightbank.openPart("Appliances");
  assert.match(await list.row("Kettle").innerText(), /15\smin on leaving/);
  watch.assertClean(server.origin);
});
