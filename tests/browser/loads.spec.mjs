// The main job: open, add an appliance, set it, read one's own number of nights, find it again after a reload.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Appliances, wattHours } from "./support/appliances.mjs";
import { eventually, freshContext, PHONE } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

/** The page with its invented example, open at the appliances. */
async function atLoads(t, options) {
  const { context, watch } = await freshContext(t, browser, options);
  context.setDefaultTimeout(15_000);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Appliances");
  t.after(() => watch.assertClean(server.origin));
  return new Appliances(nightbank);
}

const nights = (list) => list.page.getByTestId("answer-bar-figure").innerText();
const total = async (list) => wattHours(await list.page.getByTestId("loads-total").innerText());

test("an appliance is found by a word, added in two taps, set, and there after a reload", async (t) => {
  const list = await atLoads(t, PHONE);
  const before_ = await nights(list);
  await list.add("toast", /^Toaster/);
  await list.field("How long a day").fill("60");
  await list.moreExact();
  await list.field("Power").fill("800,5");
  // 800.5 W for one hour is 800.5 Wh at the socket, more at the battery.
  await eventually("the energy follows", async () => (await list.energy("Toaster")) > 800.5);
  assert.match(await list.page.getByTestId("quick-cost").innerText(), /^\d+\s*Wh a day, \d+% of your use$/);
  await eventually("fewer nights", async () => Number.parseInt(await nights(list), 10) < Number.parseInt(before_, 10));
  await list.done();
  const after_ = await nights(list);
  assert.equal(await list.nightbank.overflows(), false);
  await list.nightbank.settled();
  await list.nightbank.reload();
  await list.nightbank.openPart("Appliances");
  assert.equal(await list.row("Toaster").count(), 1);
  await eventually("the same nights", async () => (await nights(list)) === after_);
  await list.open("Toaster");
  await list.moreExact();
  assert.equal(await list.field("Power").inputValue(), "800.5");
});

test("watts and amperes follow each other", async (t) => {
  const list = await atLoads(t);
  await list.open("Control panel");
  await list.moreExact();
  await list.field("or current").fill("0.26");
  await list.field("or current").blur();
  // 0.26 A at 12 V is over 70 Wh a day (common practice, no source).
  const power = list.field("Power");
  await eventually("the power follows", async () => Number((await power.inputValue()).replace(",", ".")) > 2.9);
  await eventually("a standby drain adds up", async () => (await list.energy("Control panel")) > 70);
});

test("one ring of focus goes around number and unit, and fields stand close to each other", async (t) => {
  const list = await atLoads(t, PHONE);
  await list.open("Laptop");
  await list.moreExact();
  const power = list.field("Power");
  await power.focus();
  const ring = await power.evaluate((input) => {
    const box = input.closest(".field-box");
    const unit = box.querySelector(".unit").getBoundingClientRect();
    const [own, around] = [getComputedStyle(input), getComputedStyle(box)];
    const outer = box.getBoundingClientRect();
    return {
      own: own.outlineStyle,
      around: `${around.outlineStyle} ${Number.parseFloat(around.outlineWidth) >= 2}`,
      inside: unit.left >= outer.left && unit.right <= outer.right && unit.top >= outer.top && unit.bottom <= outer.bottom,
      gap: Math.abs(unit.left - input.getBoundingClientRect().right),
    };
  });
  assert.deepEqual([ring.own, ring.around, ring.inside], ["none", "solid true", true]);
  assert.ok(ring.gap < 1, `${ring.gap} px between number and unit`);
  // The voltage a current was read at stands below power and current, not apart from them.
  const [above, below] = [await power.locator("xpath=..").boundingBox(), await list.sheet().getByText("Voltage", { exact: true }).boundingBox()];
  const gap = below.y - (above.y + above.height);
  assert.ok(gap < 28, `${gap} px`);
});

test("a bad number is told at the field and the last good one counts", async (t) => {
  const list = await atLoads(t);
  const good = await list.energy("Laptop");
  await list.open("Laptop");
  const time = list.field("How long a day");
  await time.fill("12x");
  await eventually("a message", async () => /not a number/.test(await list.nightbank.faultOf(time)));
  assert.equal(await list.energy("Laptop"), good);
  assert.equal(await time.inputValue(), "12x", "what was typed stays");
});

