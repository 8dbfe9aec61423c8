// The part "Improve" and its tools, in the words of the user.
import assert from "node:assert/strict";
import { dismissMessage, pause } from "./browser.mjs";
import { Nightbank } from "./nightbank.mjs";

export class Deciding {
  /** @param {Nightbank} nightbank */
  constructor(nightbank) {
    this.nightbank = nightbank;
    this.page = nightbank.page;
  }

  static async open(context, url) {
    context.setDefaultTimeout(12_000);
    return new Deciding(await Nightbank.open(context, url));
  }

  main() {
    return this.nightbank.main();
  }

  tab(name) {
    return this.page.getByRole("navigation", { name: "Sections" }).getByRole("button", { name, exact: true });
  }

  async goTo(tab) {
    await this.dismiss();
    await this.tab(tab).click();
  }

  /** Opens a part of "Improve" or one of its tools. */
  async show(part) {
    await this.goTo("Improve");
    const back = this.main().getByRole("button", { name: "Back", exact: true });
    if (await back.count()) await back.click();
    await this.main().getByRole("button", { name: part }).first().click();
  }

  /** Nights of the answer in sight. */
  async nights() {
    return Number.parseInt(await this.page.locator(":is([data-testid=answer-bar-figure], [data-testid=answer-figure] strong):visible").innerText(), 10);
  }

  /** The odds are all played. */
  async settled() {
    await this.goTo("Nights");
    // What was done a moment ago may begin its work in a task of its own.
    await pause(this.page, 50);
    await this.page.locator("#app:not([data-working])").waitFor({ state: "attached", timeout: 30_000 });
  }

  /** Chance of lasting all nights asked for, 0..1. */
  async chance() {
    await this.settled();
    const text = await this.page.getByTestId("wish").getByText(/Chance: /).innerText();
    return Number.parseInt(/(\d+)\s*%/.exec(text)[1], 10) / 100;
  }

  /** Ranked changes, once all are played. */
  async helps() {
    await this.page.locator("[data-testid=improvements][aria-busy=false]").waitFor({ timeout: 20_000 });
    return this.page.getByTestId("improvement");
  }

  async undo() {
    await this.page.getByRole("button", { name: "Undo the last change" }).click();
  }

  field(label) {
    return this.main().getByLabel(label, { exact: true });
  }

  async type(label, text) {
    const field = this.field(label);
    await field.fill(text);
    await field.blur();
  }

  /** Puts the message at the foot of the page away: it may lie over what is pressed next. */
  async dismiss() {
    await dismissMessage(this.page);
  }

  /** Presses a button of the part shown. */
  async press(name) {
    await this.dismiss();
    await this.main().getByRole("button", { name }).click();
  }

  /** One of several. */
  async choose(option) {
    await this.dismiss();
    await this.main().getByRole("radio", { name: option, exact: true }).check();
  }

  async switchOn(label) {
    await this.main().getByRole("switch", { name: label }).check({ force: true });
  }

  async assertSays(pattern) {
    await this.main().getByText(pattern).first().waitFor({ timeout: 10_000 });
    assert.ok(await this.main().getByText(pattern).first().isVisible());
  }
}
