// One Chromium and one server of the build in dist/ for a whole test file, from before its first test until after its
// last. Whoever imports them has them.
import { after, before } from "node:test";
import { StaticServer } from "../../serve.mjs";
import { launch } from "./browser.mjs";
import { DIST } from "./builds.mjs";

/** @type {import("playwright-core").Browser} */
export let browser;
/** @type {StaticServer} */
export let server;

before(async () => {
  browser = await launch();
  server = await new StaticServer(DIST).start();
});

after(async () => {
  await browser?.close();
  await server?.stop();
});
