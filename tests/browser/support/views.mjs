// Every view of the page, and what a test of reach asks of whatever is shown.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { freshContext } from "./browser.mjs";
import { Nightbank } from "./nightbank.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The success criteria of WCAG 2.2, levels A and AA, as far as a program can judge them. */
const WCAG_22_AA = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Widths of windows: a small old phone, a small phone, a tablet, a desk [px]. */
export const WIDTHS = [320, 360, 768, 1280];

/** The looks a reader may choose. */
export const LOOKS = ["light", "dark", "dim"];

// The views are found without a word of theirs, so that they are in every language.
const TABS = ["Nights", "Appliances", "Power", "Trip", "Improve", "More"];
const main = (page) => page.getByRole("main");

async function tab(page, name) {
  await page.getByTestId("tab").nth(TABS.indexOf(name)).click();
  await main(page).locator("h1").first().waitFor({ state: "attached" });
}

/** Opens everything that is folded away in what is shown, also what comes to light by that. */
async function unfold(page, within = "main") {
  for (let depth = 0; depth < 3; depth += 1) {
    await page.locator(`${within} details:not([open])`).evaluateAll((all) => all.forEach((one) => (one.open = true)));
  }
}

/** Shows a part of "Improve", or one of its tools, by its word. */
async function part(page, word) {
  await tab(page, "Improve");
  const back = main(page).getByTestId("way-back").getByRole("button");
  if (await back.count()) await back.click();
  await main(page).locator(`button[data-part=${word}]`).click();
}

/** What is worked out in the background has come, so that nothing moves any more. */
async function settled(page) {
  await page.locator("main canvas[aria-label='']:visible").first().waitFor({ state: "hidden", timeout: 30_000 });
  await page.locator(":is(.working, [data-testid=answer-working], [aria-busy=true]):visible").first().waitFor({ state: "hidden", timeout: 30_000 });
}

async function openStart(page) {
  await page.getByTestId("notices").getByRole("button").first().click();
  await page.getByRole("dialog").locator("input").first().waitFor();
}

async function closeSheet(page) {
  await page.keyboard.press("Escape");
  await page.locator("dialog[open]").waitFor({ state: "detached" });
}

/**
 * All views, in an order that needs no reload: `open` shows one, `close` puts away what would lie over the next.
 * Of those with a `picture` one is kept; those that are `partial` show nothing that a later one does not show too.
 */
export const VIEWS = [
  {
    name: "nights",
    picture: true,
    partial: true,
    async open(page) {
      await tab(page, "Nights");
      await settled(page);
    },
  },
  {
    name: "start",
    picture: true,
    partial: true,
    open: openStart,
    close: closeSheet,
  },
  {
    name: "start, all open",
    async open(page) {
      await openStart(page);
      await unfold(page, "dialog");
    },
    close: closeSheet,
  },
  {
    name: "loads",
    picture: true,
    partial: true,
    async open(page) {
      await tab(page, "Appliances");
    },
  },
  {
    name: "a load",
    picture: true,
    partial: true,
    async open(page) {
      await tab(page, "Appliances");
      await page.getByTestId("load-button").first().click();
      await page.getByTestId("quick").waitFor();
    },
    close: closeSheet,
  },
  {
    name: "a load, all open",
    async open(page) {
      await tab(page, "Appliances");
      await page.getByTestId("load-button").first().click();
      await page.getByTestId("quick").waitFor();
      await unfold(page, "dialog");
      await page.getByTestId("load-editor").locator("input[inputmode=decimal]").first().fill("12x");
    },
    close: closeSheet,
  },
  {
    name: "light",
    picture: true,
    async open(page) {
      await tab(page, "Appliances");
      await main(page).locator(".load-list ~ .button-row button").click();
      await page.getByTestId("light").waitFor();
    },
    close: closeSheet,
  },
  {
    name: "add a load",
    picture: true,
    async open(page) {
      await tab(page, "Appliances");
      await page.getByTestId("add-bar").getByRole("button").click();
      await page.getByRole("dialog").locator("input").waitFor();
    },
    close: closeSheet,
  },
  {
    name: "power",
    picture: true,
    partial: true,
    async open(page) {
      await tab(page, "Power");
    },
  },
  {
    name: "power, all open",
    async open(page) {
      await tab(page, "Power");
      await unfold(page);
    },
  },
  {
    name: "trip",
    picture: true,
    async open(page) {
      await tab(page, "Trip");
      await unfold(page);
      await main(page).locator("input[enterkeyhint=search]").fill("ber");
    },
  },
  ...["improvements", "ways", "compare", "year"].map((word) => ({
    name: word,
    picture: word !== "ways",
    async open(page) {
      await part(page, word);
      await unfold(page);
      await settled(page);
    },
  })),
  ...[
    ["readings on site", "on-site"],
    ["measuring bench", "measure"],
    ["wiring check", "wiring"],
    ["inverter check", "inverter"],
  ].map(([name, word]) => ({
    name,
    picture: word === "wiring",
    async open(page) {
      await part(page, word);
      await unfold(page);
    },
  })),
  {
    name: "more",
    picture: true,
    async open(page) {
      await tab(page, "More");
      await unfold(page);
    },
  },
  {
    name: "nights, all open",
    async open(page) {
      await tab(page, "Nights");
      await unfold(page, ".frame");
    },
  },
];

