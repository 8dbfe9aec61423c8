// Setups, links and files on the page, in the words of the user.
import { readFile } from "node:fs/promises";
import { eventually } from "./browser.mjs";
import { Nightbank } from "./nightbank.mjs";

export const LIBRARY = "nightbank.library";
export const SET_ASIDE = "nightbank.set-aside";

export class Sharing {
  /** @param {Nightbank} nightbank */
  constructor(nightbank) {
    this.nightbank = nightbank;
    this.page = nightbank.page;
  }

  static async open(context, url) {
    return new Sharing(await Nightbank.open(context, url));
  }

  /** Goes to a part of the page by its name in the navigation. */
  async part(name) {
    await this.page.getByRole("navigation").getByRole("button", { name, exact: true }).click();
    // Parts are fetched when they are first needed.
    await this.page.locator("main h1").first().waitFor({ state: "attached" });
  }

  /** What stands above everything else. */
  notices() {
    return this.page.getByTestId("notices");
  }

  async press(name) {
    await this.page.getByRole("button", { name, exact: true }).click();
  }

  /** A first change of the setup's own: its name. */
  async rename(name) {
    await this.part("More");
    await this.page.getByLabel("Name of this setup").fill(name);
    await this.settled();
  }

  /** A change that moves the answer: switches the appliance in this row. */
  async switchLoad(row) {
    await this.part("Appliances");
    await this.page.getByRole("main").getByRole("switch").nth(row).click({ force: true });
    await this.settled();
  }

  async settled() {
    await this.nightbank.settled();
  }

  async names() {
    await this.part("More");
    return this.page.getByTestId("setup").locator("strong").allTextContents();
  }

  async chosen() {
    await this.part("More");
    return this.page.locator("[data-testid=setup][aria-current] strong").allTextContents();
  }

  /** The link as the page gives it. */
  async link() {
    await this.part("More");
    return this.page.getByLabel("This setup as a link").inputValue();
  }

  /** The answer once the odds are played: the figure and its facts. */
  async figures() {
    await this.part("Nights");
    await this.page.getByTestId("answer-figure").waitFor();
    await eventually("the odds are played", async () => (await this.page.getByTestId("answer-working").count()) === 0, { timeout_ms: 30_000 });
    const all = await Promise.all(
      ["answer-figure", "verdict", "wish", "lantern"].map((id) => this.page.getByTestId(id).allInnerTexts()),
    );
    return all.flat();
  }

  stored(key = LIBRARY) {
    return this.page.evaluate((key) => localStorage.getItem(key), key);
  }

  /** Names of the setups in storage. */
  async storedNames() {
    return JSON.parse((await this.stored()) ?? '{"entries":[]}').entries.map((entry) => entry.setup.name);
  }

  async fragment() {
    return this.page.evaluate(() => location.hash);
  }

  /** Presses and takes the file that comes of it: { name, text }. */
  async download(press) {
    const [download] = await Promise.all([this.page.waitForEvent("download"), press()]);
    return { name: download.suggestedFilename(), text: await readFile(await download.path(), "utf8"), path: await download.path() };
  }

  /** Chooses a file made of this text. */
  async openFile(text, name = "setups.json") {
    await this.part("More");
    const buffer = Buffer.isBuffer(text) ? text : Buffer.from(text);
    await this.page.getByLabel("Open a file").setInputFiles({ name, mimeType: "application/json", buffer });
  }
}
