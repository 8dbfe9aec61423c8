// The page as a camper uses it, in any browser that speaks WebDriver: taps, keys and what is to be read.
import { Key } from "selenium-webdriver";
import { eventually } from "./browser.mjs";

/** Finds, in the page, what is in sight and bears a name; above all else in the sheet that lies over the rest. */
function find(kind, name) {
  const said = (text) => (text ?? "").replace(/\s+/g, " ").trim();
  const fits = name.startsWith("/") ? (text) => new RegExp(name.slice(1, -1)).test(said(text)) : (text) => said(text) === name;
  const shown = (element) => element.getClientRects().length > 0;
  const within = document.querySelector("dialog[open]") ?? document;
  const all = (selector) => [...within.querySelectorAll(selector)].filter(shown);
  if (kind === "field") return all("label").find((label) => fits(label.innerText))?.control ?? all("[aria-label]").find((one) => fits(one.ariaLabel ?? one.getAttribute("aria-label")));
  if (kind === "choice") return all("label").find((label) => label.control && fits(label.innerText));
  if (kind === "fold") return all("summary").find((summary) => fits(summary.innerText));
  return all("button, a[href]").find((button) => fits(button.getAttribute("aria-label") ?? button.innerText));
}

export class Camper {
  /** @param {import("selenium-webdriver").WebDriver} session */
  constructor(session) {
    this.session = session;
  }

  /** Runs in the page, with these values; gives what it returns. */
  ask(question, ...values) {
    return this.session.executeScript(`return (${question})(...arguments)`, ...values);
  }

  /** Opens an address anew, also one that differs from the last behind its # alone. */
  async open(url) {
    await this.session.get("about:blank");
    await this.session.get(url);
    await this.ready();
  }

  async reload() {
    // Not by the driver, one of which goes past what is stored on the device.
    await this.ask(() => {
      window.older = true;
      location.reload();
    });
    await eventually("a reload", () => this.ask(() => !window.older).catch(() => false), { timeout_ms: 60_000 });
    await this.ready();
  }

  /** The answer stands, what keeps the setups is there, and nothing is still on its way. */
  async ready() {
    const stands = () => document.querySelector("#app[data-ready][data-keeps]") !== null;
    await eventually("the page stands", () => this.ask(stands), { timeout_ms: 60_000 });
    await this.settled();
  }

  async settled() {
    await this.session.sleep(100);
    const rests = () => document.querySelector("#app[data-working]") === null;
    await eventually("the page rests", () => this.ask(rests), { timeout_ms: 60_000 });
  }

  /** The thing of this kind with this name, waited for; a name between slashes is a pattern. */
  found(kind, name) {
    return eventually(`a ${kind} named ${name}`, () => this.ask(find, kind, name), { timeout_ms: 20_000 });
  }

  /** Presses what bears this name: the middle of it comes into sight, and gets a press where it then stands. */
  async press(name, kind = "button") {
    await this.pressOn(await this.found(kind, name));
  }

  async pressOn(element) {
    await this.ask((one) => one.scrollIntoView({ block: "center", behavior: "instant" }), element);
    await element.click();
  }

  /** Chooses one of several, or switches something over. */
  choose(name) {
    return this.press(name, "choice");
  }

  async isOn(name) {
    return this.ask((label) => label.control.checked, await this.found("choice", name));
  }

  unfold(name) {
    return this.press(name, "fold");
  }

  /** Takes the place of what stands in a field, key by key. */
  async type(name, text) {
    const field = await this.found("field", name);
    await this.ask((one) => one.scrollIntoView({ block: "center", behavior: "instant" }), field);
    await field.click();
    await this.keys({ held: Key.CONTROL }, "a");
    await this.keys({}, text);
  }

  /** Keys as they are pressed, whatever has the focus. */
  async keys({ held }, text) {
    const keys = this.session.actions();
    if (held) keys.keyDown(held);
    keys.sendKeys(...text);
    if (held) keys.keyUp(held);
    await keys.perform();
  }

  /** Puts what was copied into a field. */
  async paste(name) {
    await this.pressOn(await this.found("field", name));
    await this.keys({ held: Key.CONTROL }, "v");
  }

  async contentOf(name) {
    return this.ask((field) => field.value, await this.found("field", name));
  }

  /** What stands under a field because its content is no good. */
  async faultOf(name) {
    return this.ask((field) => {
      const ids = (field.getAttribute("aria-describedby") ?? "").split(" ");
      return ids.map((id) => document.getElementById(id)).filter((one) => one?.matches(".field-fault")).map((one) => one.innerText).join(" ").trim();
    }, await this.found("field", name));
  }

