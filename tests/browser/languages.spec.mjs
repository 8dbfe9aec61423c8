// German, French and Dutch: asked for by the browser or chosen by hand, whole, kept, and with room for longer words.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";
import { cramped, throughAll } from "./support/views.mjs";

const LANGUAGES = [
  { lang: "de", locale: "de-AT", nights: "Nächte" },
  { lang: "fr", locale: "fr-BE", nights: "nuits" },
  { lang: "nl", locale: "nl-NL", nights: "nachten" },
];

/** All three write a comma; the unit stays. */
const DECIMALS = /\d,\d\u202fWh/;

const nights = (page) => page.getByTestId("answer-figure").innerText();

for (const { lang, locale, nights: word } of LANGUAGES) {
  test(`${lang}: the browser asks for it; figures, dates and units follow; every view has room at 320 and 1280 px`, async (t) => {
    const { context, watch } = await freshContext(t, browser, { locale, viewport: { width: 320, height: 640 }, deviceScaleFactor: 1 });
    context.setDefaultTimeout(15_000);
    const nightbank = await Nightbank.open(context, server.url);
    const { page } = nightbank;
    await eventually("the answer in that language", async () => (await nights(page)).includes(word));
    assert.equal(await page.evaluate(() => document.documentElement.lang), lang);
    await nightbank.openDetails();
    await page.getByTestId("figure-value").getByText(DECIMALS).first().waitFor();
    const day = new Intl.DateTimeFormat(locale, { weekday: "short", timeZone: "UTC" }).format(new Date("2026-09-12"));
    assert.ok((await page.getByTestId("lantern").first().innerText()).includes(day), day);
    const found = await throughAll(page, [320, 1280], async () => {
      const shown = await page.locator("body").innerText();
      const lines = shown.split("\n");
      return [
        // A text that is missing shows by its key, a value that is missing by its name in braces.
        ...lines.filter((line) => /^[a-z]+(?:-[a-z0-9]+)+$|\{/.test(line)).map((line) => `not filled in: ${line}`),
        ...lines.filter((line) => /\b(?:the|your|with|and|battery|nights)\b/.test(line)).map((line) => `English: ${line}`),
        ...(await cramped(page)),
      ];
    });
    assert.deepEqual(found, []);
    watch.assertClean(server.origin);
  });
}

test("a language chosen by hand changes everything but the setup, and is there after a reload", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const nightbank = await Nightbank.open(context, server.url);
  const { page } = nightbank;
  await nightbank.openPart("Power");
  await nightbank.card("Battery").getByLabel("Capacity of each battery").fill("82.5");
  await nightbank.openPart("More");
  await page.getByRole("radio", { name: "Français" }).check({ force: true });
  await page.locator("html[lang=fr]").waitFor();
  await page.getByTestId("tab").nth(2).click();
  assert.equal(await page.getByLabel("Capacité d’une batterie").inputValue(), "82,5");
  await nightbank.settled();
  await nightbank.reload();
  await page.locator("html[lang=fr]").waitFor();
  await page.getByTestId("tab").nth(2).click();
  assert.equal(await page.getByLabel("Capacité d’une batterie").inputValue(), "82,5");
  watch.assertClean(server.origin);
});

test("a language that cannot be fetched is told, and the one in force stays", async (t) => {
  const { context } = await freshContext(t, browser, { serviceWorkers: "block" });
  await context.route(/i18n\/nl.*\.ftl/, (route) => route.abort());
  const nightbank = await Nightbank.open(context, server.url);
  const { page } = nightbank;
  await nightbank.openPart("More");
  await page.getByRole("radio", { name: "Nederlands" }).check({ force: true });
  await page.getByText(/could not be loaded/).first().waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.lang), "en");
  assert.equal(await page.getByRole("radio", { name: "English" }).isChecked(), true);
});

for (const languages of [["en_US"], ["en-US@posix"], ["en-"], ["de_DE.UTF-8", "nl_BE"], ["de-DE-1901-1901"], [], undefined]) {
  test(`a browser that prefers ${JSON.stringify(languages)} starts, in a language that is well-formed`, async (t) => {
    const { context, watch } = await freshContext(t, browser);
    await context.addInitScript((languages) => Object.defineProperty(navigator, "languages", { get: () => languages }), languages);
    const nightbank = await Nightbank.open(context, server.url);
    assert.match(await nights(nightbank.page), /\d+\s+nights?/);
    watch.assertClean(server.origin);
  });
}

test("of the languages preferred, the first that is well-formed and spoken here counts", async (t) => {
  const { context } = await freshContext(t, browser);
  await context.addInitScript(() => Object.defineProperty(navigator, "languages", { get: () => ["de_DE.UTF-8", "xx", "fr-CA", "en"] }));
  const { page } = await Nightbank.open(context, server.url);
  await page.locator("html[lang=fr]").waitFor();
});
