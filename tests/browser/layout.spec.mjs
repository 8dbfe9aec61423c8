// Room at every width: no sideways scrolling, nothing cut off, targets for a thumb, letters twice as large.
//
// Leaves pictures of the main views in tests/output/pictures/, to be looked at.
import assert from "node:assert/strict";
import path from "node:path";
import { test } from "node:test";
import { dismissMessage } from "./support/browser.mjs";
import { clippedText, cramped, look, LOOKS, openAt, PICTURES, throughAll, tooWide, WIDTHS } from "./support/views.mjs";
import { browser, server } from "./support/site.mjs";

const open = (t, width, options) => openAt(t, browser, server.url, width, options);

/** The widths of the pictures. */
const PICTURED = [360, 1280];

async function keepPictures(page, view, width) {
  await dismissMessage(page);
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

/** Whatever of the first screen does not stand above the fold, or has lines it should not have. */
async function belowTheFold(page) {
  return page.evaluate(() => {
    const at = (id) => document.querySelector(`[data-testid=${id}]`);
    const box = (id) => at(id).getBoundingClientRect();
    const nav = document.querySelector("nav").getBoundingClientRect();
    // A desk has its parts at the side.
    const fold = nav.left === 0 && nav.width === innerWidth ? nav.top : innerHeight;
    const shown = ["notices", "answer-figure", "wish", "verdict", "takes-most", "step-button"];
    const found = shown.filter((id) => box(id).bottom > fold + 0.5 || box(id).height === 0).map((id) => `${id} ends at ${box(id).bottom}, the fold is at ${fold}`);
    // Beside what is edited there is room for the chart as well.
    const chart = document.querySelector(".chart-course canvas").getBoundingClientRect();
    if (fold === innerHeight && (chart.bottom > fold + 0.5 || chart.height < 200)) found.push(`the chart from ${chart.top} to ${chart.bottom}`);
    if (box("notices").height > 40) found.push(`the notice of the example takes ${box("notices").height} px`);
    const words = [...document.querySelectorAll("nav [data-testid=tab] span")].map((word) => word.getBoundingClientRect());
    for (const [one, next] of words.slice(1).map((word, before) => [words[before], word])) {
      if (next.top < one.bottom && next.left - one.right < 4) found.push(`two words of the navigation ${(next.left - one.right).toFixed(1)} px apart`);
    }
    return found;
  });
}

for (const [width, height] of [[360, 640], [1280, 800]]) {
  test(`the first screen at ${width} by ${height} px holds the answer and the next step in every language; pictures in every look`, async (t) => {
    const found = [];
    for (const locale of ["en-GB", "de-DE", "fr-FR", "nl-NL"]) {
      const { nightbank, page, watch } = await openAt(t, browser, server.url, width, { viewport: { width, height }, locale, reducedMotion: "reduce", message: false });
      await page.getByTestId("step-gain").getByText("→").waitFor({ timeout: 60_000 });
      await nightbank.settled();
      found.push(...(await belowTheFold(page)).map((line) => `${locale}: ${line}`));
      for (const word of LOOKS) {
        await look(page, word);
        await page.screenshot({ path: path.join(PICTURES, `first-screen-${width}-${locale.slice(0, 2)}-${word}.png`) });
      }
      watch.assertClean(server.origin);
    }
    assert.deepEqual(found, []);
  });
}

/** The ends of a table that has no room: what of it can be seen once it is moved aside as far as it goes. */
const asideOf = (box) => {
  box.scrollLeft = box.scrollWidth;
  const edge = box.getBoundingClientRect();
  const rows = [...box.querySelectorAll("tr")].map((row) => [...row.cells].map((cell) => cell.getBoundingClientRect()));
  const spilled = [...box.querySelectorAll("th, td")].filter((cell) => cell.scrollWidth > cell.clientWidth + 1);
  return {
    wider: box.scrollWidth > box.clientWidth + 1,
    page: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    name: Math.max(...rows.map(([name]) => Math.abs(name.left - edge.left))),
    last: Math.max(...rows.map((row) => row.at(-1).right - edge.right)),
    beside: Math.min(...rows.map((row) => row.at(-1).left - row[0].right)),
    spilled: spilled.map((cell) => cell.innerText),
    byHand: box.tabIndex === 0 && ["auto", "scroll"].includes(getComputedStyle(box).overflowX),
  };
};

test("a table that has no room on a phone is moved aside under the names of its rows, to the last column", async (t) => {
  const { nightbank, page } = await open(t, 360);
  await nightbank.openDetails();
  for (let depth = 0; depth < 3; depth += 1) {
    await page.locator("main details:not([open])").evaluateAll((all) => all.forEach((one) => (one.open = true)));
    await nightbank.settled();
  }
  const boxes = page.locator(".table-box:visible");
  const tables = await boxes.evaluateAll((all, source) => all.map(new Function(`return ${source}`)()), asideOf.toString());
  assert.ok(tables.filter((table) => table.wider).length > 2, JSON.stringify(tables));
  for (const table of tables) {
    assert.deepEqual([table.spilled, table.page, table.byHand], [[], 0, true]);
    assert.ok(table.name < 1 && table.last < 1 && table.beside > -1, JSON.stringify(table));
  }
});

test("letters twice as large on a phone: every word of the navigation is whole, within its button and the window", async (t) => {
  const { nightbank, page } = await open(t, 360);
  const session = await page.context().newCDPSession(page);
  await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  await nightbank.reload();
  const cut = await page.evaluate(() => {
    const within = (inner, outer) => inner.left >= outer.left - 0.5 && inner.right <= outer.right + 0.5 && inner.top >= outer.top - 0.5 && inner.bottom <= outer.bottom + 0.5;
    const wide = document.documentElement.clientWidth;
    return [...document.querySelectorAll("[data-testid=tab]")].filter((tab) => {
      const words = document.createRange();
      words.selectNodeContents(tab.querySelector("span"));
      const [box, text] = [tab.getBoundingClientRect(), words.getBoundingClientRect()];
      const lines = new Set([...words.getClientRects()].map((line) => Math.round(line.top)));
      return lines.size > 1 || !within(text, box) || box.left < 0 || box.right > wide;
    }).map((tab) => tab.innerText);
  });
  assert.deepEqual(cut, []);
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
