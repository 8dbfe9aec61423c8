// The part "Appliances" and the sheet over it, in the words of the user.
import { Nightbank } from "./nightbank.mjs";

export class Appliances {
  /** @param {Nightbank} nightbank */
  constructor(nightbank) {
    this.nightbank = nightbank;
    this.page = nightbank.page;
  }

  row(name) {
    return this.page.getByTestId("load").filter({ hasText: name });
  }

  /** Names of the rows, from above. */
  async names() {
    return this.page.getByTestId("load").locator(".load-name").allInnerTexts();
  }

  /** Energy a day of a row [Wh]. */
  async energy(name) {
    return wattHours(await this.row(name).getByTestId("load-energy").first().innerText());
  }

  sheet() {
    return this.page.getByRole("dialog");
  }

  /** Opens the sheet of an appliance in the list. */
  async open(name) {
    await this.row(name).getByTestId("load-button").click();
    await this.page.getByTestId("quick").waitFor();
  }

  /** Opens what is seldom changed. */
  async moreExact() {
    await this.sheet().locator("summary", { hasText: "More exact" }).click();
    await this.page.getByTestId("load-editor").waitFor();
  }

  field(label) {
    return this.sheet().getByLabel(label, { exact: true });
  }

  async press(name) {
    await this.sheet().getByRole("button", { name, exact: true }).click();
  }

  async done() {
    await this.press("Done");
    await this.sheet().waitFor({ state: "hidden" });
  }

  /** Adds what a search finds first, and leaves its sheet open. */
  async add(search, name) {
    await this.page.getByRole("button", { name: "Add an appliance" }).click();
    await this.sheet().getByRole("searchbox").fill(search);
    await this.sheet().getByRole("button", { name }).first().click();
    await this.page.getByTestId("quick").waitFor();
  }
}

/** The figure in a text such as "1,234 Wh a day". */
export const wattHours = (text) => Number(text.replace(/[^\d.]/g, ""));
