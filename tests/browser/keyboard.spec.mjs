// The main job by keyboard alone: a start of one's own, an appliance, the battery, the answer, advice, the link.
// At every step the focus can be seen, is not hidden behind a bar, and never falls back to the top of the page.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext, pause } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

/** Steps to anything on the page, at most. */
const MOST_STEPS = 150;

/** Someone without a mouse. */
class Hands {
  constructor(page) {
    this.page = page;
  }

  /** What has the focus: its name as a screen reader has it (roughly), and what is wrong with how it shows. */
  async here() {
    return this.page.evaluate(() => {
      const at = document.activeElement;
      const labels = at.labels ? [...at.labels].map((label) => label.innerText) : [];
      const name = (at.getAttribute("aria-label") || labels.join(" ") || at.innerText || "").trim().replaceAll(/\s+/g, " ");
      if (!at || at === document.body) return { name: "", lost: true, faults: [] };
      const faults = [];
      // The page itself, where what stood around a control that went is the whole of it.
      if (at.matches("main")) return { name, lost: false, faults };
      // Choices and switches show the focus on what stands beside the field that has it, numbers around their unit.
      const outlined = [at, at.nextElementSibling, at.closest(".field-box")].some((one) => one && getComputedStyle(one).outlineStyle !== "none");
      if (!outlined) faults.push("no outline");
      const whole = at.matches(".choice input, .toggle input") ? at.parentElement : at;
      const box = whole.getBoundingClientRect();
      const spots = [0.5, 0.1, 0.9].flatMap((x) => [0.5, 0.2, 0.8].map((y) => [box.x + x * box.width, box.y + y * box.height]));
      const seen = spots.filter(([x, y]) => {
        const hit = document.elementFromPoint(x, y);
        return hit && whole.contains(hit);
      });
      if (!seen.length) faults.push(`hidden at ${JSON.stringify(box)}`);
      return { name, lost: false, faults };
    });
  }

  /** Fails if the focus is lost or cannot be seen. */
  async assertSeen(step) {
    const at = await this.here();
    assert.ok(!at.lost, `${step}: the focus is lost`);
    assert.deepEqual(at.faults, [], `${step}: at "${at.name}"`);
    return at;
  }

  /** Steps by `key` until what has the focus is called so; what had it just before that. */
  async to(name, { key = "Tab" } = {}) {
    const names = [];
    for (let step = 0; step < MOST_STEPS; step += 1) {
      await this.page.keyboard.press(key);
      const at = await this.here();
      // From the last to the first the focus passes through the browser.
      if (at.lost) continue;
      assert.deepEqual(at.faults, [], `${key} to "${at.name}"`);
      names.push(at.name);
      if (typeof name === "string" ? at.name === name : name.test(at.name)) return names.at(-2);
    }
    assert.fail(`no way by ${key} to ${name}, only ${names.join(", ")}`);
  }

  async back(name) {
    await this.to(name, { key: "Shift+Tab" });
  }

  /** Presses what has the focus, which must leave the focus somewhere. */
  async press(key = "Enter") {
    const { name } = await this.here();
    await this.page.keyboard.press(key);
    await eventually(`the focus is somewhere after ${key} on "${name}"`, async () => !(await this.here()).lost);
    // Nothing takes it away afterwards either.
    await pause(this.page, 150);
    await this.assertSeen(`${key} on "${name}"`);
  }

  /** Replaces what stands in the field that has the focus. */
  async write(text) {
    await this.page.keyboard.press("Control+A");
    await this.page.keyboard.type(text);
  }

  async part(name) {
    await this.back(name);
    await this.press();
    await this.page.locator("main h1").first().waitFor({ state: "attached" });
  }

  async undisturbed() {
    const toast = this.page.getByTestId("toast");
    if (await toast.count()) await this.page.keyboard.press("Escape");
    await toast.waitFor({ state: "detached" });
  }
}