test("a deletion is undone, and what was just added is taken away again", async (t) => {
  const list = await atLoads(t);
  const rows = list.page.getByTestId("load");
  const before_ = await rows.count();
  await list.open("Laptop");
  await list.press("Delete");
  await eventually("the row is gone", async () => (await rows.count()) === before_ - 1);
  await list.page.getByRole("button", { name: "Undo", exact: true }).click();
  await eventually("the row is back", async () => (await rows.count()) === before_);
  assert.equal(await list.row("Laptop").count(), 1);
  await list.add("kettle", /^Kettle/);
  await eventually("one more", async () => (await rows.count()) === before_ + 1);
  await list.press("Take it away again");
  await eventually("as before", async () => (await rows.count()) === before_);
  assert.equal(await list.sheet().isVisible(), false);
});

test("biggest first, what is off last, without a heading, and all rows add up to the day", async (t) => {
  const list = await atLoads(t, PHONE);
  const energies = async () => (await list.page.getByTestId("load-energy").allInnerTexts()).map(wattHours);
  const sorted = await energies();
  assert.deepEqual(sorted, [...sorted].sort((a, b) => b - a));
  assert.equal(await list.page.getByRole("main").locator(".load-list :is(h2, h3)").count(), 0);
  // What is switched off leaves the sum at once, and its place when the list is opened again.
  const [first] = await list.names();
  const whole = await total(list);
  const own = sorted[0];
  await list.page.getByRole("main").getByRole("switch").first().click({ force: true });
  await eventually("the sum follows", async () => Math.abs((await total(list)) - (whole - own)) <= 1);
  assert.equal((await list.names())[0], first, "it stays under the finger");
  await list.nightbank.openPart("Power");
  await list.nightbank.openPart("Appliances");
  assert.equal((await list.names()).at(-1), first);
  const rest = (await energies()).slice(0, -1);
  const others = (await list.page.getByTestId("other-energy").allInnerTexts()).map(wattHours);
  const sum = [...rest, ...others].reduce((all, one) => all + one, 0);
  assert.ok(Math.abs(sum - (await total(list))) <= 0.5 * (rest.length + others.length), `${sum} Wh in rows`);
});

test("a row that grows goes up when its sheet is closed, and keeps the focus", async (t) => {
  const list = await atLoads(t);
  const before_ = (await list.names()).indexOf("Laptop");
  assert.ok(before_ > 0);
  await list.open("Laptop");
  await list.field("How many").fill("9");
  await eventually("it takes most", async () => (await list.energy("Laptop")) > 400);
  assert.equal((await list.names()).indexOf("Laptop"), before_);
  await list.done();
  await eventually("now it is first", async () => (await list.names())[0] === "Laptop");
  await eventually("the focus is there", () =>
    list.page.evaluate(() => document.activeElement?.innerText?.includes("Laptop")),
  );
});

test("six rows and more stand on the screen of a phone", async (t) => {
  const list = await atLoads(t, { ...PHONE, viewport: { width: 360, height: 740 } });
  await list.nightbank.pastFirstMessage();
  const seen = await list.page.evaluate(() => {
    const bar = document.querySelector("[data-testid=add-bar]").getBoundingClientRect();
    const rows = [...document.querySelectorAll("[data-testid=load]")].map((row) => row.getBoundingClientRect());
    return rows.filter((row) => row.top >= 0 && row.bottom <= bar.top).length;
  });
  assert.ok(seen >= 6, `${seen} rows`);
});

test("with letters twice as large no name stands one letter a line", async (t) => {
  const list = await atLoads(t, { ...PHONE, deviceScaleFactor: 1 });
  const session = await list.page.context().newCDPSession(list.page);
  await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  await list.nightbank.reload();
  await list.nightbank.openPart("Appliances");
  const narrow = await list.page.evaluate(() =>
    [...document.querySelectorAll(".load-name, .load-summary")]
      .map((text) => [text.innerText, text.getBoundingClientRect().width / Number.parseFloat(getComputedStyle(text).fontSize)])
      .filter(([, width_em]) => width_em < 5),
  );
  assert.deepEqual(narrow, []);
  assert.equal(await list.nightbank.overflows(), false);
});

/** Whether all of the sheet is in sight without scrolling. */
const fits = (list) => list.sheet().evaluate((sheet) => sheet.scrollHeight <= sheet.clientHeight + 1);

