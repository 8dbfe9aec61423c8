// What to change: what helps, and ways to more nights.
import assert from "node:assert/strict";
import { test } from "node:test";
import { freshContext } from "./support/browser.mjs";
import { Deciding } from "./support/deciding.mjs";
import { browser, server } from "./support/site.mjs";

const figures = (text) => [...text.matchAll(/\d+/g)].map((match) => Number(match[0]));

test("what helps is ranked, says what it brings, is applied with one tap and taken back with one", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.settled();
  await page.goTo("Improve");
  const helps = await page.helps();
  assert.ok((await helps.count()) >= 5, "more than a handful of changes is looked at");
  const lengths = await helps.getByTestId("improvement-bar").evaluateAll((bars) => bars.map((bar) => Number.parseFloat(bar.style.width)));
  // Near-ties are ordered by more than what the bar shows.
  const inOrder = lengths.every((length, at) => at === 0 || length <= lengths[at - 1] + 0.5);
  assert.ok(inOrder, `the most comes first: ${lengths}`);
  // What applying it really does agrees with what the line said.
  const first = helps.first();
  const [foreseenFrom, foreseenTo] = figures(await first.getByTestId("improvement-gain").innerText());
  const chance = async () => Math.round(100 * (await page.chance()));
  const before = await chance();
  assert.equal(before, foreseenFrom, "the list starts from the chance in the answer");
  await page.goTo("Improve");
  await first.getByRole("button", { name: "Apply" }).click();
  await page.page.getByTestId("toast").getByText(/^Changed: /).waitFor();
  const after = await chance();
  assert.ok(after > before, `a chance of ${before} % became ${after} %`);
  assert.equal(after, foreseenTo, "what was foreseen came true to the percent");
  await page.undo();
  assert.equal(await chance(), before);
  watch.assertClean(server.origin);
});

test("the next step says what What helps says of it, and the answer after the tap; so does what opens below", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.settled();
  const step = page.page.getByTestId("step-button");
  const words = await step.locator("strong").innerText();
  const gain = figures(/(\d+\s*%) → (\d+\s*%)/.exec(await page.page.getByTestId("step-gain").innerText())[0]);
  await page.goTo("Improve");
  const helps = await page.helps();
  const row = helps.filter({ has: page.page.getByRole("heading", { name: words, exact: true }) });
  assert.deepEqual(figures(await row.getByTestId("improvement-gain").innerText()), gain);
  await page.goTo("Nights");
  await step.click();
  assert.equal(Math.round(100 * (await page.chance())), gain[1]);
  await page.page.getByTestId("step-tried").getByRole("button").click();
  await page.settled();
  await page.goTo("Improve");
  await page.helps();
  await page.main().getByText(/more changes?$/).click();
  await page.page.locator("[data-testid=improvements-further][aria-busy=false]").waitFor({ timeout: 30_000 });
  const further = page.page.getByTestId("improvements-further").getByTestId("improvement");
  const [, foreseen] = figures(await further.last().getByTestId("improvement-gain").innerText());
  await further.last().getByRole("button", { name: "Apply" }).click();
  assert.equal(Math.round(100 * (await page.chance())), foreseen);
  watch.assertClean(server.origin);
});

const pounds = (text) => Number(/£([\d,]+(?:\.\d+)?)/.exec(text)[1].replaceAll(",", ""));

test("ways to night 8, the cheapest first, each with its price, in four taps; no sizes cost less", async (t) => {
  const { context } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  assert.ok((await page.nights()) < 5, "the setup fails before night 5");
  await page.tab("Improve").tap();
  await page.main().getByRole("button", { name: "More nights" }).tap();
  await page.main().getByRole("button", { name: "More: Nights you want" }).tap();
  assert.equal(await page.field("Nights you want").inputValue(), "8");
  const ways = page.page.getByTestId("way");
  await page.page.locator("[data-testid=ways][aria-busy=false]").waitFor({ timeout: 60_000 });
  const titles = await ways.locator("h3").allInnerTexts();
  assert.ok(titles.length >= 2 && titles.length <= 3, `${titles}`);
  assert.equal(new Set(titles).size, titles.length, "they are of different kinds");
  assert.deepEqual(titles.map((title) => title.startsWith("Cheapest")), titles.map((_, at) => at === 0));
  for (const way of await ways.all()) {
    assert.ok((await way.getByTestId("way-steps").getByRole("listitem").count()) > 0, "it has steps");
    assert.match(await way.innerText(), /What it costs\s+\S+/);
  }
  const buying = ways.filter({ hasText: "By buying only" });
  const price = pounds(await buying.getByText(/About £[\d,.]+/).innerText());
  assert.match(await buying.innerText(), /Lasts 8 nights with a chance of (9\d|100)/);
  assert.ok(await buying.getByRole("note").first().isVisible(), "with the caution there and then");
  // All sizes for the stay: none asks for less beside what is there, and none is called the smallest purchase.
  await page.main().getByText("What to buy: all sizes").tap();
  const sizes = page.page.getByTestId("size");
  await sizes.first().waitFor({ timeout: 60_000 });
  for (const size of await sizes.all()) {
    const told = await size.innerText();
    assert.ok(pounds(told) >= price, `${told} against ${price}`);
    assert.doesNotMatch(told, /Smallest purchase/);
  }
  await buying.getByRole("button", { name: "Use this plan" }).tap();
  const chance = await page.chance();
  assert.ok(chance >= 0.9, `taken, the chance of all 8 nights is ${chance}`);
  assert.equal(await page.page.getByTestId("lantern").count(), 8);
});

