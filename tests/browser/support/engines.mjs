// Browsers of three engines, spoken to in one way: W3C WebDriver, by the driver that each of them comes with.
import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import os from "node:os";
import path from "node:path";
import { Builder } from "selenium-webdriver";
import bidi from "selenium-webdriver/bidi/browsingContext.js";
import { CHROMIUM } from "./browser.mjs";

/**
 * Each engine: the program that drives it, and how a browser with an empty profile is asked of it. The set-up puts the
 * paths into the environment (`.ci/setup.sh`); `NIGHTBANK_WITHOUT_<engine>` says why one is not to be had.
 */
export const ENGINES = [
  {
    name: "Chromium",
    prints: true,
    driver: process.env.CHROMEDRIVER || "chromedriver",
    capabilities: {
      browserName: "chrome",
      "goog:chromeOptions": {
        binary: CHROMIUM,
        args: ["--headless", "--no-sandbox", "--disable-gpu", "--lang=en-GB", "--disable-background-networking"],
      },
    },
  },
  {
    name: "Firefox",
    prints: true,
    driver: process.env.GECKODRIVER || "geckodriver",
    capabilities: {
      browserName: "firefox",
      "moz:firefoxOptions": {
        binary: process.env.FIREFOX || "/usr/bin/firefox-esr",
        args: ["-headless"],
        prefs: { "intl.accept_languages": "en-GB" },
      },
      // A window of this browser is never narrower than 450 px; only this protocol makes what is in it so.
      webSocketUrl: true,
    },
    async resize(session, width, height) {
      const context = await bidi(session, { browsingContextId: await session.getWindowHandle() });
      await context.setViewport(width, height);
    },
  },
  {
    name: "WebKit",
    driver: process.env.WEBKITDRIVER || "WebKitWebDriver",
    screen: true,
    capabilities: {
      browserName: "MiniBrowser",
      "webkitgtk:browserOptions": {
        binary: process.env.MINIBROWSER || "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser",
        args: ["--automation"],
      },
    },
  },
].map((engine) => ({ ...engine, missing: process.env[`NIGHTBANK_WITHOUT_${engine.name.toUpperCase()}`] }));

/** A port that nobody listens on. */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

// A run that is broken off takes its browsers with it.
for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => process.exit(1));

/** Starts a program in a process group of its own; `stop` ends all of the group. */
function started(command, args, { env = process.env, stdio = "ignore" } = {}) {
  const child = spawn(command, args, { env, stdio, detached: true });
  const failed = new Promise((_, reject) => {
    child.once("error", (error) => reject(new Error(`${command}: ${error.message}`)));
    child.once("exit", (code, signal) => reject(new Error(`${command} ended by itself (${signal ?? code})`)));
  });
  failed.catch(() => {});
  const stop = () => {
    child.removeAllListeners("exit");
    process.removeListener("exit", stop);
    if (child.pid && child.exitCode === null && child.signalCode === null) process.kill(-child.pid, "SIGTERM");
  };
  process.once("exit", stop);
  return { child, failed, stop };
}

/** A screen without a monitor, for a browser that has no mode without a window: its name such as `:99`. */
async function hiddenScreen() {
  const screen = started("Xvfb", ["-displayfd", "3", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"], {
    stdio: ["ignore", "ignore", "ignore", "pipe"],
  });
  const number = new Promise((resolve) => screen.child.stdio[3].once("data", (data) => resolve(String(data).trim())));
  return { name: `:${await Promise.race([number, screen.failed])}`, stop: screen.stop };
}

/**
 * A place for settings in which the buttons over a page take no room: a window of MiniBrowser is as wide as they are at
 * least, and wider than a phone.
 */
function narrowSettings() {
  const directory = mkdtempSync(path.join(os.tmpdir(), "nightbank-settings-"));
  for (const version of ["gtk-3.0", "gtk-4.0"]) {
    mkdirSync(path.join(directory, version));
    writeFileSync(path.join(directory, version, "gtk.css"), "* { font-size: 1px; min-width: 0; padding: 0; margin: 0; border-width: 0; }\n");
  }
  return { directory, stop: () => rmSync(directory, { recursive: true, force: true }) };
}

/** The driver of one engine; ends with everything it started when `stop` is called. */
export class Driver {
  static async start(engine) {
    const driver = new Driver();
    driver.engine = engine;
    driver.screen = engine.screen && (await hiddenScreen());
    const port = await freePort();
    const env = { ...process.env, TZ: "Europe/Berlin", LANGUAGE: "en_GB", LANG: "en_GB.UTF-8" };
    if (driver.screen) {
      driver.settings = narrowSettings();
      Object.assign(env, { DISPLAY: driver.screen.name, WAYLAND_DISPLAY: "", XDG_CONFIG_HOME: driver.settings.directory });
    }
    driver.address = `http://127.0.0.1:${port}`;
    driver.process = started(engine.driver, [`--port=${port}`], { env });
    const answers = async () => {
      for (;;) {
        if (await fetch(`${driver.address}/status`).then((response) => response.ok, () => false)) return;
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    };
    await Promise.race([answers(), driver.process.failed]);
    return driver;
  }

  /** A browser with an empty profile. One at a time: not every driver has several. */
  async browser() {
    const session = await new Builder().usingServer(this.address).withCapabilities(this.engine.capabilities).build();
    const capabilities = await session.getCapabilities();
    this.version = `${this.engine.name} ${capabilities.getBrowserVersion()}`;
    return session;
  }

  /** Makes what is shown of a page so many CSS px wide and high. */
  async resize(session, width, height) {
    if (this.engine.resize) return this.engine.resize(session, width, height);
    // The frame of the window is not part of the page.
    for (let [outer, tries] = [[width, height], 0]; tries < 5; tries += 1) {
      await session.manage().window().setRect({ x: 0, y: 0, width: outer[0], height: outer[1] });
      const shown = () => session.executeScript("return [innerWidth, innerHeight]");
      let inner = await shown();
      // The page may follow its window a moment later; no frame is that large.
      for (let waits = 0; waits < 20 && Math.max(Math.abs(inner[0] - width), Math.abs(inner[1] - height)) > 250; waits += 1) {
        await new Promise((resolve) => setTimeout(resolve, 50));
        inner = await shown();
      }
      if (inner[0] === width && inner[1] === height) return undefined;
      outer = [outer[0] + width - inner[0], outer[1] + height - inner[1]];
    }
    throw new Error(`${this.engine.name} cannot show a page ${width} px wide`);
  }

  stop() {
    this.process.stop();
    this.screen?.stop();
    this.settings?.stop();
  }
}