test("each appliance is set on one screen of a small phone, a line a question", async (t) => {
  const list = await atLoads(t, PHONE);
  for (const [search, name, ask] of [
    ["led lamp", /^LED lamp/, "How long a day"],
    ["toilet flush", /^Toilet flush/, "Times a day"],
    ["phone", /^Phone/, "A full charge every"],
    ["pump", /^Water pump/, "Water a day"],
    ["compressor", /^Compressor fridge/, "Share of the time at 25 °C"],
    ["kettle", /^Kettle/, "Times a day"],
  ]) {
    await list.add(search, name);
    await list.field("How many").waitFor();
    await list.field(ask).waitFor();
    assert.ok(await fits(list), `${search} takes more than a screen`);
    // The question stands before its answer, on one line with it.
    const [label, box] = await list.field(ask).evaluate((input) => {
      const field = input.closest(".field");
      return [".field-head", ".field-box"].map((part) => field.querySelector(part).getBoundingClientRect().toJSON());
    });
    assert.ok(label.right <= box.left + 1 && label.top < box.bottom && box.top < label.bottom);
    await list.press("Take it away again");
  }
});

/** Used by the hour of the stay's first whole day [Wh], from 00:00. */
async function usedByHour(nightbank) {
  await nightbank.openPart("Nights");
  await nightbank.openDetails();
  const main = nightbank.main();
  await nightbank.unfold(main, "Hour by hour");
  const days = main.locator("details").filter({ has: nightbank.page.getByText("Hour by hour", { exact: true }) }).last().locator("details");
  // The first day begins at the arrival; the second is whole.
  await days.nth(1).evaluate((day) => (day.open = true));
  const rows = main.getByRole("table", { name: /^Hour by hour: / }).locator("tbody tr");
  await rows.nth(23).waitFor();
  return (await rows.locator("td:nth-child(4)").allInnerTexts()).map(wattHours);
}

test("used at two times of the day: as much as before, in other hours, after a reload and in a link", async (t) => {
  const list = await atLoads(t, PHONE);
  const { nightbank, page } = list;
  const before_ = await usedByHour(nightbank);
  await nightbank.openPart("Appliances");
  const energy = await list.energy("Laptop");
  await list.open("Laptop");
  const oneTime = (await list.sheet().boundingBox()).height;
  await list.field("When").selectOption("Set times");
  const times = page.getByTestId("times");
  const rows = times.getByRole("group");
  const set = async (at, from, until) => {
    await rows.nth(at).getByLabel("From").fill(from);
    await rows.nth(at).getByLabel("Until").fill(until);
  };
  assert.equal(await rows.count(), 1);
  assert.equal(await fits(list), true);
  assert.ok((await list.sheet().boundingBox()).height - oneTime < 90, "one row more for times of one's own");
  await set(0, "18:00", "22:00");
  await times.getByRole("button", { name: "Another time" }).click();
  await rows.nth(1).waitFor();
  await set(1, "06:00", "08:00");
  // A third one, and away with it.
  await times.getByRole("button", { name: "Another time" }).click();
  await rows.nth(2).waitFor();
  assert.equal(await times.getByRole("button", { name: "Another time" }).count(), 0, "three at most");
  assert.equal(await nightbank.overflows(), false);
  await rows.nth(2).getByRole("button", { name: "Take this time away" }).click();
  await eventually("two are left", async () => (await rows.count()) === 2);
  await eventually("the focus stays here", () => page.evaluate(() => Boolean(document.activeElement?.closest("[data-testid=times]"))));
  await list.done();
  assert.equal(await list.energy("Laptop"), energy, "the energy is the same");
  const after_ = await usedByHour(nightbank);
  // 68 Wh in six hours for twelve, 08:00 to 20:00: 11 in the place of 6 or of nothing, by hand.
  const moved = after_.map((used, hour) => used - before_[hour]);
  for (const [hour, change] of moved.entries()) {
    const expected = [18, 19].includes(hour) ? energy / 12 : [6, 7, 20, 21].includes(hour) ? energy / 6 : hour >= 8 && hour < 18 ? -energy / 12 : 0;
    assert.ok(Math.abs(change - expected) <= 1.1, `${hour}:00: ${change} Wh, expected ${expected}`);
  }
  const twoTimes = async () => {
    await nightbank.openPart("Appliances");
    await list.open("Laptop");
    const values = await rows.locator("input").evaluateAll((all) => all.map((input) => input.value));
    await list.done();
    return values;
  };
  await nightbank.settled();
  await nightbank.reload();
  assert.deepEqual(await twoTimes(), ["18:00", "22:00", "06:00", "08:00"]);
  await nightbank.openPart("More");
  const link = await page.getByLabel("This setup as a link").inputValue();
  const { context } = await freshContext(t, browser);
  const other = new Appliances(await Nightbank.open(context, link));
  await other.nightbank.openPart("Appliances");
  await other.open("Laptop");
  assert.deepEqual(
    await other.page.getByTestId("times").locator("input").evaluateAll((all) => all.map((input) => input.value)),
    ["18:00", "22:00", "06:00", "08:00"],
  );
});