for (const [kind, viewport] of Object.entries({ "a phone": { width: 360, height: 640 }, "a desk": { width: 1280, height: 800 } })) {
  test(`the main job by keyboard alone, in a window as of ${kind}`, async (t) => {
    const { context, watch } = await freshContext(t, browser, { viewport, deviceScaleFactor: 1, hasTouch: false });
    context.setDefaultTimeout(12_000);
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    const nightbank = await Nightbank.open(context, server.url);
    await nightbank.pastFirstMessage();
    const { page } = nightbank;
    const hands = new Hands(page);
    const figure = () => page.getByTestId("answer-figure").locator("strong").innerText();
    const settled = () => page.getByTestId("answer-working").waitFor({ state: "detached", timeout: 20_000 });

    // Three questions.
    await hands.to("Skip to content");
    await hands.to("Start with your own");
    await hands.press();
    const sheet = page.getByRole("dialog", { name: "Your own setup" });
    await sheet.getByLabel("Total capacity").waitFor();
    await hands.to(/Camper van/);
    await hands.press("ArrowRight");
    assert.ok(await sheet.getByLabel("Caravan").isChecked());
    await hands.to(/AGM/);
    await hands.press("ArrowRight");
    await hands.press("ArrowRight");
    assert.ok(await sheet.getByLabel("LiFePO4").isChecked());
    await hands.to("Total capacity");
    await hands.write("100");
    await hands.to("Solar panels, rated power");
    await hands.write("100");
    await hands.to("Another place");
    await hands.write("Bergen");
    await hands.to(/^Bergen/);
    await hands.press();
    await sheet.getByText(/Place: Bergen/).waitFor();
    await hands.to("Show the nights");
    await hands.press();
    await sheet.waitFor({ state: "hidden" });
    assert.equal((await hands.here()).name, "The answer", "at what was asked for");
    await hands.undisturbed();
    await settled();
    const start = await figure();

    // An appliance is added, and used more.
    await hands.part("Appliances");
    await hands.to("Add an appliance");
    await hands.press();
    await hands.to(/Search/);
    await hands.write("toast");
    await hands.to(/^Toaster/);
    await hands.press();
    await hands.to("How long a day");
    await hands.write("60");
    await hands.to("Done");
    await hands.press();
    assert.match((await hands.here()).name, /^Toaster/, "at its row");
    await hands.undisturbed();

    // A copy of it, and away with that.
    await hands.press();
    await hands.to("More exact");
    await hands.press();
    await hands.to("Duplicate");
    await hands.press();
    assert.match((await hands.here()).name, /a day, \d+% of your use/, "at the copy");
    await hands.to("Take it away again");
    await hands.press();
    await page.getByTestId("toast").waitFor();
    assert.notEqual((await hands.here()).name, "", "at a row beside it");
    await hands.undisturbed();

    // The battery.
    await hands.part("Power");
    await hands.to("Capacity of each battery");
    await hands.write("150");

    // The answer, and the course read value by value.
    await hands.part("Nights");
    await settled();
    assert.match(await figure(), /^\d+$/);
    assert.notEqual(await page.getByTestId("verdict").innerText(), "");
    const read = page.getByTestId("chart-reading").first();
    await hands.to("Choose an hour");
    await hands.press("ArrowRight");
    const first = await read.innerText();
    await hands.press("PageDown");
    await hands.press("PageUp");
    await hands.press("PageUp");
    assert.notEqual(await read.innerText(), first);
    assert.match(await read.innerText(), /\d+\s*%/);

    // Advice, applied.
    await hands.part("Improve");
    await page.locator("[data-testid=improvements][aria-busy=false]").first().waitFor({ timeout: 30_000 });
    await hands.to("Apply");
    await hands.press();
    await page.getByTestId("toast").getByText(/^Changed: /).waitFor();
    await hands.undisturbed();
    await settled();
    t.diagnostic(`${start} nights at the start, ${await figure()} after the advice`);

    // The link.
    await hands.part("More");
    await hands.to("Copy the link");
    await hands.press();
    await page.getByTestId("toast").waitFor();
    assert.match(await page.evaluate(() => navigator.clipboard.readText()), /#1[0-9A-Za-z]+$/);
    watch.assertClean(server.origin);
  });
}

test("the message's own buttons: reached, used, and the focus goes back to where it was", async (t) => {
  const { context } = await freshContext(t, browser, { deviceScaleFactor: 1, hasTouch: false });
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.pastFirstMessage();
  const { page } = nightbank;
  const hands = new Hands(page);
  await hands.to("Appliances");
  await hands.press();
  await hands.to(/^Toilet flush/);
  await hands.press();
  await hands.to("Delete");
  await hands.press();
  const before = await hands.to("Undo");
  await hands.press();
  assert.equal((await hands.here()).name, before);
  await page.getByTestId("load-button").filter({ hasText: "Toilet flush" }).waitFor();
});
