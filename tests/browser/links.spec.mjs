// Links: what they carry arrives, nothing of one's own is touched, and what does not open says why.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext, pause } from "./support/browser.mjs";
import { Sharing } from "./support/sharing.mjs";
import { browser, server } from "./support/site.mjs";

/** A link to a setup of somebody else's, with the answer it gave there. */
async function someonesLink(t, name = "Lakeside") {
  const { context } = await freshContext(t, browser);
  const there = await Sharing.open(context, server.url);
  await there.switchLoad(0);
  await there.rename(name);
  const link = await there.link();
  return { link, fragment: new URL(link).hash.slice(1), figures: await there.figures() };
}

test("a link opened in a clean profile gives the same numbers, without a request more than the page's own", async (t) => {
  const { link, figures } = await someonesLink(t);
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, link);
  assert.match(await here.notices().innerText(), /a setup from a link: Lakeside/);
  assert.deepEqual(await here.figures(), figures);
  assert.equal(await here.stored(), null, "nothing is stored of it");
  watch.assertClean(server.origin);
  const sent = server.log.filter(({ url }) => url.includes(new URL(link).hash.slice(1, 20)));
  assert.deepEqual(sent, [], "the part behind # is never sent");
});

test("a preview stands beside one's own: back leaves it, keep adds it", async (t) => {
  const { link, fragment } = await someonesLink(t);
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const [mine, stored] = [await here.figures(), await here.stored()];

  // A link pasted into an open tab does not load the page again.
  await here.page.evaluate((hash) => (location.hash = hash), fragment);
  await here.notices().getByText("Lakeside").waitFor();
  const theirs = await here.figures();
  assert.notDeepEqual(theirs, mine);
  assert.equal(await here.stored(), stored, "own setups are untouched");

  // Changes to a preview stay in memory.
  await here.switchLoad(1);
  assert.equal(await here.stored(), stored);
  assert.equal(await here.fragment(), `#${fragment}`, "the address does not follow a preview");

  await here.press("Back to your setup");
  assert.deepEqual(await here.figures(), mine);
  assert.deepEqual(await here.chosen(), ["Mine"]);

  // The changes made are not lost either.
  await here.press("Undo");
  await here.notices().getByText("Lakeside").waitFor();
  await here.press("Keep in your setups");
  assert.deepEqual(await here.names(), ["Mine", "Lakeside"]);
  assert.deepEqual(await here.chosen(), ["Lakeside"]);
  await here.settled();
  assert.deepEqual(await here.storedNames(), ["Mine", "Lakeside"]);
  assert.equal(watch.loads, 1, "the page was never loaded again");
  watch.assertClean(server.origin);
});

test("the address follows one's own setup, and a reload shows it and no preview", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, `${server.url}?from=forum`);
  await here.settled();
  assert.equal(await here.fragment(), "", "the example is not one's own");
  await here.rename("Mine");
  const first = await here.fragment();
  assert.match(first, /^#1[0-9A-Za-z]+$/);
  assert.equal(`${server.url}${first}`, await here.link());
  await here.switchLoad(0);
  assert.notEqual(await here.fragment(), first);
  const entries = await here.page.evaluate(() => history.length);

  await here.nightbank.reload();
  assert.equal(await here.page.getByTestId("preview-notice").count(), 0);
  assert.deepEqual(await here.chosen(), ["Mine"]);
  assert.equal(await here.page.evaluate(() => history.length), entries, "replaced, never pushed");

  // One's own link in a new tab is one's own setup too.
  const other = await Sharing.open(context, await here.link());
  assert.equal(await other.page.getByTestId("preview-notice").count(), 0);
  assert.deepEqual(await other.names(), ["Mine"]);
});

