import { text } from './html-text.js';

/** What all pages of the reference have around their main part. */
export const pageFrame = ({ title, what, main, scripts = [] }) => `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>${text(title)}</title>
    <link rel="icon" href="../mark.svg" />
    <link rel="stylesheet" href="../pages.css" />
    <link rel="stylesheet" href="../prose.css" />
    <link rel="stylesheet" href="reference.css" />
    <script src="../theme.js"></script>
${scripts.map((path) => `    <script src="${path}" defer></script>\n`).join('')}  </head>
  <body>
    <header>
      <h1>${text(title)}</h1>
      <p>${what}</p>
    </header>
    <script src="../header.js"></script>
    <script src="../navigation.js"></script>
    <main id="main" tabindex="-1">
${main}
    </main>
    <footer>
      <p>Ship and figures are invented. This page is made from the manifest of the package.</p>
    </footer>
  </body>
</html>
`;