test("times that overlap are joined when they are left, not under the finger", async (t) => {
  const list = await atLoads(t, PHONE);
  await list.open("Laptop");
  await list.field("When").selectOption("Set times");
  const times = list.page.getByTestId("times");
  const rows = times.getByRole("group");
  await times.getByRole("button", { name: "Another time" }).click();
  await rows.nth(1).waitFor();
  await rows.nth(1).getByLabel("Until").fill("10:00");
  await rows.nth(1).getByLabel("From").focus();
  assert.equal(await rows.count(), 2);
  await list.field("How many").focus();
  await eventually("one is left", async () => (await rows.count()) === 1);
  // By day, and the night until ten.
  assert.deepEqual(await rows.locator("input").evaluateAll((all) => all.map((input) => input.value)), ["22:00", "20:00"]);
});

test("behind the inverter an appliance takes as much on Nights as in its row", async (t) => {
  const list = await atLoads(t);
  const { nightbank, page } = list;
  await nightbank.openPart("Power");
  await page.getByRole("switch", { name: "An inverter is fitted" }).check({ force: true });
  await nightbank.openPart("Appliances");
  await list.open("Laptop");
  await list.moreExact();
  await list.sheet().getByRole("radio", { name: "Inverter", exact: true }).check({ force: true });
  await list.page.getByTestId("quick-inverter").waitFor();
  await list.field("How many").fill("9");
  await list.done();
  await eventually("it takes most", async () => (await list.energy("Laptop")) > 600);
  const [row, day] = [await list.energy("Laptop"), await total(list)];
  await nightbank.openPart("Nights");
  await nightbank.settled();
  const [, share] = /Laptop \((\d+)\s*%\)/.exec(await page.getByTestId("takes-most").innerText());
  assert.ok(Math.abs(share - (100 * row) / day) < 0.7, `${share}% of ${day} Wh, ${row} Wh in the list`);
  await nightbank.openDetails();
  const figures = page.getByTestId("figure");
  const laptop = figures.filter({ has: page.getByTestId("figure-name").filter({ hasText: "Laptop" }) });
  assert.equal(wattHours(await laptop.getByTestId("figure-value").innerText()), row);
  const names = await figures.getByTestId("figure-name").allInnerTexts();
  assert.ok(!names.some((name) => name.startsWith("Inverter")), names.join(", "));
});

test("what the inverter takes stands at the appliance that makes it run", async (t) => {
  const list = await atLoads(t);
  await list.nightbank.openPart("Power");
  await list.page.getByRole("switch", { name: "An inverter is fitted" }).check({ force: true });
  await list.nightbank.openPart("Appliances");
  const before_ = await total(list);
  await list.open("Laptop");
  assert.equal(await list.page.getByTestId("quick-inverter").count(), 0);
  await list.moreExact();
  const direct = await list.energy("Laptop");
  await list.sheet().getByRole("radio", { name: "Inverter", exact: true }).check({ force: true });
  const told = list.page.getByTestId("quick-inverter");
  await told.waitFor();
  const taken = wattHours(await told.innerText());
  await eventually("its energy holds it", async () => Math.abs((await list.energy("Laptop")) - direct - taken) <= 1);
  await list.done();
  assert.match(await list.row("Laptop").innerText(), /incl\. [\d.]+\s*Wh inverter/);
  await eventually("and the day too", async () => Math.abs((await total(list)) - before_ - taken) <= 1);
});

test("what asks too much of the inverter bears a badge, in a word and in the sheet in a sentence", async (t) => {
  const list = await atLoads(t);
  await list.add("kettle", /^Kettle/);
  await list.done();
  assert.equal(await list.row("Kettle").getByTestId("badge").innerText(), "No inverter");
  await list.nightbank.openPart("Power");
  await list.page.getByRole("switch", { name: "An inverter is fitted" }).check({ force: true });
  await list.page.getByRole("main").getByLabel("Continuous power", { exact: true }).fill("300");
  await list.nightbank.openPart("Appliances");
  assert.equal(await list.row("Kettle").getByTestId("badge").innerText(), "Too much for the inverter");
  assert.equal(await list.row("Kettle").getByTestId("badge").locator("svg").count(), 1);
  await list.open("Kettle");
  await list.sheet().getByText(/^Too much: the inverter gives 300\s*W/).waitFor();
  await list.moreExact();
  await list.field("Power").fill("250");
  await eventually("the badge goes", async () => !/inverter gives/.test(await list.sheet().innerText()));
});

