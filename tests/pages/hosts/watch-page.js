/* Runs in every frame of a page before any script of its own, and notes what goes on in it. */
{
  const noted = { violations: [], changes: [] };
  let before = new Set();

  document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile }) => {
    noted.violations.push(`${effectiveDirective} ${blockedURI} ${sourceFile}`);
  });

  /** Where the page writes down what it has heard. */
  const isOwn = (node) => Boolean((node instanceof Element ? node : node.parentElement)?.closest('#heard'));

  const note = (changes) => {
    for (const { type, target, attributeName } of changes) {
      if (!isOwn(target)) noted.changes.push(`${type} ${attributeName ?? ''} of ${target.nodeName.toLowerCase()}`);
    }
  };

  document.addEventListener('readystatechange', () => {
    // The page is read in; what is deferred has not run yet.
    if (document.readyState !== 'interactive') return;
    before = new Set(Object.keys(globalThis));
    new MutationObserver(note).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
  });

  Object.defineProperty(globalThis, 'lubberlineNoted', {
    get: () => ({ ...noted, globals: Object.keys(globalThis).filter((name) => !before.has(name)) }),
  });
}