test("an address left behind by a reload opens one's own as it is now; the same address as a link is a preview", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const behind = await here.fragment();
  await here.rename("Mine, later");
  const now = await here.fragment();
  assert.notEqual(now, behind);
  // A browser may leave this where the address is written while a reload is under way: an older address, unmarked.
  await here.page.evaluate((hash) => history.replaceState(null, "", hash), behind);
  await here.nightbank.reload();
  assert.equal(await here.page.getByTestId("preview-notice").count(), 0);
  assert.deepEqual(await here.chosen(), ["Mine, later"]);
  await eventually("the address catches up", async () => (await here.fragment()) === now);

  // Pasted into the reloaded tab, and opened in it anew.
  const preview = here.page.getByTestId("preview-notice").filter({ hasText: /a setup from a link: Mine\./ });
  await here.page.evaluate((hash) => (location.hash = hash), behind);
  await preview.waitFor();
  await here.press("Back to your setup");
  await preview.waitFor({ state: "detached" });
  await here.page.goto("about:blank");
  await here.nightbank.goto(`${server.url}${behind}`);
  await preview.waitFor();
  // It is one over a reload too.
  await here.nightbank.reload();
  assert.equal(await here.page.getByTestId("preview-notice").count(), 1);
});

test("a reload at any moment after a change shows the change", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  // Around the moments at which what was changed is stored (300 ms) and the address follows (500 ms).
  for (const after_ms of [0, 250, 320, 420, 480, 500, 520, 600]) {
    await here.part("More");
    await here.page.getByLabel("Name of this setup").fill(`After ${after_ms}`);
    await pause(here.page, after_ms);
    await here.nightbank.reload();
    assert.equal(await here.page.getByTestId("preview-notice").count(), 0, `a preview after ${after_ms} ms`);
    assert.deepEqual(await here.chosen(), [`After ${after_ms}`]);
  }
});

test("an address of one's own is enough when the browser has lost what was stored", async (t) => {
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  // As an erasing browser does: first away from the page, then everything stored goes.
  await here.page.goto("about:blank");
  await context.clearCookies();
  const eraser = await context.newPage();
  await eraser.goto(`${server.url}manifest.webmanifest`);
  await eraser.evaluate(() => localStorage.clear());
  await here.page.goBack();
  await here.nightbank.ready();
  assert.equal(await here.page.getByTestId("preview-notice").count(), 0);
  assert.deepEqual(await here.chosen(), ["Mine"]);
});

const MANGLED = [
  ["full stop", (f) => `#${f}.`],
  ["closing bracket", (f) => `#${f})`],
  ["angle bracket", (f) => `#${f}>`],
  ["angle bracket, encoded", (f) => `#${f}%3E`],
  ["second hash, encoded", (f) => `#%23${f}`],
  ["line wrap, encoded", (f) => `#${f.slice(0, 40)}%0A${f.slice(40)}`],
  ["spaces", (f) => `#${f.slice(0, 30)}%20%20${f.slice(30)}%20`],
  ["zero-width space", (f) => `#${f.slice(0, 9)}%E2%80%8B${f.slice(9)}`],
  ["asterisks", (f) => `#**${f}**`],
  ["tracking behind it", (f) => `#${f}&utm_source=chat`],
  ["query before it", (f) => `?fbclid=x#${f}`],
];

test("links come through what is done to them on the way", async (t) => {
  const { fragment } = await someonesLink(t);
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  for (const [what, mangle] of MANGLED) {
    await here.page.goto("about:blank");
    await here.nightbank.goto(`${server.url}${mangle(fragment)}`);
    const told = await here.notices().innerText();
    assert.match(told, /a setup from a link: Lakeside/, `${what}: ${told}`);
  }
  // Whatever surrounds it when it is pasted by hand.
  const pasted = [
    `<${server.url}#${fragment}>`,
    `see (${server.url}#${fragment}), what do you say?`,
    `${server.url}%23${fragment}`,
    `[url=${server.url}#${fragment}]my van[/url]`,
    `${server.url}#${fragment.slice(0, 50)} ${fragment.slice(50)}`,
  ];
  await here.nightbank.goto(server.url);
  for (const text of pasted) {
    await here.part("More");
    await here.page.getByLabel("Paste a link").fill(text);
    await here.press("Open the link");
    await here.notices().getByText("Lakeside").waitFor();
    await here.press("Back to the example");
  }
  watch.assertClean(server.origin);
});

test("a link whose # was written as %23 opens once the page is stored on the device", async (t) => {
  const { fragment } = await someonesLink(t);
  const { context } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.nightbank.storedOffline();
  await here.nightbank.controlled();
  await here.nightbank.goto(`${server.url}%23${fragment}`);
  await here.notices().getByText("Lakeside").waitFor();
});

