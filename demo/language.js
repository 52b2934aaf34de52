/*
 * The language of the widgets on a page, chosen in its header and remembered where the browser
 * lets it. The page's own few words stay English, and are marked so. Stands behind the header.
 */
(() => {
  const root = document.documentElement;
  const key = 'lubberline-demo-language';
  const languages = { en: 'English', de: 'Deutsch', es: 'Español', fr: 'Français', id: 'Bahasa Indonesia', zh: '中文' };
  const script = document.currentScript;
  const loaded = new Set(['en']);

  /** From a folder the browser refuses modules, and elsewhere a strict policy refuses scripts made by scripts. */
  function load(language) {
    if (loaded.has(language)) return;
    loaded.add(language);
    const address = new URL(`../dist/languages/${language}.js`, script.src).href;
    if (location.protocol !== 'file:') {
      import(address);
      return;
    }
    const made = document.createElement('script');
    made.src = address;
    document.head.append(made);
  }

  function speak(language) {
    root.lang = language;
    load(language);
  }

  const remembered = (() => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  })();
  const asked = new URLSearchParams(location.search).get('language') ?? remembered ?? 'en';
  const chosen = Object.hasOwn(languages, asked) ? asked : 'en';

  const choice = document.createElement('select');
  choice.className = 'language';
  choice.setAttribute('aria-label', 'Language of the widgets');
  for (const [language, name] of Object.entries(languages)) {
    const option = new Option(name, language, false, language === chosen);
    option.lang = language;
    choice.append(option);
  }
  choice.addEventListener('change', () => {
    speak(choice.value);
    try {
      localStorage.setItem(key, choice.value);
    } catch {
      // Without storage the choice lasts as long as the page.
    }
  });
  document.querySelector('header .themes').append(choice);

  addEventListener('DOMContentLoaded', () => {
    for (const part of document.querySelectorAll('head > title, header, body > nav, main > nav, .prose, footer, .skip')) part.lang = 'en';
    speak(chosen);
  });
})();
