/* What every page's header ends with: the light of the wheelhouse and the size of targets. Stands right behind the header. */
(() => {
  const header = document.currentScript.previousElementSibling;

  function button(words, name, value) {
    const made = document.createElement('button');
    made.type = 'button';
    made.textContent = words;
    made.dataset[name] = value;
    made.setAttribute('aria-pressed', 'false');
    return made;
  }

  const lights = document.createElement('div');
  lights.className = 'lights';
  lights.setAttribute('role', 'group');
  lights.setAttribute('aria-label', 'Light in the wheelhouse');
  lights.append(
    button('Day', 'theme', 'day'),
    button('Dusk', 'theme', 'dusk'),
    button('Night', 'theme', 'night'),
    button('Large', 'bridge', ''),
  );

  const controls = document.createElement('div');
  controls.className = 'themes';
  controls.append(lights);
  header.append(controls);
})();
