// When the page itself breaks: never a dead page. The fault is put into the browser, not into the page: the next
// element that the page asks for is refused, which no program of this kind survives.
import assert from "node:assert/strict";
import { test } from "node:test";
import { freshContext, pause } from "./support/browser.mjs";
import { Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

/** Arms the fault: the next element made is refused, once. */
const refuseNextElement = () => {
  const { createElement, cloneNode } = { createElement: Document.prototype.createElement, cloneNode: Node.prototype.cloneNode };
  const restore = () => {
    Document.prototype.createElement = createElement;
    Node.prototype.cloneNode = cloneNode;
  };
  const refuse = () => {
    restore();
    throw new Error("refused for a test");
  };
  Document.prototype.createElement = refuse;
  Node.prototype.cloneNode = refuse;
};

async function broken(here) {
  await here.page.evaluate(refuseNextElement);
  // From within the page: work of its own may have met the fault already, and then the button is gone from sight.
  await here.page.getByTestId("tab").nth(3).evaluate((tab) => tab.click());
  const panel = here.page.locator("#recovery");
  await panel.waitFor();
  return panel;
}

test("a panel with link, file and reload takes the page's place, and everything is there afterwards", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  await here.press("Copy this one");
  await here.rename("Spare");
  const [link, figures] = [await here.link(), await here.figures()];
  const panel = await broken(here);
  assert.match(await panel.innerText(), /Nightbank has stopped[\s\S]*Your setups are safe/);
  assert.equal(await here.page.locator("#app").isVisible(), false, "nothing that looks alive and is not");
  assert.equal(await panel.locator("textarea").inputValue(), link);
  const file = await here.download(() => panel.getByText("Save your setups as a file").click());
  assert.deepEqual(JSON.parse(file.text).setups.map((setup) => setup.name), ["Mine", "Spare"]);
  assert.equal(file.name, "nightbank-setups.json");

  await panel.getByRole("link", { name: "Reload the page" }).click();
  await here.nightbank.ready();
  assert.deepEqual(await here.names(), ["Mine", "Spare"]);
  assert.deepEqual(await here.chosen(), ["Spare"]);
  assert.deepEqual(await here.figures(), figures);
  assert.deepEqual(watch.violations, []);
});

test("a setup that stops the page at every start can be got past", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const panel = await broken(here);
  await panel.getByText("reload with an empty setup").click();
  await here.nightbank.ready();
  assert.equal(await here.page.getByTestId("preview-notice").count(), 1, "an empty setup, beside one's own");
  assert.deepEqual(await here.names(), ["Mine"]);
  assert.deepEqual(await here.storedNames(), ["Mine"]);
  await here.press("Back to your setup");
  assert.deepEqual(await here.chosen(), ["Mine"]);
});

test("the panel works where storage is forbidden", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  const here = await Sharing.open(context, server.url);
  await here.rename("Only in memory");
  const link = await here.link();
  const panel = await broken(here);
  assert.equal(await panel.locator("textarea").inputValue(), link);
  const file = await here.download(() => panel.getByText("Save your setups as a file").click());
  assert.deepEqual(JSON.parse(file.text).setups.map((setup) => setup.name), ["Only in memory"]);
});

test("breaking at the start is told by one panel only", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(`addEventListener("DOMContentLoaded", ${refuseNextElement})`);
  const page = await context.newPage();
  await page.goto(server.url);
  await page.locator("#recovery, #trouble:not([hidden])").first().waitFor();
  // A second panel, which must not come, has no mark to wait for.
  await pause(page, 500);
  const told = (await page.locator("#recovery").count()) + (await page.locator("#trouble:not([hidden])").count());
  assert.equal(told, 1);
});
