// Long use: what the page takes of memory does not grow from edit to edit.
import assert from "node:assert/strict";
import { test } from "node:test";
import { freshContext } from "./support/browser.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { browser, server } from "./support/site.mjs";

const KIB = 1024;
/** So much more after 500 edits than after 100 counts as flat. */
const MOST_MORE = { program_kib: 256, script_kib: 512, nodes: 100, listeners: 50 };

/** Runs in the page before anything of it: keeps hold of the memory of the program. */
function holdMemory() {
  for (const name of ["instantiate", "instantiateStreaming"]) {
    const real = WebAssembly[name];
    WebAssembly[name] = async (...given) => {
      const made = await real.apply(WebAssembly, given);
      window.__memory ??= (made.instance ?? made).exports.memory;
      return made;
    };
  }
}

async function inUse(page, cdp) {
  await cdp.send("HeapProfiler.collectGarbage");
  const { usedSize } = await cdp.send("Runtime.getHeapUsage");
  const { metrics } = await cdp.send("Performance.getMetrics");
  const of = (name) => metrics.find((metric) => metric.name === name).value;
  const program = await page.evaluate(() => window.__memory.buffer.byteLength);
  return { program_kib: program / KIB, script_kib: usedSize / KIB, nodes: of("Nodes"), listeners: of("JSEventListeners") };
}

/** Types `count` capacities, no two in a row alike, each after the odds of the one before are whole. */
const edit = (field, count) =>
  field.evaluate(async (input, count) => {
    const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
    for (let number = 0; number < count; number += 1) {
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value").set.call(input, String(60 + ((number * 37) % 300)));
      input.dispatchEvent(new Event("input", { bubbles: true }));
      do await pause(15);
      while (document.querySelector("[data-testid=answer-working]"));
    }
  }, count);

test("500 edits take no more memory than 100", { timeout: 580_000 }, async (t) => {
  const { context, watch } = await freshContext(t, browser);
  await context.addInitScript(holdMemory);
  const nightbank = await Nightbank.open(context, server.url);
  const { page } = nightbank;
  await nightbank.pastFirstMessage();
  await nightbank.openPart("Power");
  const field = page.getByLabel("Capacity of each battery", { exact: true });
  await field.waitFor();
  await nightbank.settled();
  const cdp = await context.newCDPSession(page);
  await cdp.send("Performance.enable");
  await edit(field, 100);
  await nightbank.settled();
  const before = await inUse(page, cdp);
  await edit(field, 400);
  await nightbank.settled();
  const after = await inUse(page, cdp);
  console.log(`after 100 edits ${JSON.stringify(before)}, after 500 ${JSON.stringify(after)}`);
  for (const [what, most] of Object.entries(MOST_MORE)) {
    assert.ok(after[what] - before[what] <= most, `${what}: ${before[what]} after 100 edits, ${after[what]} after 500`);
  }
  watch.assertClean(server.origin);
});
