// Runs before the page proper, in any browser: says what is wrong if the page cannot start at all, and gives the program
// plain substitutes for small things that a few embedded browsers lack.
// A plain script in the JavaScript of 2009 (ES5), so that it also runs where modules do not: in an old browser, or in a
// page opened from a file.
(function () {
  var app = document.getElementById("app");
  var trouble = document.getElementById("trouble");

  // The outline of the page is English as it is written; what else is said before the texts are there stands here.
  var WORDS = {
    en: {
      file: ["This page cannot run from a file.", "Browsers only run it from a web address (https). Please open the published page."],
      failed: [
        "Nightbank could not start.",
        "A part of the page did not arrive. Check the connection and load the page again. What you saved on this device is still there.",
      ],
    },
    de: {
      outline: [
        "Wie viele Nächte hält meine Batterie hier, und was sollte ich ändern?",
        "Für Wohnwagen, Wohnmobile und Camper ohne Landstrom. Kostenlos, privat, auch offline.",
        "Die Laternen werden angezündet …",
      ],
      file: ["Diese Seite läuft nicht aus einer Datei.", "Browser starten sie nur von einer Webadresse (https). Öffne bitte die veröffentlichte Seite."],
      failed: [
        "Nightbank konnte nicht starten.",
        "Ein Teil der Seite ist nicht angekommen. Prüfe die Verbindung und lade die Seite neu. Was du auf diesem Gerät gespeichert hast, ist noch da.",
      ],
    },
    fr: {
      outline: [
        "Combien de nuits ma batterie tiendra-t-elle ici, et que changer\u202f?",
        "Pour caravanes, camping-cars et fourgons sans branchement. Gratuit, privé, fonctionne hors ligne.",
        "On allume les lanternes…",
      ],
      file: ["Cette page ne peut pas s’ouvrir depuis un fichier.", "Les navigateurs ne la lancent qu’à une adresse web (https). Ouvrez la page publiée."],
      failed: [
        "Nightbank n’a pas pu démarrer.",
        "Une partie de la page n’est pas arrivée. Vérifiez la connexion et rechargez la page. Ce que vous avez enregistré ici est toujours là.",
      ],
    },
    nl: {
      outline: [
        "Hoeveel nachten houdt mijn accu het hier vol, en wat kan ik veranderen?",
        "Voor caravans, campers en buscampers zonder walstroom. Gratis, privé, werkt offline.",
        "De lantaarns worden aangestoken…",
      ],
      file: ["Deze pagina werkt niet vanuit een bestand.", "Browsers starten haar alleen vanaf een webadres (https). Open de gepubliceerde pagina."],
      failed: [
        "Nightbank kon niet starten.",
        "Een deel van de pagina is niet aangekomen. Controleer de verbinding en laad de pagina opnieuw. Wat je op dit apparaat hebt opgeslagen, is er nog.",
      ],
    },
  };

  // The language chosen before, or the first one of the browser's that the page speaks; as `view/lang.rs` has it.
  var code = "en";
  try {
    code = (localStorage.getItem("nightbank.preferences") || "").split(" ")[1] || "";
  } catch (_blocked) {
    code = "";
  }
  (code ? [code] : navigator.languages || []).some(function (tag) {
    code = tag.slice(0, 2).toLowerCase();
    return code === "en" || WORDS[code];
  });
  var words = WORDS[code] || WORDS.en;
  var shell = document.getElementById("shell");
  [shell, trouble].forEach(function (element) {
    if (element) element.lang = WORDS[code] ? code : "en";
  });
  if (shell && words.outline) {
    [".shell-question", ".shell-told", ".shell-waiting"].forEach(function (name, at) {
      shell.querySelector(name).textContent = words.outline[at];
    });
  }

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
    if (shell) shell.hidden = true;
  }

  // Words that few ever need wait in a file of their own; where it does not come, that is what is told.
  function tellOf(name) {
    var more = document.createElement("script");
    more.src = "trouble.js";
    more.onload = function () {
      var all = window.nightbankTrouble;
      tell((all[code] || all.en)[name]);
    };
    more.onerror = function () {
      tell(words.failed);
    };
    document.body.appendChild(more);
  }

  if (location.protocol === "file:") {
    tell(words.file);
    return;
  }

  // The newest things without which nothing works: dialogs, and references in WebAssembly, which this module of 14 bytes
  // has a table of. A browser that has the one and nothing of the other has it switched off.
  var dialogs = "HTMLDialogElement" in window && "showModal" in HTMLDialogElement.prototype;
  var program = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 4, 4, 1, 111, 0, 0]);
  if (!dialogs || (window.WebAssembly && !WebAssembly.validate(program))) {
    tellOf("old");
    return;
  }
  if (!window.WebAssembly) {
    tellOf("off");
    return;
  }

  // What the browser writes numbers and dates with; plain ones where it has none, or refuses what it is asked for.
  var intl = window.Intl || (window.Intl = {});
  function sure(name, plain) {
    var own = intl[name];
    function either(locales, options) {
      try {
        return new own(locales, options);
      } catch (_refused) {
        return plain(options || {});
      }
    }
    // Shown to work, it stays.
    try {
      new own("en", { maximumFractionDigits: 1, minimumFractionDigits: 1, useGrouping: true, timeZone: "UTC", weekday: "short" });
    } catch (_lacking) {
      intl[name] = either;
    }
  }
  sure("NumberFormat", function (options) {
    return {
      format: function (value) {
        var most = options.maximumFractionDigits || 0;
        var text = value.toFixed(most);
        return options.minimumFractionDigits || !most ? text : String(Number(text));
      },
    };
  });
  sure("DateTimeFormat", function (options) {
    return {
      format: function (when) {
        // Such as "Sat 12 Sep 2026".
        var pieces = new Date(when).toUTCString().replace(",", "").split(" ");
        var asked = [options.weekday, options.day, options.month, options.year];
        return pieces
          .filter(function (_piece, at) {
            return asked[at];
          })
          .join(" ");
      },
      resolvedOptions: function () {
        return {};
      },
    };
  });
  sure("PluralRules", function () {
    return {
      select: function (count) {
        return count === 1 ? "one" : "other";
      },
    };
  });
  if (window.performance && !performance.getEntriesByType) {
    performance.getEntriesByType = function () {
      return [];
    };
  }

  // The first number and the first date that a browser writes cost a slow phone more than a tenth of a second. It has
  // the time now, while the program is on its way.
  new Intl.NumberFormat().format(0);
  [{ weekday: "short" }, { day: "numeric", month: "short" }].forEach(function (options) {
    options.timeZone = "UTC";
    new Intl.DateTimeFormat(undefined, options).format(0);
  });

  // A file that does not arrive, or is not what it should be (its bytes are no program, or a page in the place of a
  // file); or code that fails before the page stands. From then on `tell` is quiet. `true`: such events do not bubble. The
  // page's own listener comes later and may say more: it goes first.
  function failed(event) {
    var why = event.reason || event.error;
    var arrived = event.target === window && why instanceof Error && !(why instanceof WebAssembly.CompileError);
    var sent = arrived && /fetch|load|network|import|module|mime|http|response|status/i.test(why.message);
    if (arrived && !sent) setTimeout(tellOf, 0, "broke");
    else setTimeout(tell, 0, words.failed);
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
