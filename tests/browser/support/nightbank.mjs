// The page as a test sees it: actions and questions in the words of the user, locators in one place.
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

  /** The app has taken the place of the static outline. */
  async ready() {
    await this.page.locator("#app[data-ready]").waitFor({ timeout: 20_000 });
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
    await this.page.getByRole("button", { name: "Load it now" }).click();
  }

  /** What the page is about, below its frame. */
  main() {
    return this.page.getByRole("main");
  }

  /** What `boot.js` says where the page cannot start. */
  trouble() {
    return this.page.locator("#trouble");
  }
}
