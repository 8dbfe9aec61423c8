// Takes the README's pictures anew, of the build in dist/: the outlook on a phone, in each look.
//
//   node tests/browser/pictures.mjs
import { fileURLToPath } from "node:url";
import { StaticServer } from "../serve.mjs";
import { launch } from "./support/browser.mjs";
import { DIST } from "./support/builds.mjs";
import { Nightbank } from "./support/nightbank.mjs";
import { look, LOOKS } from "./support/views.mjs";

const place = (word) => fileURLToPath(new URL(`pictures/nights-360${word === LOOKS[0] ? "" : `-${word}`}.png`, import.meta.url));
const browser = await launch();
const server = await new StaticServer(DIST).start();
try {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, hasTouch: true, locale: "en-GB", timezoneId: "Europe/Berlin" });
  const nightbank = await Nightbank.open(context, server.url);
  for (const word of LOOKS) {
    await look(nightbank.page, word);
    await nightbank.openPart("Nights");
    await nightbank.settled();
    await nightbank.page.evaluate(() => scrollTo(0, 0));
    await nightbank.page.screenshot({ path: place(word) });
  }
} finally {
  await browser.close();
  await server.stop();
}
