// Runs before the page proper, in any browser: says what is wrong if the page cannot start at all.
// A plain script, so that it also runs where modules do not (a page opened from a file).
(function () {
  var app = document.getElementById("app");
  var trouble = document.getElementById("trouble");

  // The outline of the page is English as it is written; what else is said before the texts are there stands here.
  var WORDS = {
    en: {
      file: ["This page cannot run from a file.", "Browsers only run it from a web address (https). Please open the published page."],
      old: [
        "This browser is too old for Nightbank, or has WebAssembly switched off.",
        "Any current browser will do. Some strict privacy modes switch WebAssembly off: allow it for this page.",
      ],
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
      old: [
        "Dieser Browser ist zu alt für Nightbank, oder WebAssembly ist ausgeschaltet.",
        "Jeder aktuelle Browser genügt. Manche strengen Privatmodi schalten WebAssembly aus: Erlaube es für diese Seite.",
      ],
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
      old: [
        "Ce navigateur est trop ancien pour Nightbank, ou WebAssembly y est désactivé.",
        "Tout navigateur à jour convient. Certains modes privés stricts désactivent WebAssembly\u202f: autorisez-le pour cette page.",
      ],
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
      old: [
        "Deze browser is te oud voor Nightbank, of WebAssembly staat uit.",
        "Elke actuele browser is goed. Sommige strenge privacymodi zetten WebAssembly uit: sta het toe voor deze pagina.",
      ],
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

  if (location.protocol === "file:") {
    tell(words.file);
    return;
  }

  if (typeof WebAssembly !== "object" || !("noModule" in HTMLScriptElement.prototype)) {
    tell(words.old);
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
    setTimeout(tell, 0, words.failed);
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
