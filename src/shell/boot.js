// Runs before the page proper, in any browser: says what is wrong if the page cannot start at all.
// A plain script, so that it also runs where modules do not (a page opened from a file).
(function () {
  var app = document.getElementById("app");
  var trouble = document.getElementById("trouble");

  function tell(lines) {
    if (!app || !trouble || app.hasAttribute("data-ready") || !trouble.hidden) return;
    // The page itself has said that it stopped.
    if (document.getElementById("recovery")) return;
    lines.forEach(function (line, index) {
      var paragraph = document.createElement("p");
      (index ? paragraph : paragraph.appendChild(document.createElement("strong"))).textContent = line;
      trouble.appendChild(paragraph);
    });
    trouble.hidden = false;
    var shell = document.getElementById("shell");
    if (shell) shell.hidden = true;
  }

  if (location.protocol === "file:") {
    tell([
      "This page cannot run from a file.",
      "Browsers only run this page from a web address (https). Please open the published page.",
    ]);
    return;
  }

  if (typeof WebAssembly !== "object" || !("noModule" in HTMLScriptElement.prototype)) {
    tell([
      "This browser is too old for Nightbank, or has WebAssembly switched off.",
      "Any current browser will do. Some strict privacy modes switch WebAssembly off: allow it for this page.",
    ]);
    return;
  }

  // The first number and the first date that a browser writes cost a slow phone more than a tenth of a second. It has
  // the time now, while the program is on its way.
  new Intl.NumberFormat().format(0);
  [{ weekday: "short" }, { day: "numeric", month: "short" }].forEach(function (options) {
    options.timeZone = "UTC";
    new Intl.DateTimeFormat(undefined, options).format(0);
  });

  // A file that does not arrive, or code that fails before the page stands; from then on `tell` is quiet. `true`: such
  // events do not bubble. The page's own listener comes later and may say more: it goes first.
  function failed() {
    setTimeout(tell, 0, [
      "Nightbank could not start.",
      "A part of the page did not arrive. Check the connection and load the page again. What you saved on this " +
        "device is still there.",
    ]);
  }
  addEventListener("error", failed, true);
  addEventListener("unhandledrejection", failed);
  addEventListener(
    "TrunkApplicationStarted",
    function () {
      if (trouble) trouble.hidden = true;
    },
    { once: true },
  );
})();
