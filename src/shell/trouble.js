// What few readers ever need to be told; `boot.js` fetches it then. A plain script in the JavaScript of 2009, as that is.
window.nightbankTrouble = {
  en: {
    old: [
      "This browser is too old for Nightbank.",
      "It needs Safari 15.4, Chrome 96, Firefox 98 or anything newer. Update the browser or the system, or open this page on another device.",
    ],
    off: [
      "WebAssembly is switched off in this browser, and Nightbank calculates with it.",
      "In lockdown mode, make an exception for this page: in the page’s menu in the address bar, under the settings for this website. In other strict privacy modes, allow WebAssembly for this page. Then load it again.",
    ],
    broke: [
      "Nightbank could not start.",
      "Everything arrived, but something failed in this browser. Load the page again; if that does not help, update the browser or try another one. What you saved on this device is still there.",
    ],
  },
  de: {
    old: [
      "Dieser Browser ist zu alt für Nightbank.",
      "Nötig ist Safari 15.4, Chrome 96, Firefox 98 oder neuer. Aktualisiere den Browser oder das System, oder öffne die Seite auf einem anderen Gerät.",
    ],
    off: [
      "WebAssembly ist in diesem Browser ausgeschaltet, und Nightbank rechnet damit.",
      "Im Blockierungsmodus: Mach für diese Seite eine Ausnahme, im Seitenmenü der Adresszeile unter den Einstellungen für diese Website. In anderen strengen Privatmodi: Erlaube WebAssembly für diese Seite. Lade sie dann neu.",
    ],
    broke: [
      "Nightbank konnte nicht starten.",
      "Alles ist angekommen, aber in diesem Browser ist etwas schiefgegangen. Lade die Seite neu; hilft das nicht, aktualisiere den Browser oder nimm einen anderen. Was du auf diesem Gerät gespeichert hast, ist noch da.",
    ],
  },
  fr: {
    old: [
      "Ce navigateur est trop ancien pour Nightbank.",
      "Il faut Safari 15.4, Chrome 96, Firefox 98 ou plus récent. Mettez à jour le navigateur ou le système, ou ouvrez cette page sur un autre appareil.",
    ],
    off: [
      "WebAssembly est désactivé dans ce navigateur, et Nightbank calcule avec.",
      "En mode Isolement, faites une exception pour cette page\u202f: dans le menu de la page, près de l’adresse, sous les réglages du site. Dans un autre mode privé strict, autorisez WebAssembly pour cette page. Puis rechargez-la.",
    ],
    broke: [
      "Nightbank n’a pas pu démarrer.",
      "Tout est arrivé, mais quelque chose a échoué dans ce navigateur. Rechargez la page\u202f; si cela ne suffit pas, mettez le navigateur à jour ou essayez-en un autre. Ce que vous avez enregistré ici est toujours là.",
    ],
  },
  nl: {
    old: [
      "Deze browser is te oud voor Nightbank.",
      "Nodig is Safari 15.4, Chrome 96, Firefox 98 of nieuwer. Werk de browser of het systeem bij, of open deze pagina op een ander apparaat.",
    ],
    off: [
      "WebAssembly staat uit in deze browser, en Nightbank rekent ermee.",
      "In isolatiemodus: maak een uitzondering voor deze pagina, in het paginamenu in de adresbalk onder de instellingen voor deze website. In een andere strenge privacymodus: sta WebAssembly toe voor deze pagina. Laad haar daarna opnieuw.",
    ],
    broke: [
      "Nightbank kon niet starten.",
      "Alles is aangekomen, maar in deze browser ging iets mis. Laad de pagina opnieuw; helpt dat niet, werk de browser bij of probeer een andere. Wat je op dit apparaat hebt opgeslagen, is er nog.",
    ],
  },
};
