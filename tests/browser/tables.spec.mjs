// Lists from spreadsheets: pasted, dropped, chosen; the page's own table back again; parts of a setup out of a link.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { Appliances } from "./support/appliances.mjs";
import { freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

const tables = new URL("../data/tables/", import.meta.url);

async function opened(t, options) {
  const { context, watch } = await freshContext(t, browser, options);
  const nightbank = await Nightbank.open(context, server.url);
  await nightbank.openPart("Appliances");
  return { nightbank, watch, here: new Appliances(nightbank), page: nightbank.page };
}

/** Opens the sheet for a list and puts the text in. */
async function paste(here, text) {
  await here.page.getByRole("button", { name: "Add an appliance" }).click();
  await here.press("Paste a list");
  await here.field("Rows from your spreadsheet").fill(text);
}

const rows = (here) => here.page.getByTestId("table-row");
/** Chooses one of a few. */
const choose = (here, name) => here.sheet().getByRole("radio", { name, exact: true }).check();
/** Ticks a box. */
const tick = (here, name) => here.sheet().getByRole("checkbox", { name }).check();

test("thirty measured devices are on the page in under ten taps, and one undo takes them back", async (t) => {
  const { nightbank, here, page, watch } = await opened(t);
  const before = await here.names();
  const list = Array.from({ length: 30 }, (_, n) => `Device ${n + 1}\t${n % 3 || 1}\t${n + 2},5\t1:30`);
  let taps = 0;
  await page.exposeFunction("__tapped", () => (taps += 1));
  await page.evaluate(() => addEventListener("click", (event) => event.detail > 0 && window.__tapped(), true));
  await paste(here, `Name\tHow many\tWatts\tHours\n${list.join("\n")}`);
  assert.equal(await rows(here).count(), 30);
  await choose(here, "Measured");
  await here.press("Add 30");
  await here.sheet().waitFor({ state: "hidden" });
  assert.ok(taps < 10, `${taps} taps`);
  // The list was the example: this one took its place.
  assert.equal((await here.names()).length, 30);
  assert.ok(Math.abs((await here.energy("Device 30")) - 31.5 * 1.5 * 2) <= 0.5);
  await page.getByTestId("toast").getByRole("button", { name: "Undo" }).click();
  await nightbank.settled();
  assert.deepEqual((await here.names()).sort(), before.sort());
  watch.assertClean(server.origin);
});

test("watts a day are asked, and nothing is added before the answer", async (t) => {
  const { here } = await opened(t);
  await paste(here, "Name;Watts a day\nHeadlamp;90");
  await here.sheet().getByText("What does “Watts a day” mean?").waitFor();
  assert.equal(await here.sheet().getByRole("button", { name: /^Add / }).count(), 0);
  await here.sheet().getByText("Answer the questions above first.").waitFor();
  // Once answered the question is gone.
  await here.sheet().getByRole("radio", { name: "Wh a day, one of them" }).click();
  await choose(here, "Estimate");
  await here.press("Add one");
  assert.equal(await here.energy("Headlamp"), 90);
});

test("rows that make no sense say why, and stay out only by choice", async (t) => {
  const { here } = await opened(t);
  await paste(here, "Name;W;Hours\nHeadlamp;5;2\nBroken;five;2\nTotal;10;\n");
  await choose(here, "Estimate");
  const faulty = here.page.getByTestId("table-faulty").locator("li");
  assert.match(await faulty.nth(0).innerText(), /Line 3.*Broken.*“five” is not a number/s);
  assert.match(await faulty.nth(1).innerText(), /Line 4.*It adds up other rows/s);
  assert.equal(await here.sheet().getByRole("button", { name: /^Add / }).count(), 0);
  await tick(here, "Leave these 2 rows out");
  await here.press("Add one");
  assert.deepEqual(await here.names(), ["Headlamp"]);
});

test("files of a spreadsheet in four languages and encodings are understood", async (t) => {
  for (const file of ["en.csv", "de.csv", "fr.csv", "nl.tsv"]) {
    const { here, watch } = await opened(t);
    await here.page.getByRole("button", { name: "Add an appliance" }).click();
    await here.press("Paste a list");
    const buffer = await readFile(new URL(file, tables));
    await here.field("Or choose a file (CSV or text)").setInputFiles({ name: file, mimeType: "text/csv", buffer });
    await rows(here).first().waitFor();
    const read = await rows(here).locator(".bring-keep").allInnerTexts();
    assert.equal(read.length, 5, file);
    assert.match(read[0], /46\sW/, `${file}: ${read[0]}`);
    assert.match(read[2], /4 × 2\.5\sW/, `${file}: ${read[2]}`);
    assert.equal(await here.page.getByTestId("table-faulty").locator("li").count(), 1, `${file}: the sum`);
    assert.ok(!(await here.nightbank.overflows()), file);
    watch.assertClean(server.origin);
  }
});

test("a table dropped on the page opens as a list, whatever is on screen", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  const here = new Appliances(nightbank);
  await nightbank.page.evaluate((text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], "list.csv", { type: "text/csv" }));
    const main = document.querySelector("main");
    main.dispatchEvent(new DragEvent("drop", { dataTransfer: carried, bubbles: true, cancelable: true }));
  }, "Name,W,Hours\nHeadlamp,5,2\n");
  await rows(here).first().waitFor();
  assert.equal(await rows(here).count(), 1);
  watch.assertClean(server.origin);
});

