// A log of readings: chosen, pasted or dropped, read, one finding taken over and taken back.
import assert from "node:assert/strict";
import { test } from "node:test";
import { freshContext } from "./support/browser.mjs";
import { Deciding } from "./support/deciding.mjs";
import { browser, server } from "./support/site.mjs";

/** Five nights of a van: 30 W that never stop, a cold box of 60 W for 12 minutes of 40, one row a minute. */
function log() {
  const rows = ["Time,State of charge (%),Voltage (V),Current (A)"];
  let charge = 90;
  for (let minute = 0; minute < 5 * 1440; minute += 1) {
    const ofDay = minute % 1440;
    const night = ofDay < 240 || ofDay >= 1380;
    const running = minute % 40 < 12;
    const watts = night ? -30 - (running ? 60 : 0) : ofDay > 600 && ofDay < 960 ? 250 : -45;
    const amps = watts / 13;
    charge = Math.min(100, charge + (amps / 60 / 100) * 100);
    const day = String(1 + Math.floor(minute / 1440)).padStart(2, "0");
    const time = `${String(Math.floor(ofDay / 60)).padStart(2, "0")}:${String(ofDay % 60).padStart(2, "0")}`;
    rows.push(`2026-06-${day} ${time},${charge.toFixed(0)},13.00,${amps.toFixed(2)}`);
  }
  return rows.join("\n");
}

async function opened(t) {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.show("A log of readings");
  return { page, watch };
}

async function paste(page, text) {
  await page.field("Or paste its rows").fill(text);
  await page.press("Read these rows");
}

test("a log shows its columns and findings; standby is taken over and taken back as one step", async (t) => {
  const { page, watch } = await opened(t);
  await page.field("Choose a file").setInputFiles({ name: "week.csv", mimeType: "text/csv", buffer: Buffer.from(log()) });
  const columns = page.page.getByTestId("log-columns");
  await columns.waitFor();
  assert.deepEqual(
    await columns.locator("select").evaluateAll((all) => all.map((select) => select.selectedOptions[0].text)),
    ["Time", "State of charge", "Battery voltage", "Battery current"],
  );
  assert.equal(await columns.locator("tbody tr").count(), 3, "a preview of three rows");
  const found = page.page.getByTestId("log-found");
  await found.waitFor({ timeout: 30_000 });
  await found.getByText(/At night (2[7-9]|3[0-3])(\.\d)?\s*W never stops/).waitFor();
  await found.getByText(/Something of (5[4-9]|6[0-6])(\.\d)?\s*W .*runs/).waitFor();
  const standby = found.getByRole("button", { name: /Take over: Measured standby/ });
  await standby.click();
  await page.page.getByText(/^Taken over: Measured standby/).waitFor();
  await page.goTo("Appliances");
  await page.page.getByTestId("load").filter({ hasText: "Measured standby" }).waitFor();
  await page.undo();
  await page.page.getByTestId("load").filter({ hasText: "Measured standby" }).waitFor({ state: "detached" });
  watch.assertClean(server.origin);
});

test("dates that can be read both ways are asked; rows without sense are listed; nothing is stored", async (t) => {
  const { page, watch } = await opened(t);
  await page.nightbank.settled();
  const address = page.page.url();
  await paste(page, "When;A\n03/04/2026 10:00;-1,5\nhello;2\n03/04/2026 11:00;-2,5\n03/05/2026 10:00;-1,5");
  await page.assertSays(/^Day or month first\?/);
  await page.main().getByLabel("Day", { exact: true }).check();
  await page.assertSays(/^1 entry left out$/);
  const stored = await page.page.evaluate(() => JSON.stringify({ ...localStorage }));
  assert.ok(!stored.includes("03/04"), "the log is not kept");
  assert.equal(page.page.url(), address, "nor in the address");
  await page.press("Put the log away");
  assert.equal(await page.page.getByTestId("log-columns").count(), 0);
  watch.assertClean(server.origin);
});

test("a log dropped anywhere on the page opens as a log, not as appliances", async (t) => {
  const { context, watch } = await freshContext(t, browser);
  const page = await Deciding.open(context, server.url);
  await page.page.evaluate((text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], "week.csv", { type: "text/csv" }));
    const main = document.querySelector("main");
    main.dispatchEvent(new DragEvent("drop", { dataTransfer: carried, bubbles: true, cancelable: true }));
  }, log());
  await page.page.getByTestId("log-columns").waitFor();
  watch.assertClean(server.origin);
});
