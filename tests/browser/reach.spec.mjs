// Everyone gets at everything: WCAG 2.2 AA by axe-core on every view in every look, the new answer read out, little
// motion, colours of the system, messages out of the way.
import assert from "node:assert/strict";
import path from "node:path";
import { test } from "node:test";
import { eventually, freshContext, pause } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";
import { faults, inTallWindow, look, LOOKS, openAt, PICTURES, skippedHeadings, smallTargets, throughAll, twiceUsedIds, WIDTHS } from "./support/views.mjs";

const open = (t, width, options) => openAt(t, browser, server.url, width, options);

/** What there is to find fault with in the view that is shown, in every look. */
async function judge(page) {
  return inTallWindow(page, async () => {
    const found = await faults(page);
    // Of all that axe-core looks at, only the contrast depends on the look.
    for (const word of LOOKS.slice(1)) {
      await look(page, word);
      found.push(...(await faults(page, ["color-contrast"])).map((line) => `${word}: ${line}`));
    }
    await look(page, LOOKS[0]);
    return found;
  });
}

/** Widths between show what one of these shows too. */
const NARROW_AND_WIDE = [WIDTHS[0], WIDTHS.at(-1)];

test(`axe-core finds nothing on any view in any look at ${NARROW_AND_WIDE.join(", ")} px`, async (t) => {
  const { page, watch } = await open(t, WIDTHS[0]);
  await look(page, LOOKS[0]);
  const found = await throughAll(page, NARROW_AND_WIDE, async (view) => {
    if (view.partial) return [];
    const here = await judge(page);
    const twice = (await twiceUsedIds(page)).map((id) => `id used twice: ${id}`);
    const skipped = (await skippedHeadings(page)).map((line) => `heading: ${line}`);
    return [...here, ...twice, ...skipped];
  });
  assert.deepEqual(found, []);
  watch.assertClean(server.origin);
});

test("axe-core finds nothing with a message, a run of cable, an empty list and a link that came in", async (t) => {
  const { nightbank, page } = await open(t, 320);
  await look(page, LOOKS[0]);
  const found = [];
  const judged = async (what) => {
    found.push(...(await judge(page)).map((line) => `${what}: ${line}`));
    found.push(...(await smallTargets(page)).map((line) => `${what}: small: ${line}`));
  };
  await nightbank.openPart("Improve");
  await page.getByRole("main").getByRole("button", { name: "Wiring check" }).click();
  await page.getByRole("button", { name: "Check with your own figures" }).first().click();
  await page.getByTestId("run-verdict").first().waitFor();
  await judged("a run of cable");
  await nightbank.openPart("More");
  const link = new URL(await page.getByTestId("link-text").first().inputValue());
  await messageShown(nightbank);
  found.push(...(await faults(page, ["color-contrast", "target-size"], ".toasts")).map((line) => `message: ${line}`));
  await page.goto(server.url);
  await page.evaluate((hash) => (location.hash = hash), link.hash);
  await page.getByTestId("preview-notice").waitFor();
  await nightbank.openPart("Nights");
  await judged("a link that came in");
  await page.getByRole("button", { name: "Keep", exact: false }).first().click();
  await nightbank.openPart("More");
  await page.getByRole("button", { name: "New, empty" }).click();
  await nightbank.openPart("Appliances");
  await judged("an empty list");
  await nightbank.openPart("Nights");
  await judged("no answer");
  assert.deepEqual(found, []);
});

test("whoever wants little motion gets none", async (t) => {
  const { nightbank, page } = await open(t, 360, { reducedMotion: "reduce" });
  await nightbank.openPart("Appliances");
  await page.getByRole("main").getByRole("switch").first().press("Space");
  await page.getByTestId("load-button").first().press("Enter");
  await page.getByRole("button", { name: "Delete", exact: true }).press("Enter");
  await page.getByTestId("toast").waitFor();
  const moving = await page.evaluate(() => ({
    running: document.getAnimations().filter((one) => one.effect.getComputedTiming().duration > 0).length,
    scrolling: getComputedStyle(document.documentElement).scrollBehavior,
  }));
  assert.deepEqual(moving, { running: 0, scrolling: "auto" });
});

test("in colours of the system what is chosen can still be told", async (t) => {
  const { page } = await open(t, 360, { forcedColors: "active" });
  const outlined = (locator) => locator.evaluate((element) => getComputedStyle(element).outlineStyle !== "none");
  const tab = (name) => page.getByRole("navigation").getByRole("button", { name, exact: true });
  assert.deepEqual([await outlined(tab("Nights")), await outlined(tab("Trip"))], [true, false]);
  await tab("More").click();
  const choice = (name) => page.getByRole("main").locator("label").filter({ hasText: name }).locator("span");
  assert.deepEqual([await outlined(choice("English")), await outlined(choice("Deutsch"))], [true, false]);
  await tab("Nights").click();
  await page.screenshot({ path: path.join(PICTURES, "nights-360-forced-colours.png"), fullPage: true });
});

/** What is read out as the answer: a live region that is not part of a message or a field. */
const spoken = (page) => page.getByRole("dialog").getByTestId("answer-said");

