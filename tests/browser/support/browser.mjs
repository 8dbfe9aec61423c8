// One real Chromium for a test file, and pages that are watched from the first moment on.
import assert from "node:assert/strict";
import { chromium } from "playwright-core";
import { StaticServer } from "../../serve.mjs";

/** The page as most people have it: a small phone. */
export const PHONE = { viewport: { width: 360, height: 640 }, deviceScaleFactor: 3, hasTouch: true };

/** The whole browser, windows and all. */
export const CHROMIUM = process.env.CHROMIUM || "/usr/bin/chromium";

/** Chromium without windows where there is one: it takes 3/5 of the processor time that the whole browser takes. */
export async function launch(executablePath = process.env.CHROMIUM_HEADLESS || CHROMIUM) {
  return chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--disable-gpu", "--font-render-hinting=none", "--disable-background-networking"],
  });
}

/**
 * What went wrong in, or left, a browser context. A test that expects trouble removes it from the lists.
 */
export class Watch {
  constructor() {
    /** Errors and warnings on the console, and uncaught exceptions. */
    this.complaints = [];
    /** What the content policy stopped. */
    this.violations = [];
    /** Every request: { url, type }. Those of the service worker are here too. */
    this.requests = [];
    /** Full loads of the top document, to prove that nothing reloads by itself. */
    this.loads = 0;
  }

  /** Requests that left the given origin. */
  foreign(origin) {
    return this.requests
      .map((request) => request.url)
      .filter((url) => /^(https?|wss?):/.test(url) && new URL(url).origin !== origin);
  }

  /** Fails unless everything was quiet and stayed at home. */
  assertClean(origin) {
    assert.deepEqual(this.violations, [], "content policy violations");
    assert.deepEqual(this.complaints, [], "console complaints");
    assert.deepEqual(this.foreign(origin), [], "requests to other hosts");
  }
}

/**
 * A fresh profile (empty storage, no service worker), closed when the test `t` ends.
 * @returns {Promise<{ context: import("playwright-core").BrowserContext, watch: Watch }>}
 */
export async function freshContext(t, browser, options = {}) {
  const context = await browser.newContext({ ...PHONE, locale: "en-GB", timezoneId: "Europe/Berlin", ...options });
  t.after(() => context.close());
  const watch = new Watch();
  context.on("request", (request) => watch.requests.push({ url: request.url(), type: request.resourceType() }));
  context.on("weberror", (error) => watch.complaints.push(`uncaught: ${error.error().stack ?? error.error()}`));
  context.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) {
      watch.complaints.push(`${message.type()}: ${message.text()} (${message.location().url})`);
    }
  });
  context.on("page", (page) => {
    page.on("load", () => (watch.loads += 1));
  });
  await context.exposeFunction("__policyViolation", (text) => watch.violations.push(text));
  await context.addInitScript(() => {
    addEventListener("securitypolicyviolation", (event) =>
      window.__policyViolation(`${event.effectiveDirective}: ${event.blockedURI} ${event.sample} (${event.sourceFile}:${event.lineNumber})`),
    );
  });
  return { context, watch };
}

/** A server for the directory that is stopped when the test `t` ends; it may be stopped and started before. */
export async function serve(t, directory, options = {}) {
  const server = await new StaticServer(directory, options).start();
  t.after(() => server.stop());
  return server;
}

/** Puts the message at the foot of the page away; its cross has no room on a phone where it offers to take something back. */
export const dismissMessage = (page) =>
  page.locator("[data-testid=toast] .icon-button").evaluateAll((all) => all.forEach((close) => close.click()));

/** Waits by the page's own clock: on a busy machine it runs as late as everything else of the page. */
export const pause = (page, duration_ms) =>
  page.evaluate((ms) => new Promise((resolve) => setTimeout(resolve, ms)), duration_ms);

/** Polls until `probe` returns something truthy; for what has no event to wait for. */
export async function eventually(what, probe, { timeout_ms = 10_000 } = {}) {
  const until = Date.now() + timeout_ms;
  for (;;) {
    const found = await probe();
    if (found) return found;
    if (Date.now() > until) assert.fail(`waited ${timeout_ms} ms in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