/** Where pictures of the views are left. */
export const PICTURES = fileURLToPath(new URL("../../output/pictures", import.meta.url));

const windowOf = (width) => ({ width, height: width < 700 ? 640 : 800 });

/**
 * The page with its invented example in a window of this width [px], closed when the test `t` ends; past the message
 * of the first visit, which is told in English, unless `message` is false.
 */
export async function openAt(t, browser, url, width, { message = true, ...options } = {}) {
  const { context, watch } = await freshContext(t, browser, { viewport: windowOf(width), deviceScaleFactor: 1, ...options });
  context.setDefaultTimeout(15_000);
  const nightbank = await Nightbank.open(context, url);
  if (message) await nightbank.pastFirstMessage();
  return { nightbank, page: nightbank.page, watch };
}

/** Shows each view in turn, in windows of these widths [px], and gathers what `find` finds there, one line each. */
export async function throughAll(page, widths, find) {
  const found = [];
  for (const view of VIEWS) {
    await page.setViewportSize(windowOf(widths[0]));
    await view.open(page);
    for (const width of widths) {
      await page.setViewportSize(windowOf(width));
      found.push(...(await find(view, width)).map((line) => `${view.name} at ${width} px: ${line}`));
    }
    await view.close?.(page);
  }
  return found;
}

/** Puts a look in force, as the choice under "More" does. */
export async function look(page, word) {
  await page.evaluate((word) => document.documentElement.setAttribute("data-theme", word), word);
}

/** Runs `work` in a window as tall as any view: bars that stay in sight then lie over nothing by chance. */
export async function inTallWindow(page, work) {
  const usual = page.viewportSize();
  await page.setViewportSize({ ...usual, height: 9000 });
  try {
    return await work();
  } finally {
    await page.setViewportSize(usual);
  }
}

/** What axe-core finds in what is shown, one line each; `only` some rules, as most do not depend on the look. */
export async function faults(page, only, within = "dialog[open], .frame:not([data-tab=nights]) main") {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  return page.evaluate(
    async ({ tags, only, within }) => {
      const runOnly = only ? { type: "rule", values: only } : { type: "tag", values: tags };
      // What stands around the parts of the page is judged once, with the answer.
      const shown = document.querySelector(within) ?? document;
      const { violations } = await window.axe.run(shown, { runOnly, resultTypes: ["violations"] });
      return violations.flatMap(({ id, nodes }) =>
        nodes.map((node) => `${id}: ${node.target.join(" ")} ${node.html.slice(0, 160)} (${[...node.any, ...node.all, ...node.none].map((c) => c.message).join("; ")})`),
      );
    },
    { tags: WCAG_22_AA, only, within },
  );
}

/** What makes the page wider than the window, one line each. */
export async function tooWide(page) {
  return page.evaluate(() => {
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return [];
    const scrolls = (element) => {
      for (let at = element.parentElement; at && at !== document.body; at = at.parentElement) {
        if (getComputedStyle(at).overflowX !== "visible") return true;
      }
      return false;
    };
    return [...document.querySelectorAll("body *")]
      .filter((element) => element.getBoundingClientRect().right > root.clientWidth + 0.5 && !scrolls(element))
      .map((element) => `${element.tagName} ${element.className} reaches to ${element.getBoundingClientRect().right}`);
  });
}

/**
 * Targets that take a press on less than 44 by 44 CSS px, one line each: also those inside a sentence,
 * which WCAG 2.5.8 would let be smaller.
 */