test("the new answer is read out once typing has paused, wherever one is", async (t) => {
  const { nightbank, page } = await open(t, 360);
  await page.getByTestId("answer-working").waitFor({ state: "detached", timeout: 20_000 });
  await nightbank.openPart("Appliances");
  await pause(page, 1500);
  await page.getByTestId("load-button").first().click();
  await page.getByRole("dialog").locator("summary", { hasText: "More exact" }).click();
  // What is not shown, or lies behind a sheet, is not read out.
  assert.ok(await spoken(page).evaluate((region) => region.checkVisibility() && region.closest("dialog[open]")));
  await spoken(page).evaluate((region) => {
    window.saidAnswers = [];
    const note = () => window.saidAnswers.push(region.textContent);
    new MutationObserver(note).observe(region, { childList: true, characterData: true, subtree: true });
  });
  const power = page.getByTestId("load-editor").getByLabel("Power", { exact: true });
  await power.fill("");
  await power.pressSequentially("1234", { delay: 150 });
  const said = await eventually("the answer is said", () => page.evaluate(() => window.saidAnswers.length && window.saidAnswers));
  assert.match(said.at(-1), /\d+ nights?/);
  await pause(page, 2500);
  const all = await page.evaluate(() => window.saidAnswers);
  assert.ok(all.length <= 2, `four keys, and this was said: ${all.join(" | ")}`);
  assert.match(all.at(-1), new RegExp(`\\b${await page.getByTestId("answer-bar-figure").innerText()}`), "the answer that stands there");
});

test("in a sheet what was added is read out", async (t) => {
  const { nightbank, page } = await open(t, 360);
  await nightbank.openPart("Appliances");
  await page.getByRole("button", { name: "Add an appliance" }).click();
  const sheet = page.getByRole("dialog");
  await sheet.getByRole("searchbox").fill("toast");
  await sheet.getByRole("button", { name: /^Toaster/ }).click();
  await sheet.getByRole("status").filter({ hasText: "Toaster" }).waitFor({ state: "attached" });
});

/** Deletes the first appliance, which is told with "Undo". */
async function messageShown(nightbank) {
  await nightbank.openPart("Appliances");
  const { page } = nightbank;
  await page.getByTestId("load-button").first().click();
  await page.getByRole("button", { name: "Delete", exact: true }).click();
  await page.getByTestId("toast").getByRole("button", { name: "Undo" }).waitFor();
  // It slides in.
  await page.getByTestId("toast").evaluate((toast) => Promise.all(toast.getAnimations({ subtree: true }).map((slide) => slide.finished)));
}

for (const [width, height] of [[360, 640], [640, 360], [844, 390], [1280, 800]]) {
  test(`a message at ${width} by ${height} px leaves every control within reach`, async (t) => {
    const { nightbank, page } = await open(t, width, { viewport: { width, height } });
    await messageShown(nightbank);
    const covered = await page.evaluate(() => {
      const toast = document.querySelector("[data-testid=toast]").getBoundingClientRect();
      const over = (box) => box.left < toast.right && box.right > toast.left && box.top < toast.bottom && box.bottom > toast.top;
      const barred = (element) => element.checkVisibility() && over(element.getBoundingClientRect());
      // Bars stay where they are; everything else can be scrolled clear.
      const bars = [...document.querySelectorAll("nav button, [data-testid=answer-bar] button, [data-testid=add-bar] button, header button")].filter(barred);
      document.documentElement.scrollTop = document.documentElement.scrollHeight;
      const last = [...document.querySelectorAll("main :is(button, input, select, summary)")].filter(barred);
      return [...bars, ...last].map((element) => element.outerHTML.slice(0, 120));
    });
    assert.deepEqual(covered, []);
    assert.deepEqual(await smallTargets(page), []);
  });
}

test("a message that can be taken back takes one line on a small phone, in every language", async (t) => {
  for (const locale of ["en-GB", "de-DE", "fr-FR", "nl-NL"]) {
    const { page } = await open(t, 320, { locale, message: false });
    await page.getByTestId("tab").nth(4).click();
    await page.getByTestId("improvement").first().locator(".help-foot .button").first().click({ timeout: 60_000 });
    const message = page.getByTestId("toast").filter({ has: page.getByRole("button") });
    await message.waitFor();
    const { lines, right } = await message.evaluate((toast) => ({
      lines: toast.getBoundingClientRect().height / parseFloat(getComputedStyle(toast).lineHeight),
      right: toast.querySelector(".button").getBoundingClientRect().right,
    }));
    assert.ok(lines < 3.2 && right <= 320, `${locale}: ${lines.toFixed(1)} lines, to ${right} px`);
  }
});

test("a message stays while it is pointed at, and goes by Escape or by itself", async (t) => {
  const { context } = await freshContext(t, browser, { deviceScaleFactor: 1, hasTouch: false });
  const page = await context.newPage();
  await page.clock.install();
  const nightbank = new Nightbank(page);
  await nightbank.goto(server.url);
  const toast = page.getByTestId("toast");
  await messageShown(nightbank);
  await toast.hover();
  await page.clock.fastForward("00:40");
  assert.equal(await toast.count(), 1, "pointed at");
  await page.mouse.move(5, 5);
  await page.clock.fastForward("00:20");
  await toast.waitFor({ state: "detached" });
  await messageShown(nightbank);
  await page.keyboard.press("Escape");
  await toast.waitFor({ state: "detached" });
});