test("a fridge that would switch off early says so at its row", async (t) => {
  const list = await atLoads(t);
  const fridge = list.row("Compressor fridge");
  await list.open("Compressor fridge");
  await list.moreExact();
  await list.field("Off below").fill("12.3");
  await list.sheet().getByText(/would switch off on low voltage from/).waitFor();
  await list.done();
  assert.equal(await fridge.getByTestId("badge").innerText(), "Switches off early");
});

test("lamps are lit by scenes: the minutes once, the sum at once, and the lamps keep it", async (t) => {
  const list = await atLoads(t, PHONE);
  const lamp = await list.energy("LED lamp");
  await list.page.getByRole("button", { name: "Light for an evening" }).click();
  const light = list.page.getByTestId("light");
  const sum = async () => wattHours((await light.getByTestId("light-sum").innerText()).split("Wh")[0]);
  const bulb = (name) => light.getByRole("button", { name, exact: true });
  // Four lamps for three hours, as the example has them; two of them put out are half of that.
  assert.equal(await bulb("LED lamp 4").getAttribute("aria-pressed"), "true");
  const before_ = await sum();
  await bulb("LED lamp 1").click();
  await bulb("LED lamp 3").click();
  await eventually("half the light", async () => Math.abs((await sum()) - (before_ - lamp / 2)) <= 0.2);
  // Twice the minutes for the two that burn: as before.
  await list.field("How long a day").fill("360");
  await eventually("as before", async () => Math.abs((await sum()) - before_) <= 0.2);
  await light.getByRole("radio", { name: "Morning" }).check({ force: true });
  await list.field("How long a day").fill("60");
  await bulb("LED lamp 1").click();
  await eventually("a quarter of an hour each more", async () => Math.abs((await sum()) - before_ - (lamp * 15) / 180) <= 0.2);
  await list.done();
  await list.open("LED lamp");
  // 2 of 4 for 360 minutes and 1 of 4 for 60 are 195 minutes for each.
  assert.equal(await list.field("How long a day").inputValue(), "3.25");
  const time = async (name) => {
    const time = list.sheet().getByRole("group", { name, exact: true });
    return [await time.getByLabel("From", { exact: true }).inputValue(), await time.getByLabel("Until", { exact: true }).inputValue()];
  };
  assert.deepEqual([await time("Time 1"), await time("Time 2")].sort(), [["06:00", "09:00"], ["18:00", "23:00"]]);
});

test("without two lamps there are no scenes", async (t) => {
  const list = await atLoads(t);
  for (const name of ["LED lamp", "Awning light"]) {
    await list.open(name);
    await list.press("Delete");
    await list.sheet().waitFor({ state: "hidden" });
  }
  assert.equal(await list.page.getByRole("button", { name: "Light for an evening" }).count(), 0);
});

test("eleven appliances are added by search, as they usually are, in 22 taps at most", async (t) => {
  const list = await atLoads(t, PHONE);
  const { page } = list;
  const before_ = await page.getByTestId("load").count();
  let taps = 0;
  const tap = async (locator) => {
    await locator.tap();
    taps += 1;
  };
  await tap(page.getByRole("button", { name: "Add an appliance" }));
  const search = list.sheet().getByRole("searchbox");
  await tap(search);
  const wanted = ["kettle", "toaster", "hair dryer", "television", "tablet", "fan", "shaver", "camera", "macerator", "string", "reading"];
  for (const words of wanted) {
    // Typed into whatever has the focus: a field that has to be tapped again would cost a tap.
    await page.keyboard.type(words);
    const plus = list.sheet().getByRole("button", { name: /^Add with usual figures/ }).first();
    await eventually(`${words} is found`, async () => /\b[1-9]\d? found/.test(await list.sheet().getByRole("status").allInnerTexts().then((all) => all.join(" "))));
    await tap(plus);
    await eventually("the field is empty again", async () => (await search.inputValue()) === "");
  }
  await tap(list.sheet().getByRole("button", { name: "Done", exact: true }));
  await eventually("all are there", async () => (await page.getByTestId("load").count()) === before_ + wanted.length);
  t.diagnostic(`${taps} taps`);
  assert.ok(taps <= 22, `${taps} taps`);
});
