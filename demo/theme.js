/* The light of the page: remembered where the browser lets it, set before anything is painted. */
(() => {
  const root = document.documentElement;
  const key = 'lubberline-demo-theme';
  const remembered = (() => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  })();
  const asked = new URLSearchParams(location.search).get('theme');
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  root.dataset.lubberTheme = asked ?? remembered ?? (dark ? 'dusk' : 'day');

  addEventListener('DOMContentLoaded', () => {
    const buttons = [...document.querySelectorAll('[data-theme]')];
    const show = () => {
      for (const button of buttons) button.setAttribute('aria-pressed', String(button.dataset.theme === root.dataset.lubberTheme));
    };
    for (const button of buttons) {
      button.addEventListener('click', () => {
        root.dataset.lubberTheme = button.dataset.theme;
        try {
          localStorage.setItem(key, button.dataset.theme);
        } catch {
          // Without storage the choice lasts as long as the page.
        }
        show();
      });
    }
    show();
    const large = document.querySelector('[data-bridge]');
    large?.addEventListener('click', () => {
      const on = root.dataset.lubberDensity !== 'bridge';
      if (on) root.dataset.lubberDensity = 'bridge';
      else delete root.dataset.lubberDensity;
      large.setAttribute('aria-pressed', String(on));
    });
  });
})();
