import puppeteer from 'puppeteer-core'; import { createServer } from 'node:http'; import { readFileSync } from 'node:fs';
// usage: node shot.mjs name html width theme out [js]
const dir = '/tmp/mate/w';
const jobs = JSON.parse(readFileSync(process.argv[2], 'utf8'));
const server = createServer((q, r) => { const u = q.url.slice(1); if (u.endsWith('.js')) { r.setHeader('content-type', 'text/javascript;charset=utf-8'); r.end(readFileSync(`${dir}/${u}`)); } else { r.setHeader('content-type', 'text/html'); r.end('<!doctype html><meta charset=utf-8><meta name=viewport content="width=device-width"><body>'); } }).listen(0);
const port = server.address().port;
const b = await puppeteer.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });
for (const j of jobs) {
  const p = await b.newPage(); await p.setViewport({ width: j.width, height: j.height ?? 800 });
  await p.goto(`http://localhost:${port}/`);
  await p.evaluate((t) => { document.documentElement.dataset.lubberTheme = t; document.body.style.margin = '8px'; document.body.style.background = t === 'night' ? '#000' : '#fff'; }, j.theme);
  for (const s of j.scripts) await p.addScriptTag({ url: `/${s}.js` });
  await p.evaluate((h) => { document.body.innerHTML = h; }, j.html);
  await new Promise((r) => setTimeout(r, 400));
  if (j.js) console.log(j.out, JSON.stringify(await p.evaluate(j.js)));
  for (const k of j.keys ?? []) await p.keyboard.press(k);
  await new Promise((r) => setTimeout(r, 300));
  if (j.js2) console.log(j.out, JSON.stringify(await p.evaluate(j.js2)));
  const size = await p.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.scrollHeight]);
  console.log(j.out, size.join('x'));
  await p.screenshot({ path: `/tmp/mate/${j.out}.png`, fullPage: j.full ?? true });
  await p.close();
}
await b.close(); server.close();
