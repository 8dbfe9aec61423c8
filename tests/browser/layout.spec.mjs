// Room at every width: no sideways scrolling, nothing cut off, targets for a thumb, letters twice as large.
//
// Leaves pictures of the main views in tests/output/pictures/, to be looked at.
import assert from "node:assert/strict";
import path from "node:path";
import { test } from "node:test";
import { clippedText, cramped, look, LOOKS, openAt, PICTURES, throughAll, tooWide, WIDTHS } from "./support/views.mjs";
import { browser, server } from "./support/site.mjs";

const open = (t, width, options) => openAt(t, browser, server.url, width, options);

/** The widths of the pictures. */
const PICTURED = [360, 1280];

async function keepPictures(page, view, width) {
  await page.getByTestId("toast").getByRole("button").last().evaluateAll((all) => all.forEach((close) => close.click()));
  const usual = page.viewportSize();
  // A sheet is as tall as the window; of everything else the whole is shown, with the bars where they belong.
  const height = view.close ? usual.height : await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height });
  await page.evaluate(() => (document.querySelector("dialog[open]") ?? document.documentElement).scrollTo(0, 0));
  for (const word of LOOKS) {
    await look(page, word);
    const name = `${view.name.replaceAll(/\W+/g, "-")}-${width}-${word}.png`;
    await page.screenshot({ path: path.join(PICTURES, name) });
  }
  await look(page, LOOKS[0]);
}

test(`at ${WIDTHS.join(", ")} px everything fits, and every target has room for a thumb`, async (t) => {
  // Nothing is caught half way in a picture.
  const { page, watch } = await open(t, WIDTHS[0], { reducedMotion: "reduce" });
  await look(page, LOOKS[0]);
  const found = await throughAll(page, WIDTHS, async (view, width) => {
    const lines = await cramped(page);
    if (view.picture && PICTURED.includes(width)) await keepPictures(page, view, width);
    return lines;
  });
  assert.deepEqual(found, []);
  watch.assertClean(server.origin);
});

test("letters twice as large: nothing is cut off or runs out sideways", async (t) => {
  const { nightbank, page } = await open(t, 320);
  const session = await page.context().newCDPSession(page);
  // The size of letters that a reader sets in the browser.
  await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  await nightbank.reload();
  assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize), "32px");
  const found = await throughAll(page, [320, 640], async () => [...(await tooWide(page)), ...(await clippedText(page))]);
  assert.deepEqual(found, []);
});
