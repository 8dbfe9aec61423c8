// Files out and in, tables, pictures, paper.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { eventually, freshContext } from "./support/browser.mjs";
import { SET_ASIDE, Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

const wrapped = (setups, rest = {}) => JSON.stringify({ format: "nightbank", schema: 1, setups, ...rest });

test("a file gives the same numbers in another profile, and is added beside what is there", async (t) => {
  const { context } = await freshContext(t, browser);
  const there = await Sharing.open(context, server.url);
  await there.switchLoad(0);
  await there.rename("Lakeside, our van");
  const figures = await there.figures();
  await there.part("More");
  const file = await there.download(() => there.press("Save this setup as a file"));
  assert.equal(file.name, "nightbank-lakeside-our-van.json");

  const { context: clean, watch } = await freshContext(t, browser);
  const here = await Sharing.open(clean, server.url);
  await here.rename("Mine");
  await here.openFile(file.text);
  await here.notices().getByText("Added from the file: Lakeside, our van.").waitFor();
  assert.deepEqual(await here.names(), ["Mine", "Lakeside, our van"]);
  assert.deepEqual(await here.figures(), figures);
  await here.part("More");
  const again = await here.download(() => here.press("Save this setup as a file"));
  assert.equal(again.text, file.text, "out, in and out again is the same file");
  watch.assertClean(server.origin);
});

test("a file dropped anywhere on the page opens; a link or text dropped into a field is left alone", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  const prevented = await here.page.evaluate((text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], "setups.json", { type: "application/json" }));
    const fire = (type, dataTransfer) =>
      !document.querySelector("main").dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
    const words = new DataTransfer();
    words.setData("text/plain", "hello");
    return [fire("dragover", carried), fire("drop", carried), fire("dragover", words), fire("drop", words)];
  }, wrapped([{ name: "Dropped" }, { name: "Dropped too" }]));
  assert.deepEqual(prevented, [true, true, false, false]);
  await here.notices().getByText("Added 2 setups from the file: Dropped, Dropped too.").waitFor();
  assert.deepEqual(await here.names(), ["Dropped", "Dropped too"]);
  watch.assertClean(server.origin);
});

test("what does not open says why, and nothing is touched", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const stored = await here.stored();
  const faults = [
    ["", /The file is empty/],
    ["hello", /damaged or not a Nightbank file: reading stopped at line 1, character 1/],
    [wrapped([{}]).slice(0, -4), /damaged or not a Nightbank file/],
    ["[1,2]", /not a Nightbank file/],
    [JSON.stringify({ format: "nightbank", schema: 99 }), /newer version/],
    [wrapped([]), /no setup in the file/],
    [wrapped(Array.from({ length: 17 }, () => ({}))), /has 17 setups/],
    [wrapped([null, "Van"]), /no setup in the file/],
    [" ".repeat((1 << 20) + 1), /The file is [\d.,]+\sMiB; no setup needs more than/],
    [Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0, 1]), /damaged or not a Nightbank file/],
  ];
  for (const [content, says] of faults) {
    await here.openFile(content);
    await eventually(String(says), async () => says.test(await here.notices().innerText()));
    assert.equal(await here.stored(), stored, String(says));
    await here.press("Close");
  }
  watch.assertClean(server.origin);
});

test("a field that does not fit costs no more than itself, and is told with its place", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  const van = { name: "Van", bank: { capacity_20h: "much", parallel: 2 }, solar: [{ peak: 120 }, "panel"] };
  await here.openFile(wrapped([van, null, { name: "Caravan", loads: [{ name: "Lamp", draw: 5 }] }]));
  await eventually("told", async () => {
    const told = await here.notices().innerText();
    return /4 values could not be read/.test(told) && told.includes("Van · Battery (capacity_20h); Van · Solar 2; Setup 2; Caravan · Lamp (draw)");
  });
  assert.deepEqual(await here.names(), ["Van", "Caravan"]);
  await here.settled();
  const [first, second] = JSON.parse(await here.stored()).entries.map((entry) => entry.setup);
  assert.deepEqual([first.bank.capacity_20h, first.bank.parallel, first.solar.map((array) => array.peak)], [100, 2, [120]]);
  assert.deepEqual(second.loads.map((load) => load.name), ["Lamp"]);
  assert.equal(await here.stored(SET_ASIDE), null, "the file is still there");
  watch.assertClean(server.origin);
});

test("numbers out of bounds and unknown fields are told, and what finds no room", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.openFile(wrapped([{ name: "Odd", bank: { capacity_20h: -5, colour: "red" } }]));
  await eventually("told", async () => {
    const told = await here.notices().innerText();
    return /One value was out of range/.test(told) && /One field was not recognised and was skipped: setups\[0\]\.bank\.colour/.test(told);
  });
  await here.openFile(wrapped(Array.from({ length: 16 }, (_, n) => ({ name: `No ${n + 1}` }))));
  await eventually("told", async () => /Added 15 setups[\s\S]*One more did not fit: 16 setups is the limit/.test(await here.notices().innerText()));
  assert.equal((await here.names()).length, 16);
});

