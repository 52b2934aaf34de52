/* The ways from page to page, the same on all. Stands behind the header and what belongs to it; the folder of this script is where the ways begin. */
(() => {
  const script = document.currentScript;
  const ways = [
    ['chart-room/', 'Chart room'],
    ['adjuster/', 'Adjuster'],
    ['record/', 'Record book'],
    ['teaching/', 'Teaching bench'],
    ['course/', 'Course'],
    ['intranet/', 'Intranet'],
    ['guides/', 'Guides'],
    ['reference/', 'Reference'],
  ];

  const skip = document.createElement('a');
  skip.className = 'skip';
  skip.href = '#main';
  skip.textContent = 'To the page';
  document.body.prepend(skip);

  const navigation = document.createElement('nav');
  navigation.setAttribute('aria-label', 'Pages');
  for (const [folder, words] of ways) {
    // From a folder no server finds the index.
    const way = document.createElement('a');
    way.href = new URL(`${folder}index.html`, script.src).href;
    way.textContent = words;
    const root = new URL(folder, script.src).pathname;
    const here = location.pathname;
    if (here === root || here === `${root}index.html`) way.setAttribute('aria-current', 'page');
    else if (here.startsWith(root)) way.setAttribute('aria-current', 'true');
    navigation.append(way);
  }
  script.before(navigation);
})();