test("a number of nights that cannot be is told at the field, and the last good one stays", async (t) => {
  const { context } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.show("More nights");
  await page.page.getByTestId("way").first().waitFor({ timeout: 30_000 });
  await page.type("Nights you want", "0");
  await page.assertSays(/At least 1\. /);
  assert.equal(await page.field("Nights you want").getAttribute("aria-invalid"), "true");
  await page.type("Nights you want", "many");
  await page.assertSays(/That is not a number/);
  assert.ok((await page.page.getByTestId("way").count()) > 0, "nothing is lost");
});

test("a copy set beside shows what a change does, outlives a reload, and is put away", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.show("Side by side");
  await page.assertSays(/Choose another setup, or add a copy/);
  await page.press("Add a copy of this one");
  await page.assertSays(/No differences/);
  await page.goTo("Improve");
  await page.main().getByRole("button", { name: "What helps" }).first().click();
  await page.helps();
  await page.main().getByRole("button", { name: "Apply" }).first().click();
  await page.show("Side by side");
  await page.assertSays(/^Differences$/);
  // A copy is called by what differs.
  assert.equal(await page.main().getByRole("columnheader", { name: "Copy 1" }).count(), 0);
  const copy = page.main().getByRole("columnheader", { name: /: / });
  await copy.first().waitFor();
  await page.nightbank.reload();
  await page.show("Side by side");
  await copy.first().waitFor();
  await page.assertSays(/^Differences$/);
  assert.equal(await page.main().getByText(/gone once you close the page/).count(), 0);
  await page.press(/^Remove: /);
  await copy.first().waitFor({ state: "detached" });
  await page.nightbank.reload();
  await page.show("Side by side");
  await page.assertSays(/Choose another setup, or add a copy/);
  watch.assertClean(server.origin);
});

test("copies that cannot be kept say so", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => {
    const refuse = () => {
      throw new DOMException("denied", "SecurityError");
    };
    for (const name of ["localStorage", "sessionStorage"]) Object.defineProperty(window, name, { get: refuse });
  });
  const page = await Deciding.open(context, server.url);
  await page.show("Side by side");
  await page.press("Add a copy of this one");
  await page.assertSays(/gone once you close the page/);
  await page.main().getByRole("columnheader", { name: "Copy 1" }).first().waitFor();
});

test("stored copies that do not read are set aside whole, those of a newer version are left alone", async (t) => {
  for (const [text, keeps] of [
    ["{ cut off", false],
    ['{"format":"nightbank","schema":999,"setups":[]}', true],
  ]) {
    const { context } = await freshContext(t, browser);
    await context.addInitScript((text) => {
      if (!sessionStorage.getItem("put")) localStorage.setItem("nightbank.compared", text);
      sessionStorage.setItem("put", "1");
    }, text);
    const page = await Deciding.open(context, server.url);
    await page.show("Side by side");
    await page.press("Add a copy of this one");
    await page.main().getByRole("columnheader", { name: "Copy 1" }).first().waitFor();
    const stored = (key) => page.page.evaluate((key) => localStorage.getItem(key), key);
    assert.equal((await stored("nightbank.compared")) === text, keeps, text);
    const aside = JSON.parse((await stored("nightbank.set-aside")) ?? "[]");
    assert.deepEqual(aside, keeps ? [] : [text]);
    assert.equal(await page.main().getByText(/gone once you close the page/).count(), keeps ? 1 : 0);
  }
});

test("the answer says that unmeasured figures count in the odds, and leads to the bench", async (t) => {
  const { context } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.settled();
  await page.nightbank.openDetails();
  await page.assertSays(/The figures you entered may be off by ±.* The odds allow for it\./);
  await page.press("See what to measure first");
  await page.assertSays(/Measure these first/);
});
