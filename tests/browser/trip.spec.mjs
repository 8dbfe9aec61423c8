// Where and when: places by name, by coordinates and by the device, the camp clock, days and own sun.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

/** The page with its invented example (September in northern Germany), open at the trip part. */
async function atTrip(t, options, prepare = async () => {}) {
  const { context, watch } = await freshContext(t, browser, options);
  await prepare(context);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Trip");
  t.after(() => watch.assertClean(server.origin));
  return { nightbank, context };
}

const search = (nightbank) => nightbank.card("Place").getByLabel("Another place");
const here = (nightbank) => nightbank.card("Place").getByTestId("place-now").innerText();
const coordinates = async (nightbank) => {
  const place = nightbank.card("Place");
  await nightbank.unfold(place, "Coordinates");
  return Promise.all(["Latitude", "Longitude"].map((label) => place.getByLabel(label).inputValue()));
};

test("a town is found without its accents, is taken, and is there after a reload", async (t) => {
  const { nightbank } = await atTrip(t);
  await search(nightbank).fill("tromso");
  const found = nightbank.card("Place").getByRole("button", { name: /Tromsø/ });
  await found.click();
  await eventually("the place is taken", async () => (await here(nightbank)).includes("Tromsø"));
  assert.equal(await search(nightbank).inputValue(), "");
  const [latitude] = await coordinates(nightbank);
  assert.ok(Math.abs(Number(latitude) - 69.65) < 0.1, latitude);
  await nightbank.settled();
  await nightbank.reload();
  await nightbank.openPart("Trip");
  assert.match(await here(nightbank), /Tromsø/);
});

test("while the list of places is on its way, and where it does not come, the field says what is found", async (t) => {
  let answer;
  const asked = new Promise((resolve) => {
    answer = resolve;
  });
  // Without the worker, which would fetch it unseen.
  const { context } = await freshContext(t, browser, { serviceWorkers: "block" });
  await context.route("**/places.txt", async (route) => {
    await asked;
    await route.continue();
  });
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Trip");
  const place = nightbank.card("Place");
  // A village that the program does not carry.
  await search(nightbank).fill("Windermere");
  await place.getByText(/list of the world’s places is loading/).waitFor();
  assert.equal(await place.getByRole("button", { name: /Windermere/ }).count(), 0);
  answer();
  await place.getByRole("button", { name: /Windermere/ }).first().waitFor();
  assert.equal(await place.getByText(/list of the world’s places/).count(), 0);
});

test("without the list of places the larger towns are found, and it is said", async (t) => {
  const { context } = await freshContext(t, browser, { serviceWorkers: "block" });
  await context.route("**/places.txt", (route) => route.abort());
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Trip");
  const place = nightbank.card("Place");
  await search(nightbank).fill("tromso");
  await place.getByText(/could not be loaded: only larger towns/).waitFor();
  await place.getByRole("button", { name: /Tromsø/ }).click();
  await eventually("the place is taken", async () => (await here(nightbank)).includes("Tromsø"));
});

test("coordinates are taken with Enter; what cannot be right is told at the field and changes nothing", async (t) => {
  const { nightbank } = await atTrip(t);
  const before = await here(nightbank);
  const field = search(nightbank);
  for (const [typed, told] of [
    ["91 N 5 E", /Latitude goes from/],
    ["52.1 N", /missing/],
    ["52 1 O 5", /E or W/],
    ["Xyzzyville", /No such place/],
  ]) {
    await field.fill(typed);
    await eventually(`a message for ${typed}`, async () => told.test(await nightbank.faultOf(field)));
    assert.equal(await field.getAttribute("aria-invalid"), "true");
    await field.press("Enter");
    assert.equal(await here(nightbank), before);
    assert.equal(await field.inputValue(), typed);
  }
  await field.fill("45,5 10,25");
  await field.press("Enter");
  await eventually("the point is taken", async () => (await here(nightbank)) !== before);
  assert.deepEqual(await coordinates(nightbank), ["45.5", "10.25"]);
});

test("the position of the device: only on request, rounded, refused without harm", async (t) => {
  const countAsks = (context) =>
    context.addInitScript(() => {
      window.asked = 0;
      const ask = Geolocation.prototype.getCurrentPosition;
      Geolocation.prototype.getCurrentPosition = function (...how) {
        window.asked += 1;
        return ask.apply(this, how);
      };
    });
  const allowed = { geolocation: { latitude: 59.12345, longitude: 10.98765 }, permissions: ["geolocation"] };
  const { nightbank } = await atTrip(t, allowed, countAsks);
  assert.equal(await nightbank.page.evaluate(() => window.asked), 0, "nothing asks by itself");
  await nightbank.page.getByRole("button", { name: "Use current location" }).click();
  await eventually("the rounded position", async () => (await coordinates(nightbank)).join() === "59.1,11");
  assert.equal(await nightbank.page.evaluate(() => window.asked), 1);

  const refused = await atTrip(t, { permissions: [] });
  const before = await here(refused.nightbank);
  await refused.nightbank.page.getByRole("button", { name: "Use current location" }).click();
  await refused.nightbank.page.getByText("was refused").waitFor();
  assert.equal(await here(refused.nightbank), before);
});

