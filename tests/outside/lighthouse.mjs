// A recipe page on a slow phone, judged by npm `lighthouse`: accessibility, good practice
// and finding at 100; performance at 90 or more, since it is measured on a machine that
// does other things too.
//
//     node lighthouse.mjs SITE [PAGE ...]
//
// Source: Lighthouse's default mobile settings. What needs a certificate is left out: the
// server is on this machine.
import { createRequire } from 'node:module';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const require = createRequire(import.meta.url);
const { files, serve, Tally } = require('./common');
// Packages are found through NODE_PATH, which only `require` looks at.
const { default: lighthouse } = await import(require.resolve('lighthouse'));
const { launch } = await import(require.resolve('chrome-launcher'));

const FLOORS = { performance: 90, accessibility: 100, 'best-practices': 100, seo: 100 };
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking'];

/** The recipe page of middling size. */
function middling(folder) {
  const pages = files(folder, 'index.html').filter((file) => file.startsWith('recipes/'));
  const size = (file) => fs.statSync(path.join(folder, file)).size;
  return pages.sort((one, other) => size(one) - size(other))[Math.floor(pages.length / 2)];
}

const [folder, ...asked] = process.argv.slice(2);
const tally = new Tally();
const server = await serve(folder, {}, { packed: true });
const home = fs.mkdtempSync(path.join(os.tmpdir(), 'lighthouse-'));
const chromePath = process.env.CHROMIUM || '/usr/bin/chromium';
const chrome = await launch({ chromePath, userDataDir: home, chromeFlags: FLAGS, logLevel: 'silent' });
for (const page of asked.length ? asked : [middling(folder), 'index.html']) {
  const { lhr } = await lighthouse(`${server.url}/${page}`, {
    port: chrome.port, logLevel: 'error', onlyCategories: Object.keys(FLOORS),
    skipAudits: ['is-on-https', 'redirects-http', 'uses-http2'],
  });
  for (const [name, floor] of Object.entries(FLOORS)) {
    const { score, auditRefs } = lhr.categories[name];
    const low = auditRefs.filter((ref) => ref.weight && lhr.audits[ref.id].score < 0.9 && lhr.audits[ref.id].score !== null);
    const points = Math.round(score * 100);
    console.error(`  ${page}: ${name} ${points}`);
    tally.check(points >= floor, `${page}: ${name} ${points}, ${floor} at least: ${low.map((ref) => ref.id)}`);
  }
}
await chrome.kill();
server.close();
fs.rmSync(home, { recursive: true, force: true });
tally.end();
