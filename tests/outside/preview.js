// The preview in chromium: a page that nobody touches follows a save, keeps its own
// Content-Security-Policy, and shows a fault over what it showed before. No page from
// elsewhere reads it.
//
//     node preview.js TOURIER CONTENT FOLDER
//
// Sources: Content Security Policy Level 3 (W3C); server-sent events, HTML Living Standard
// 9.2 (WHATWG); DNS rebinding as in RFC 9110, 7.2 and 7.4, Host and misdirected requests.
const fs = require('fs');
const path = require('path');
const http = require('http');
const { spawn } = require('child_process');
const { launch, Tally } = require('./common');

const [tourier, from, folder] = process.argv.slice(2);
const tally = new Tally();
const content = path.join(folder, 'preview-content');
const recipe = path.join(content, 'recipes/crescents.md');

/** The running preview and its address. */
function start() {
  fs.cpSync(from, content, { recursive: true });
  const run = spawn(tourier, ['--quiet', '--content', content, 'preview', '--to-read'], { stdio: ['ignore', 'pipe', 'ignore'] });
  return new Promise((ready) => {
    run.stdout.once('data', (said) => ready({ run, url: String(said).match(/http:\S+/)[0] }));
  });
}

const edit = (change) => fs.writeFileSync(recipe, change(fs.readFileSync(recipe, 'utf8')));

async function follows(page, said) {
  edit((text) => text.replace('Ten plain crescents', 'Ten plain and buttery crescents'));
  await page.getByText('plain and buttery').first().waitFor();
  tally.check(await page.locator('.preview-faults').count() === 0, 'a panel without a fault');
  edit((text) => text.replace('bake: 205 °C', 'bake: 190 elephants'));
  await page.locator('.preview-faults[open]').waitFor();
  const panel = page.locator('.preview-faults');
  tally.check((await panel.innerText()).includes('190 elephants'), 'the fault is not in the panel');
  tally.check(await panel.evaluate((it) => getComputedStyle(it).position) === 'fixed', 'the panel has no style');
  tally.check(await page.getByText('plain and buttery').count() > 0, 'the last good page is gone');
  edit((text) => text.replace('190 elephants', '205 °C'));
  await panel.waitFor({ state: 'detached' });
  tally.check(said.length === 0, `the browser complains: ${said.join('; ')}`);
}

/** More pages of one browser than it allows open lines to one place: all follow a save. */
async function many(browser, url) {
  const context = await browser.newContext();
  const pages = [];
  for (let count = 0; count < 12; count += 1) {
    const page = await context.newPage();
    await page.goto(`${url}recipes/crescents/`, { timeout: 20000 });
    pages.push(page);
  }
  edit((text) => text.replace('plain and buttery', 'golden and buttery'));
  const seen = pages.map((page) => page.getByText('golden and buttery').first().waitFor({ timeout: 20000 }));
  const followed = (await Promise.allSettled(seen)).filter((it) => it.status === 'fulfilled').length;
  tally.check(followed === pages.length, `${followed} of ${pages.length} pages followed a save`);
  await context.close();
}

/** A page of another place that tries to read or show the preview. */
async function stranger(browser, url) {
  const server = http.createServer((_, response) => {
    response.writeHead(200, { 'content-type': 'text/html' });
    response.end(`<iframe src="${url}"></iframe>`);
  });
  await new Promise((ready) => { server.listen(0, '127.0.0.1', ready); });
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  const read = await page.evaluate((it) => fetch(it).then(() => true, () => false), url);
  tally.check(!read, 'a page from elsewhere reads the preview');
  const framed = page.frames().find((frame) => frame.url().startsWith(url));
  tally.check(!framed || await framed.locator('main').count() === 0, 'a page from elsewhere frames the preview');
  server.close();
}

(async () => {
  const { run, url } = await start();
  const browser = await launch();
  try {
    const page = await browser.newPage();
    const said = [];
    page.on('pageerror', (error) => said.push(String(error)));
    page.on('console', (line) => { if (line.type() === 'error' && !/50[03]/.test(line.text())) said.push(line.text()); });
    await page.goto(`${url}recipes/crescents/`);
    await page.getByRole('heading', { level: 1, name: 'Crescents' }).waitFor();
    tally.check(true, '');
    await follows(page, said);
    const workers = await page.evaluate(() => navigator.serviceWorker.getRegistrations().then((all) => all.length));
    tally.check(workers === 0, 'the preview keeps pages for later');
    await page.close();
    await many(browser, url);
    await stranger(browser, url);
  } catch (error) {
    tally.check(false, String(error));
  }
  await browser.close();
  run.kill('SIGINT');
  const code = await new Promise((ended) => { run.once('exit', ended); });
  tally.check(code === 0, `the preview ends with ${code}`);
  tally.end();
})();