test("the table the page writes comes back unchanged", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const sharing = await Sharing.open(context, server.url);
  await sharing.part("Appliances");
  const here = new Appliances(new Nightbank(sharing.page));
  const names = await here.names();
  const energies = await sharing.page.getByTestId("load-energy").allInnerTexts();
  await sharing.part("More");
  await sharing.nightbank.unfold(sharing.page.getByRole("main"), "As tables for a spreadsheet");
  const table = await sharing.download(() => sharing.press("Appliances (CSV)"));
  await sharing.part("Appliances");
  await paste(here, table.text);
  await tick(here, /^Leave (this row|these \d+ rows) out$/);
  await here.press(`Add ${names.length}`);
  await here.sheet().waitFor({ state: "hidden" });
  assert.deepEqual(await here.names(), names);
  assert.deepEqual(await sharing.page.getByTestId("load-energy").allInnerTexts(), energies);
  watch.assertClean(server.origin);
});

test("what was pasted is still there after the sheet was closed", async (t) => {
  const { here } = await opened(t);
  await paste(here, "Name;W;Hours\nHeadlamp;5;2");
  await here.page.keyboard.press("Escape");
  await here.sheet().waitFor({ state: "hidden" });
  await here.page.getByRole("button", { name: "Add an appliance" }).click();
  await here.press("Paste a list");
  assert.equal(await rows(here).count(), 1);
});

test("parts of a setup out of a link are taken into one's own, and one step takes them out", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const there = await Sharing.open(context, server.url);
  await there.rename("Theirs");
  const link = await there.link();
  const { context: other } = await freshContext(t, browser);
  const sharing = await Sharing.open(other, server.url);
  await sharing.switchLoad(0);
  await sharing.rename("Mine");
  const nightbank = new Nightbank(sharing.page);
  await sharing.page.evaluate((hash) => (location.hash = hash), new URL(link).hash);
  const notice = sharing.page.getByTestId("preview-notice");
  await notice.waitFor();
  await notice.getByRole("button", { name: "Take parts of it" }).click();
  const here = new Appliances(nightbank);
  const ticks = sharing.page.getByTestId("take").getByRole("checkbox");
  await ticks.first().check();
  // The example is on both sides, so the name is there twice.
  await here.sheet().getByText("You have one of that name. Both stay.").first().waitFor();
  await here.press("Put in my setup");
  await notice.waitFor({ state: "detached" });
  await nightbank.settled();
  const after = await here.names();
  await sharing.page.getByTestId("toast").getByRole("button", { name: "Undo" }).click();
  await nightbank.settled();
  assert.equal(after.length, (await here.names()).length + 1);
  watch.assertClean(server.origin);
});
