// The tools: readings on site, measuring bench, wiring check, inverter check.
import assert from "node:assert/strict";
import { test } from "node:test";
import { freshContext } from "./support/browser.mjs";
import { Deciding } from "./support/deciding.mjs";
import { browser, server } from "./support/site.mjs";

/** The tool of this name, opened. */
async function open(t, name) {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.show(name);
  return { page, watch };
}

async function arrival(page) {
  await page.goTo("Trip");
  const date = await page.main().locator("input[type=date]").first().inputValue();
  await page.goTo("Improve");
  return date;
}

async function addReading(page, { soc, date, time }) {
  await page.type("State of charge", soc);
  await page.field("Date").fill(date);
  await page.field("Local time").fill(time);
  await page.press("Add the reading");
}

function dayAfter(date, days) {
  const next = new Date(`${date}T12:00:00Z`);
  next.setUTCDate(next.getUTCDate() + days);
  return next.toISOString().slice(0, 10);
}

test("on site: two readings of a night tell that more is used, the forecast goes on from there, and back", async (t) => {
  const { page, watch } = await open(t, "Readings on site");
  const first = await arrival(page);
  // The example hardly uses half of the battery in a night: 100 to 60 % is much more than planned.
  await addReading(page, { soc: "98", date: first, time: "22:00" });
  await addReading(page, { soc: "60", date: dayAfter(first, 1), time: "06:00" });
  assert.equal(await page.page.getByTestId("reading").count(), 2);
  await page.assertSays(/^You use about \d+\s*% more than planned/);
  await page.assertSays(/to 100|Forecast for that moment/);
  const before = await page.nights();
  await page.press("Apply this");
  await page.assertSays(/^Currently applied$/);
  await page.assertSays(/The forecast restarts on .* at 60\s*%/);
  await page.settled();
  const taught = await page.nights();
  assert.ok(taught < before || before === 0, `${before} nights became ${taught}`);
  await page.goTo("Appliances");
  await page.assertSays(/^Scaled by your readings: ×[1-9]\.\d+$/);
  await page.goTo("Improve");
  await page.press("Go back to the plan");
  await page.settled();
  assert.equal(await page.nights(), before);
  watch.assertClean(server.origin);
});

test("on site: a voltage that has not rested is a wide band and says so; what cannot be is told", async (t) => {
  const { page } = await open(t, "Readings on site");
  const first = await arrival(page);
  await page.press("Add the reading");
  await page.assertSays(/Please enter the reading first/);
  await page.choose("Voltage");
  await page.type("Voltage at the battery", "12,50");
  await page.assertSays(/Not rested for 4\s*h/);
  const band = async () => {
    const text = await page.page.getByTestId("reading-preview").innerText();
    const [low, high] = [...text.matchAll(/(\d+)\s*%/g)].map((match) => Number(match[1]));
    return high - low;
  };
  const fresh = await band();
  await page.type("Rested for", "8");
  const rested = await band();
  assert.ok(rested >= 10, `published tables alone span ${rested} points at 12.5 V`);
  assert.ok(fresh > rested + 10, `${fresh} points unrested, ${rested} rested`);
  await page.field("Date").fill(dayAfter(first, -2));
  await page.press("Add the reading");
  await page.assertSays(/That is before arrival/);
  assert.equal(await page.page.getByTestId("reading").count(), 0);
  assert.equal(await page.field("Voltage at the battery").inputValue(), "12.5", "nothing typed is lost");
});