  /** Puts a day, such as 2026-12-20, into a field as its calendar does. */
  async pickDay(name, day) {
    await this.ask(
      (field, day) => {
        field.value = day;
        for (const type of ["input", "change"]) field.dispatchEvent(new Event(type, { bubbles: true }));
      },
      await this.found("field", name),
      day,
    );
  }

  /** Chooses from a list, by what it reads: with the keys, as a list opens in a window of the system's. */
  async select(name, text) {
    const list = await this.found("field", name);
    await this.ask((one) => {
      one.scrollIntoView({ block: "center", behavior: "instant" });
      one.focus();
    }, list);
    await this.keys({}, text);
    await this.keys({}, [Key.ENTER]);
    await eventually(`${text} is chosen`, async () => (await this.chosenOf(name)) === text);
  }

  async chosenOf(name) {
    return this.ask((list) => list.selectedOptions[0].text.trim(), await this.found("field", name));
  }

  async escape() {
    await this.session.actions().sendKeys(Key.ESCAPE).perform();
    await eventually("the sheet is away", () => this.ask(() => document.querySelector("dialog[open]") === null));
  }

  /** Opens a part of the page: 0 is the answer, 5 is the last one; in any language. */
  async part(at) {
    await this.pressOn(await this.ask((at) => document.querySelectorAll("[data-testid=tab]")[at], at));
    const stands = (at) =>
      document.querySelectorAll("[data-testid=tab]")[at].getAttribute("aria-current") !== null && document.querySelector("main h1, main [data-testid=answer-figure]") !== null;
    await eventually(`part ${at} stands`, () => this.ask(stands, at), { timeout_ms: 20_000 });
    await this.settled();
  }

  /** Everything that can be read on the page. */
  words() {
    return this.ask(() => document.body.innerText.replace(/[\u00a0\u202f]/g, " "));
  }

  async reads(pattern, what = String(pattern)) {
    return eventually(`to read ${what}`, async () => (await this.words()).match(pattern), { timeout_ms: 20_000 });
  }

  /** The nights, as the answer or the bar over the other parts gives them. */
  async nights() {
    const figure = () => document.querySelector("[data-testid=answer-figure], [data-testid=answer-bar-figure]")?.innerText ?? "";
    return Number.parseInt(await eventually("nights", () => this.ask(figure)), 10);
  }

  /** Answer and lanterns with their chances, once the odds are played. */
  async answer() {
    await this.part(0);
    const known = () => document.querySelector("[data-testid=answer-working]") === null && document.querySelectorAll("[data-testid=lantern]").length > 0;
    await eventually("the odds are played", () => this.ask(known), { timeout_ms: 60_000 });
    await this.settled();
    return this.ask(() => ["answer-figure", "verdict", "lantern"].flatMap((id) => [...document.querySelectorAll(`[data-testid=${id}]`)].map((one) => one.innerText.replace(/\s+/g, " ").trim())));
  }

  /** How many colours the chart shows: an empty one has one. */
  async coloursOfChart() {
    return this.ask(() => {
      const canvas = document.querySelector("canvas.chart-canvas");
      canvas?.scrollIntoView({ block: "center", behavior: "instant" });
      if (!canvas?.width) return 0;
      const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
      return new Set(new Uint32Array(data.buffer)).size;
    });
  }

  /** Names of the appliances, from above. */
  async appliances() {
    return this.ask(() => [...document.querySelectorAll("[data-testid=load] .load-name")].map((one) => one.innerText.trim()));
  }

  async openAppliance(name) {
    await this.pressOn(await this.ask((name) => [...document.querySelectorAll("[data-testid=load]")].find((row) => row.innerText.includes(name))?.querySelector("[data-testid=load-button]"), name));
    await this.found("button", "Done");
  }

  /** Adds what a search for `words` finds under `name`, and leaves its sheet open. */
  async add(words, name) {
    await this.press("Add an appliance");
    const search = await eventually("the search", () => this.ask(() => document.querySelector("dialog[open] input[type=search], dialog[open] [role=searchbox]")));
    await search.sendKeys(words);
    await this.press(name);
    await eventually("its sheet", () => this.ask(() => document.querySelector("dialog[open] [data-testid=quick]")));
  }

  setups() {
    return this.ask(() => [...document.querySelectorAll("[data-testid=setup] strong")].map((one) => one.textContent.trim()));
  }

  /** The whole build is stored on the device, and answers in this tab. */
  async storedOffline() {
    await this.session.executeAsyncScript((done) => {
      navigator.serviceWorker.ready.then(() => {
        if (navigator.serviceWorker.controller) done();
        else navigator.serviceWorker.addEventListener("controllerchange", () => done(), { once: true });
      });
    });
  }

  /** How far the page reaches beyond its window to the right [CSS px]. */
  overflow() {
    return this.ask(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  }

  /** What the browser complained of since the page was loaded. */
  complaints() {
    return this.ask(() => window.complaints);
  }
}