test("what does not open says why, each fault in its own words, and touches nothing stored", async (t) => {
  const { fragment } = await someonesLink(t);
  const middle = fragment.length >> 1;
  const other = fragment[middle] === "a" ? "b" : "a";
  const faults = [
    [fragment.slice(0, middle), /end of this link is missing/],
    [`${fragment.slice(0, 39)}...${fragment.slice(-10)}`, /end of this link is missing/],
    [`2${fragment.slice(1)}`, /newer version/],
    [fragment.slice(0, middle) + other + fragment.slice(middle + 1), /altered on the way/],
    ["1", /end of this link is missing|altered on the way/],
  ];
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  const [mine, stored] = [await here.figures(), await here.stored()];
  for (const [broken, says] of faults) {
    await here.page.evaluate((hash) => (location.hash = hash), broken);
    await eventually(`told of ${broken.slice(0, 20)}`, async () => says.test(await here.notices().innerText()));
    assert.match(await here.notices().innerText(), /Your own setups are untouched/);
    assert.equal(await here.stored(), stored);
    assert.deepEqual(await here.figures(), mine);
    await here.press("Close");
  }
  // The same at the start of a page, where there is nothing else to show than the example.
  const { context: clean } = await freshContext(t, browser);
  const there = await Sharing.open(clean, `${server.url}#${faults[0][0]}`);
  assert.match(await there.notices().innerText(), faults[0][1]);
  // Nothing at all in what was pasted.
  await there.part("More");
  await there.page.getByLabel("Paste a link").fill("…");
  await there.press("Open the link");
  await there.notices().getByText("No link found in that").waitFor();
  // A place on the page is no link.
  await there.press("Close");
  await there.page.evaluate(() => (location.hash = "main"));
  await there.settled();
  assert.equal(await there.page.getByTestId("preview-notice").count(), 0);
  watch.assertClean(server.origin);
});

test("names out of a link are text, never markup", async (t) => {
  const hostile = "<img src=x onerror=alert(1)><b>";
  const { link } = await someonesLink(t, hostile);
  const { context, watch } = await freshContext(t, browser);
  const here = await Sharing.open(context, link);
  assert.ok((await here.notices().innerText()).includes(hostile));
  await here.press("Keep in your setups");
  assert.deepEqual(await here.names(), [hostile]);
  assert.equal(await here.page.locator("img").count(), 0);
  watch.assertClean(server.origin);
});

test("copying, the share sheet, the QR code and the post", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await context.addInitScript(() => {
    navigator.share = async (data) => void (window.shared = data);
  });
  const here = await Sharing.open(context, server.url);
  await here.rename("Lakeside");
  const link = await here.link();
  assert.match(await here.page.getByText(/characters\./).first().innerText(), new RegExp(`^${link.length} characters`));
  await here.press("Copy the link");
  assert.equal(await here.page.evaluate(() => navigator.clipboard.readText()), link);
  await here.press("Share…");
  assert.deepEqual(await here.page.evaluate(() => window.shared), { title: "Lakeside", url: link });

  await here.page.getByText("QR code for another phone").click();
  const code = here.page.getByRole("img", { name: "QR code of the link" });
  assert.match(await code.locator("path").getAttribute("d"), /^M0 0h7v1h-7z/, "the first finder pattern");

  await here.page.getByText("As text for a forum").click();
  const text = here.page.getByLabel("The text", { exact: true });
  assert.match(await text.inputValue(), /Lakeside[\s\S]*Nights on battery: \d+/);
  assert.ok((await text.inputValue()).includes(link));
  await here.page.getByText("BBCode", { exact: true }).first().click({ force: true });
  assert.ok((await text.inputValue()).includes(`[url=${link}]`));
  await here.page.getByText("Markdown", { exact: true }).first().click({ force: true });
  assert.ok((await text.inputValue()).includes(`](${link})`));
  watch.assertClean(server.origin);
});

test("where copying is forbidden the text is selected instead, and it is said", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => {
    Object.defineProperty(navigator, "clipboard", { value: { writeText: () => Promise.reject(new Error("no")) } });
  });
  const here = await Sharing.open(context, server.url);
  await here.rename("Mine");
  await here.press("Copy the link");
  await here.page.getByText("The text is selected: copy it by hand.").waitFor();
  assert.equal(await here.page.evaluate(() => getSelection().toString() || document.activeElement.value), await here.page.getByLabel("This setup as a link").inputValue());
});