test("wiring: a run of one's own gets drop, sizes, fuse and findings, with the caution above", async (t) => {
  const { page } = await open(t, "Wiring check");
  assert.ok(await page.main().getByText("Fuse at the battery.").isVisible());
  await page.assertSays(/A competent person, the manufacturers’ instructions and your national regulations decide/);
  await page.press("Add a cable run");
  await page.type("Current", "10");
  await page.type("Length, one way", "5");
  await page.field("Cable").selectOption({ label: "2.5 mm²" });
  await page.type("Conductor temperature in use", "50");
  const run = page.page.getByTestId("cable-run").first();
  // 10 A over 5 m of 2.5 mm² class 5 at 50 °C: 2 × 5 m × 7.98 Ω/km × 1.1179 × 10 A (IEC 60228, copper 0.00393 1/K).
  await run.getByText(/0\.89\s*V = 7\.4\s*%/).waitFor();
  assert.match(await run.innerText(), /No fuse: a short circuit here can start a fire/);
  await page.type("Fuse fitted", "40");
  await run.getByText(/fuse lets more through than the cable can carry/).waitFor();
  await page.type("Fuse fitted", "15");
  await run.getByText(/fuse lets more through/).waitFor({ state: "detached" });
  await page.switchOn("Main feed or safety equipment");
  await run.getByText(/is lost in the cable, more than the 3\s*% allowed/).waitFor();
  await page.type("Length, one way", "far");
  await run.getByText(/That is not a number/).waitFor();
  await run.getByRole("button", { name: "Delete this cable run" }).click();
  assert.equal(await page.page.getByTestId("cable-run").count(), 0);
  await page.undo();
  await page.page.getByTestId("cable-run").waitFor();
});

test("wiring: heavy currents of the setup are proposed with an assumed length", async (t) => {
  const { page } = await open(t, "Wiring check");
  const proposed = page.page.getByTestId("proposed-run");
  const count = await proposed.count();
  assert.ok(count >= 2);
  const name = await proposed.first().locator("h3").innerText();
  await proposed.first().getByRole("button", { name: "Check with your own figures" }).click();
  await page.page.getByTestId("cable-run").filter({ hasText: name }).waitFor();
  assert.equal(await proposed.count(), count - 1);
});

test("inverter: what may run together, and what must not", async (t) => {
  const { page } = await open(t, "Inverter check");
  await page.assertSays(/Nothing runs through the inverter/);
  assert.ok(await page.main().getByText("Mains voltage.").isVisible());
  await page.goTo("Appliances");
  for (const name of ["Kettle", "Microwave"]) {
    await page.press("Add an appliance");
    const sheet = page.page.getByRole("dialog");
    await sheet.getByRole("searchbox").fill(name);
    await sheet.getByRole("button", { name: new RegExp(name, "i") }).first().click();
    if (await sheet.isVisible()) await sheet.getByRole("button", { name: "Done" }).click();
  }
  await page.show("Inverter check");
  await page.assertSays(/Something runs through an inverter, but you have not entered one/);
  await page.goTo("Power");
  await page.switchOn("An inverter is fitted");
  await page.show("Inverter check");
  const picks = page.page.getByRole("main").getByRole("checkbox");
  assert.equal(await picks.count(), 2);
  for (const pick of await picks.all()) await pick.check();
  await page.assertSays(/Too much: the inverter gives/);
  await page.assertSays(/Current at its full rating/);
});

test("measuring bench: a reading becomes a load's draw with its uncertainty, and back", async (t) => {
  const { page } = await open(t, "Measure an appliance");
  assert.ok(await page.main().getByText("Meter in series.").isVisible());
  await page.assertSays(/Enter the readings above/);
  await page.type("Current", "2");
  await page.type("Voltage at the same time", "12.5");
  // P = U I. Error: gain 1.5 %, half of 0.01 A over 2 A, voltage 1 %: 1.8 %.
  await page.page.getByTestId("measured-figure").getByText(/^25\s*W$/).waitFor();
  await page.page.getByTestId("measured-figure").getByText(/±\s*2\s*%/).waitFor();
  const target = page.field("Use the result for");
  const option = await target.locator("option").first().innerText();
  await target.selectOption({ label: option });
  await page.press("Use for this appliance");
  await page.page.getByTestId("toast").getByText(`Measured: ${option}`).waitFor();
  await page.goTo("Appliances");
  await page.assertSays(/25\s*W|2\s*A/);
  await page.undo();
});

test("measuring bench: a controller in bulk tells next to nothing; what cannot be is told", async (t) => {
  const { page } = await open(t, "Measure an appliance");
  await page.choose("Solar controller");
  await page.choose("Charging (bulk)");
  await page.type("Off, before", "1.0");
  await page.type("On", "4.0");
  await page.type("Off again, after", "1.1");
  await page.type("Voltage at the same time", "13.6");
  await page.assertSays(/the result is meaningless/);
  await page.assertSays(/still taking all the solar current/);
  await page.type("On", "0.5");
  await page.assertSays(/“On” must be higher than “Off”/);
});
