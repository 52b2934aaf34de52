/**
 * The page the component tests run in. Past its last field Firefox gives the focus to its own
 * tool bar, and from then on no field of the page hears that it was left; Chromium goes round.
 * So a stop after the last field leads back to one before the first.
 */
const goRound = `
  const stop = () => {
    const element = document.createElement('span');
    element.tabIndex = 0;
    return element;
  };
  const [first, last] = [stop(), stop()];
  document.documentElement.prepend(first);
  document.documentElement.append(last);
  last.addEventListener('focus', () => first.focus());
`;

export function testPage(framework) {
  return `<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>Test</title></head>
  <body>
    <script type="module">${goRound}</script>
    <script type="module" src="${framework}"></script>
  </body>
</html>`;
}