test("the camp clock follows summer time and the place, unless somebody set another", async (t) => {
  const { nightbank } = await atTrip(t);
  const dates = nightbank.card("Dates");
  await nightbank.unfold(dates, "More exact");
  const offset = dates.getByLabel("Hours ahead of UTC", { exact: true });
  assert.equal(await offset.inputValue(), "2", "summer time in September");
  await dates.getByLabel("Arrival", { exact: true }).fill("2026-12-20");
  await eventually("winter time", async () => (await offset.inputValue()) === "1");
  await search(nightbank).fill("-33.9, 151.2");
  await search(nightbank).press("Enter");
  await eventually("the clock of the longitude", async () => (await offset.inputValue()) === "10");
  await offset.fill("11");
  await dates.getByLabel("Arrival", { exact: true }).fill("2026-07-01");
  assert.equal(await offset.inputValue(), "11", "a clock set by hand stays");
});

test("one sky for all days, another for one of them", async (t) => {
  const { nightbank } = await atTrip(t);
  const days = nightbank.card("Day by day");
  await days.getByRole("radio", { name: "Dull" }).check({ force: true });
  await nightbank.unfold(days, "Each day by itself");
  const skies = days.getByLabel("Sky", { exact: true });
  assert.ok((await skies.count()) === 8, "arrival, six days between, departure");
  const chosen = async () => new Set(await skies.evaluateAll((lists) => lists.map((list) => list.selectedOptions[0].text)));
  await eventually("all dull", async () => [...(await chosen())].join() === "Dull");
  await skies.nth(2).selectOption({ label: "From a forecast" });
  const sun = days.getByLabel("Sun that day");
  const usual = Number(await sun.inputValue());
  assert.ok(usual > 2 && usual < 5, `a usual day in September there, not ${usual} kWh/m²`);
  await sun.fill("4,2");
  assert.equal(await days.getByRole("radio", { checked: true }).count(), 0, "no longer the same sky on all days");
  await nightbank.settled();
  await nightbank.reload();
  await nightbank.openPart("Trip");
  assert.equal(await nightbank.card("Day by day").getByLabel("Sun that day").inputValue(), "4.2");
});

test("own sun by the month or by the day; what no sky can give is told", async (t) => {
  const { nightbank } = await atTrip(t);
  const climate = nightbank.card("Sun and temperature");
  await nightbank.unfold(climate, "Your own sun figures");
  await nightbank.unfold(climate, "Where these figures come from");
  const september = climate.getByLabel("Sept", { exact: true });
  await september.fill("3,5");
  await climate.getByText("from your own monthly figures").waitFor();
  await climate.getByRole("radio", { name: "kWh/m² a month" }).check({ force: true });
  await eventually("thirty times as much", async () => (await september.inputValue()) === "105");
  await climate.getByRole("radio", { name: "kWh/m² a day" }).check({ force: true });
  await eventually("as before", async () => (await september.inputValue()) === "3.5");
  await climate.getByLabel("Dec", { exact: true }).fill("9");
  await climate.getByText("not physically possible").waitFor();
  await climate.getByLabel("Dec", { exact: true }).fill("");
  await september.fill("");
  await climate.getByText("from your own monthly figures").waitFor({ state: "detached" });
});

test("before anything is opened it takes two screens of a phone at most", async (t) => {
  const { nightbank } = await atTrip(t, { viewport: { width: 360, height: 740 } });
  await nightbank.pastFirstMessage();
  await nightbank.settled();
  const height = await nightbank.page.evaluate(() => document.documentElement.scrollHeight);
  assert.ok(height <= 2 * 740, `${height} px`);
});

for (const width of [320, 360, 1280]) {
  test(`nothing is wider than a screen of ${width} px`, async (t) => {
    const { nightbank } = await atTrip(t, { viewport: { width, height: 740 } });
    for (const details of await nightbank.page.locator("main details").all()) {
      await details.evaluate((element) => (element.open = true));
    }
    await search(nightbank).fill("san");
    await nightbank.settled();
    assert.equal(await nightbank.overflows(), false);
  });
}