test("tables open in a spreadsheet: marks of the language, one row a load and a day", async (t) => {
  for (const [locale, mark] of [["en-GB", ","]]) {
    const { context } = await freshContext(t, browser, { locale });
    const here = await Sharing.open(context, server.url);
    await here.figures().catch(() => {});
    // The words differ by language, the order of parts does not.
    await here.page.getByTestId("tab").last().click();
    const buttons = here.page.locator("details", { has: here.page.locator("button") });
    await here.page.locator("summary").filter({ hasText: /tables|Tabelle/i }).first().click();
    const save = buttons.filter({ hasText: /CSV/ }).locator("button").filter({ hasText: "CSV" });
    const loads = await here.download(() => save.first().click());
    assert.match(loads.name, /\.csv$/);
    assert.equal(loads.text[0], "\ufeff");
    const rows = loads.text.trim().split("\r\n");
    const own = await here.page.evaluate(() => document.querySelectorAll("[data-testid=load]").length);
    assert.ok(rows.length > 10 && own === 0);
    assert.equal(rows[0].split(mark).length, 12);
    const days = await here.download(() => save.nth(1).click());
    const dayRows = days.text.trim().split("\r\n");
    assert.match(dayRows[1], new RegExp(`^\\d{4}-\\d{2}-\\d{2}${mark}`));
    assert.equal(dayRows[1].split(mark).length, 10);
  }
});

test("pictures: outlook and ranking, as PNG and as SVG", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.figures();
  await here.rename("Lakeside <b>");
  await here.page.getByText("As a picture", { exact: true }).click();
  const [download] = await Promise.all([here.page.waitForEvent("download"), here.press("The outlook (PNG)")]);
  const png = await readFile(await download.path());
  assert.deepEqual([...png.subarray(1, 4)], [..."PNG"].map((c) => c.charCodeAt(0)));
  const [width, height] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  assert.equal(width, 1200);
  assert.ok(height > 600 && height < 2400, `${height} px high`);
  // Something is drawn: thousands of pixels are not of the colour of paper.
  const inked = await here.page.evaluate(async (bytes) => {
    const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: "image/png" }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext("2d");
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    let inked = 0;
    for (let at = 0; at < data.length; at += 4) if (data[at] < 120) inked += 1;
    return inked;
  }, [...png]);
  assert.ok(inked > 5000, `${inked} dark pixels`);

  for (const [name, words] of [["What uses most", /What uses most/], ["The outlook", /nights?[\s\S]*%[\s\S]*What uses most/]]) {
    const svg = await here.download(() => here.press(`${name} (SVG)`));
    const parsed = await here.page.evaluate((text) => {
      const svg = new DOMParser().parseFromString(text, "image/svg+xml");
      return { fault: Boolean(svg.querySelector("parsererror")), words: svg.documentElement.textContent, bold: svg.querySelectorAll("b").length };
    }, svg.text);
    assert.equal(parsed.fault, false);
    assert.match(parsed.words, /Lakeside <b>/);
    assert.match(parsed.words, words);
    assert.equal(parsed.bold, 0);
  }
  watch.assertClean(server.origin);
});

test("printed, it is one A4 page with the answer, the drains and the way back", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.figures();
  await here.rename("Lakeside");
  const pdf = (await here.page.pdf({ format: "A4", preferCSSPageSize: true })).toString("latin1");
  assert.equal(pdf.match(/\/Type\s*\/Page\b/g)?.length, 1, "pages");
  await here.page.emulateMedia({ media: "print" });
  await here.page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const paper = here.page.getByTestId("paper");
  await paper.waitFor({ state: "visible" });
  const words = await paper.innerText();
  assert.match(words, /Lakeside[\s\S]*night[\s\S]*What uses most/);
  assert.ok(await paper.getByRole("img", { name: "QR code of the link" }).isVisible());
  assert.equal(await here.page.getByRole("navigation").isVisible(), false);
  await here.page.evaluate(() => dispatchEvent(new Event("afterprint")));
  assert.equal(await paper.count(), 0);
  watch.assertClean(server.origin);
});

test("measured appliances are given on as a list in each markup and as a picture a forum can show", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.part("More");
  const card = here.page.getByRole("main");
  await here.nightbank.unfold(card, "List of appliances");
  const list = here.page.getByLabel("List to post");
  const inside = card.locator("details").filter({ has: here.page.locator("summary", { hasText: "List of appliances" }) });
  await list.waitFor();
  const measured = (await list.inputValue()).trim().split("\n");
  assert.ok(measured.slice(1, -2).every((line) => line.endsWith("; Measured")), measured.join("\n"));
  await inside.getByRole("radio", { name: "All of them" }).check();
  await eventually("the list is there", async () => (await list.inputValue()).split("\n").length > 5);
  assert.match(await list.inputValue(), /^Appliance; /);
  await inside.getByRole("radio", { name: "Markdown" }).check();
  assert.match(await list.inputValue(), /^\| Appliance \|.*\n\| --- \|/);
  const png = await here.download(() => here.press("As a picture (PNG)"));
  const bytes = await readFile(png.path);
  assert.equal(bytes.subarray(1, 4).toString(), "PNG");
  assert.equal(bytes.readUInt32BE(16), 1200, "twice the width a forum shows");
  const svg = await here.download(() => here.press("As a picture (SVG)"));
  assert.match(svg.text, /^<svg /);
  await here.nightbank.unfold(card, "As text for a forum or a message");
  const text = here.page.getByLabel("The text", { exact: true });
  await eventually("the verdict stands in it", async () => /safe|tight|night/i.test((await text.inputValue()).split("\n\n")[1] ?? ""));
  watch.assertClean(server.origin);
});