export async function smallTargets(page) {
  return page.evaluate(() => {
    const LEAST_PX = 44;
    const within = document.querySelector("dialog[open]") ?? document.querySelector(".frame");
    const all = within.querySelectorAll("a[href], button, input, select, textarea, summary");
    const found = [];
    for (const element of all) {
      if (element.disabled || !element.checkVisibility({ visibilityProperty: true })) continue;
      // A label takes presses for its field.
      const label = element.labels && [...element.labels].find((one) => one.contains(element));
      const area = (label ?? element).getBoundingClientRect();
      if (area.width >= LEAST_PX - 0.5 && area.height >= LEAST_PX - 0.5) continue;
      element.scrollIntoView({ block: "center", behavior: "instant" });
      const now = (label ?? element).getBoundingClientRect();
      const [x, y] = [now.x + now.width / 2, now.y + now.height / 2];
      const takes = (dx, dy) => {
        const hit = document.elementFromPoint(x + dx, y + dy);
        return hit && (element.contains(hit) || label?.contains(hit));
      };
      const reach = LEAST_PX / 2 - 1;
      if (takes(reach, 0) && takes(-reach, 0) && takes(0, reach) && takes(0, -reach)) continue;
      const name = element.getAttribute("aria-label") ?? element.innerText ?? "";
      found.push(`${element.tagName}.${element.className} "${name.slice(0, 40)}" ${now.width.toFixed(1)} x ${now.height.toFixed(1)}`);
    }
    return found;
  });
}

/** Text that does not fit into the box that clips it, one line each. */
export async function clippedText(page) {
  return page.evaluate(() =>
    [...document.querySelectorAll(".frame *")]
      .filter((element) => {
        const style = getComputedStyle(element);
        if (!["hidden", "clip"].includes(style.overflowX) || element.closest(".unseen, canvas, svg")) return false;
        // What is read out and not shown takes a point.
        if (element.clientWidth <= 1) return false;
        return element.innerText?.trim() && element.checkVisibility() && element.scrollWidth > element.clientWidth + 1;
      })
      .map((element) => `${element.tagName}.${element.className} "${element.innerText.slice(0, 40)}"`),
  );
}

/** What an empty field says of itself and has no room for, one line each. */
async function cutPlaceholders(page) {
  return page.evaluate(() => {
    const within = document.querySelector("dialog[open]") ?? document.querySelector(".frame");
    const pen = document.createElement("canvas").getContext("2d");
    return [...within.querySelectorAll("input[placeholder]")]
      .filter((input) => input.placeholder && !input.value && input.checkVisibility())
      .filter((input) => {
        const style = getComputedStyle(input);
        pen.font = style.font;
        const room = input.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
        return pen.measureText(input.placeholder).width > room;
      })
      .map((input) => `"${input.placeholder}" in ${input.clientWidth} px`);
  });
}

/** Words of the navigation that stand on more than one line, or are cut. */
async function brokenTabs(page) {
  return page.evaluate(() =>
    [...document.querySelectorAll("[data-testid=tab] span")]
      .filter((word) => word.scrollWidth > word.clientWidth || word.clientHeight > 1.5 * parseFloat(getComputedStyle(word).lineHeight))
      .map((word) => word.innerText),
  );
}

/** Whatever has no room in the view that is shown, or leaves none for a thumb, one line each. */
export async function cramped(page) {
  const of = async (what, find) => (await find(page)).map((line) => `${what}: ${line}`);
  return [
    ...(await of("sideways", tooWide)),
    ...(await of("small", smallTargets)),
    ...(await of("clipped", clippedText)),
    ...(await of("hint cut", cutPlaceholders)),
    ...(await of("word broken", brokenTabs)),
  ];
}

/** Ids that more than one element bears. */
export async function twiceUsedIds(page) {
  return page.evaluate(() => {
    const ids = [...document.querySelectorAll("[id]")].map((element) => element.id);
    return [...new Set(ids.filter((id, at) => ids.indexOf(id) !== at))];
  });
}

/** Headings in order, such as `1 Loads`; a level that is left out shows. */
export async function skippedHeadings(page) {
  return page.evaluate(() => {
    const within = document.querySelector("dialog[open]") ?? document.querySelector("main");
    const shown = [...within.querySelectorAll("h1, h2, h3, h4")].filter((element) => element.checkVisibility());
    const levels = shown.map((element) => Number(element.tagName[1]));
    return shown
      .filter((_, at) => at > 0 && levels[at] > levels[at - 1] + 1)
      .map((element) => `${element.tagName} "${element.innerText}" after ${levels[shown.indexOf(element) - 1]}`);
  });
}
