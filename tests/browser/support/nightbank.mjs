// The page as a test sees it: actions and questions in the words of the user, locators in one place.
import { pause } from "./browser.mjs";

export class Nightbank {
  /** @param {import("playwright-core").Page} page */
  constructor(page) {
    this.page = page;
    this.app = page.locator("#app");
  }

  /** Opens in a new tab of the context and waits until the page answers. */
  static async open(context, url) {
    const nightbank = new Nightbank(await context.newPage());
    await nightbank.goto(url);
    return nightbank;
  }

  async goto(url) {
    await this.page.goto(url);
    await this.ready();
  }

  async reload() {
    await this.page.reload();
    await this.ready();
  }

  /** The app has taken the place of the static outline, and what keeps the setups is there. */
  async ready() {
    await this.page.locator("#app[data-ready][data-keeps]").waitFor({ timeout: 20_000 });
  }

  /** No search plays, no chunk is on its way, and storage and address have followed what was typed. */
  async settled() {
    // What was done a moment ago may begin its work in a task of its own.
    await pause(this.page, 50);
    await this.page.locator("#app:not([data-working])").waitFor({ state: "attached", timeout: 30_000 });
  }

  /** The message of the first visit, that the page works offline now, has come and is put away. It never lies over the answer. */
  async pastFirstMessage() {
    const answer = this.page.getByTestId("tab").first();
    if ((await answer.getAttribute("aria-current")) !== null) {
      await this.openPart("More");
      await this.pastFirstMessage();
      await this.openPart("Nights");
      return;
    }
    const message = this.page.getByTestId("toast").filter({ hasText: "Works offline" });
    await message.waitFor({ timeout: 20_000 });
    await message.getByRole("button", { name: "Dismiss the message" }).click();
    await message.waitFor({ state: "detached" });
  }

  /** A service worker is active, so the whole build is stored. */
  async storedOffline() {
    await this.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  }

  /** Resolves once this tab is under a service worker's control. */
  async controlled() {
    await this.page.evaluate(
      () =>
        navigator.serviceWorker.controller ||
        new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", () => resolve(), { once: true })),
    );
  }

  /** Names of our caches. */
  async caches() {
    return this.page.evaluate(() => caches.keys());
  }

  /** Asks the browser to look for a newer build now, instead of at the next visit. */
  async lookForUpdate() {
    await this.page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  }

  async updateIsWaiting() {
    return this.page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
  }

  newVersionNotice() {
    return this.page.getByText("A new version is ready");
  }

  async loadNewVersion() {
    await this.page.getByRole("button", { name: "Update now" }).click();
  }

  /** Opens "Details" below the answer, unless they stand open. */
  async openDetails() {
    const details = this.main().locator(".details > details").first();
    await details.waitFor();
    if ((await details.getAttribute("open")) === null) await details.locator("summary").first().click();
  }

  /** What the page is about, below its frame. */
  main() {
    return this.page.getByRole("main");
  }

  /** Opens a part of the page by its name in the navigation. */
  async openPart(name) {
    await this.page.getByRole("navigation").getByRole("button", { name, exact: true }).click();
    await this.page.locator("main h1").waitFor();
  }

  /** A card of the part that is open, by its heading. */
  card(title) {
    return this.page
      .locator("main section")
      .filter({ has: this.page.getByRole("heading", { name: title, exact: true, level: 2 }) });
  }

  /** Opens what is folded away under `title`, and what that is folded away in. */
  async unfold(within, title) {
    await within.locator("summary", { hasText: title }).first().evaluate((summary) => {
      for (let details = summary.parentElement; details; details = details.parentElement.closest("details")) details.open = true;
    });
  }

  /** What stands under a field because its content is no good; empty if it is. */
  async faultOf(field) {
    const described = (await field.getAttribute("aria-describedby")) ?? "";
    const texts = await Promise.all(
      described.split(" ").map((id) => this.page.locator(`[id="${id}"].field-fault`).allInnerTexts()),
    );
    return texts.flat().join("").trim();
  }

  /** Whether something is wider than the window. */
  async overflows() {
    return this.page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
  }

  /** What `boot.js` says where the page cannot start. */
  trouble() {
    return this.page.locator("#trouble");
  }
}
