// A recipe page in use, in chromium, with and without scripts, by keyboard, with no
// connection, and while its typefaces are late.
//
//     node use.js SITE
//
// Sources: WCAG 2.2, 2.1.1 Keyboard, 2.4.3 Focus Order, 2.4.7 Focus Visible, 2.4.11 Focus
// Not Obscured; Layout Instability (W3C), good below 0.1 (web.dev); Service Workers (W3C).
const path = require('path');
const { pathToFileURL } = require('url');
const { files, serve, launch, Tally } = require('./common');

const PHONE = { viewport: { width: 360, height: 740 } };
const tally = new Tally();

const shown = (page, query) => page.locator(query).filter({ visible: true }).count();

/** Units and batch switch with scripts off; the page that a link chooses with them on. */
async function switches(browser, url) {
  const context = await browser.newContext({ ...PHONE, javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(url);
  tally.check(await shown(page, '.formula .m') > 0, 'metric is not shown at first');
  await page.locator('#us').focus();
  await page.keyboard.press('Space');
  tally.check(await shown(page, '.formula .m') === 0, 'metric is still shown beside US');
  tally.check(await shown(page, '.formula .u') > 0, 'US is not shown');
  await page.locator('#x1').focus();
  await page.keyboard.press('ArrowRight');
  tally.check(!await page.locator('#x1').isChecked(), 'the arrow key does not choose another size');
  await page.locator('#x2').focus();
  await page.keyboard.press('Space');
  tally.check(await page.locator('#x2').isChecked(), 'two batches are not chosen');
  tally.check(await shown(page, '.formula .b-x1:not(.b-x2)') === 0, 'one batch is still shown');
  for (const hidden of ['button.clock', '#awake', '#untick', '.clocks']) {
    tally.check(await shown(page, hidden) === 0, `${hidden} is shown and does nothing`);
  }
  await context.close();
  const linked = await browser.newPage();
  await linked.goto(`${url}#us,x2`);
  const chosen = await linked.locator('#us').isChecked() && await linked.locator('#x2').isChecked();
  tally.check(chosen, 'a link with #us,x2 does not choose');
  await linked.close();
}

/** Every control is reached by Tab, in reading order, and is seen when it is. */
async function keyboard(browser, url) {
  const page = await browser.newPage(PHONE);
  await page.goto(url);
  const wanted = await page.evaluate(() => {
    const all = document.querySelectorAll('a[href], button, input, summary, [tabindex="0"]');
    const seen = [...all].filter((e) => e.checkVisibility({ visibilityProperty: true }));
    // Of radios in a group one takes the focus.
    const stops = seen.filter((e) => e.type !== 'radio' || e.checked);
    stops.forEach((e, at) => { e.dataset.stop = at; });
    return stops.length;
  });
  const reached = [];
  for (let at = 0; at < wanted; at += 1) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const e = document.activeElement;
      const box = e.getBoundingClientRect();
      const [x, y] = [box.left + Math.min(box.width, 8) / 2, box.top + Math.min(box.height, 8) / 2];
      const above = document.elementFromPoint(Math.max(x, 0), Math.max(y, 0));
      const style = getComputedStyle(e);
      const outline = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
      return {
        at: Number(e.dataset.stop), name: (e.id || e.textContent || e.tagName).trim().slice(0, 30), outline,
        free: Boolean(above) && (e.contains(above) || above.contains(e) || above.closest('label') === e.closest('label')),
      };
    });
    reached.push(stop.at);
    tally.check(stop.outline, `focus is not seen on ${stop.name}`);
    tally.check(stop.free, `focus on ${stop.name} is covered`);
  }
  const inOrder = reached.every((stop, at) => stop === at);
  tally.check(inOrder, `Tab goes ${reached.slice(0, 60)} of ${wanted}`);
  await page.close();
}

/** Ticks are kept on the device and can be taken out; clocks run on every page. */
async function bench(browser, server, recipe) {
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  const url = `${server.url}/${recipe}`;
  await page.goto(url);
  const tick = page.locator('#have-1');
  await tick.check();
  await page.reload();
  tally.check(await tick.isChecked(), 'a tick is not kept');
  await page.locator('#untick').click();
  tally.check(!await tick.isChecked(), 'ticks cannot be taken out');
  const clock = page.locator('button.clock').filter({ visible: true }).first();
  const minutes = Number(await clock.getAttribute('data-minutes'));
  await clock.click();
  const left = page.locator('.clocks .left');
  const said = await left.textContent();
  const parts = said.split(':').map(Number);
  const seconds = parts.reduce((sum, part) => sum * 60 + part, 0);
  tally.check(Math.abs(seconds - minutes * 60) <= 2, `${minutes} min show as ${said}`);
  await page.goto(`${server.url}/index.html`);
  tally.check(await left.isVisible(), 'a clock is not seen on the other pages');
  const to = await page.locator('.clocks a').getAttribute('href');
  tally.check(to.startsWith(`/${recipe}#step-`), `the clock leads to ${to}`);
  await page.evaluate(() => {
    const clocks = JSON.parse(localStorage.getItem('tourier clocks'));
    clocks[0].end = Date.now() - 1000;
    localStorage.setItem('tourier clocks', JSON.stringify(clocks));
  });
  await page.reload();
  tally.check((await left.textContent()).includes('Time is up'), 'a clock does not say that time is up');
  await page.locator('.clocks button').click();
  tally.check(!await page.locator('.clocks').isVisible(), 'a clock cannot be stopped');
  await context.close();
}

/** From each step one tap leads to the next, with scripts off; its heading is in sight then. */
async function onward(browser, url) {
  const context = await browser.newContext({ ...PHONE, javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(url);
  const steps = await page.locator('.step').count();
  tally.check(await page.locator('.here .next').count() === steps - 1, 'a step has no way to the next');
  for (let at = 0; at + 1 < steps; at += 1) {
    await page.locator('.step').nth(at).locator('.next').click();
    const head = await page.locator('.step').nth(at + 1).locator('h3').boundingBox();
    tally.check(head && head.y >= 0 && head.y < 300, `the way from step ${at + 1} does not lead to the next`);
  }
  await context.close();
}

/** The heading of the step that is read stays in sight. */
async function place(browser, url, settings) {
  const page = await browser.newPage(settings);
  await page.goto(url);
  const steps = await page.locator('.step').count();
  for (let at = 0; at < steps; at += 1) {
    const seen = await page.evaluate((which) => {
      const step = document.querySelectorAll('.step')[which];
      const box = step.getBoundingClientRect();
      window.scrollBy(0, box.top + box.height / 2 - 120);
      const head = step.querySelector('h3').getBoundingClientRect();
      return head.top >= 0 && head.bottom <= window.innerHeight;
    }, at);
    tally.check(seen, `the heading of step ${at + 1} scrolls away at ${settings.viewport.width} px`);
  }
  await page.close();
}

/** Finding by text, from a server and from a disk; each hit is a page that is there. */
async function find(browser, folder, url) {
  const there = new Set(files(folder, '.html'));
  for (const base of [url, pathToFileURL(path.resolve(folder)).href]) {
    const page = await browser.newPage(PHONE);
    await page.goto(`${base}/find/index.html`);
    await page.locator('#asked').fill('BUTTER bloc');
    const hits = await page.locator('.hits a').evaluateAll((all) => all.map((a) => a.href));
    tally.check(hits.length > 0, `nothing is found from ${base.slice(0, 5)}`);
    const lost = hits.filter((hit) => !there.has(decodeURI(hit.slice(base.length + 1).split('#')[0])));
    tally.check(!lost.length, `hits lead nowhere: ${lost}`);
    await page.locator('#asked').fill('zzzz');
    tally.check(await shown(page, '.hits a') === 0, 'nonsense is found');
    await page.close();
  }
}

/** With no connection every page is there, and one that is none says so. */
async function offline(browser, folder) {
  const server = await serve(folder);
  const context = await browser.newContext(PHONE);
  const page = await context.newPage();
  await page.goto(`${server.url}/index.html`);
  const offered = await page.evaluate(() => Boolean(document.documentElement.dataset.offline));
  if (offered) {
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      while (!navigator.serviceWorker.controller) {
        await new Promise((done) => { setTimeout(done, 50); });
      }
    });
    server.close();
    for (const file of files(folder, '.html')) {
      const answer = await page.goto(`${server.url}/${file}`).catch(() => null);
      tally.check(answer && answer.ok(), `${file} is not there with no connection`);
      const faces = answer ? await page.evaluate(async () => {
        await document.fonts.load('16px Vollkorn');
        return document.fonts.check('16px Vollkorn');
      }) : false;
      tally.check(faces, `${file} has no typefaces with no connection`);
    }
    await page.goto(`${server.url}/recipes/no-such-page/`).catch(() => null);
    tally.check(await shown(page, '.plain h1') === 1, 'a missing page does not say so with no connection');
  } else {
    server.close();
  }
  await context.close();
}

/** How far a page moves while it is loaded, its typefaces half a second late. */
async function shift(browser, url, settings) {
  const page = await browser.newPage(settings);
  await page.route('**/*.woff2', async (route) => {
    await new Promise((done) => { setTimeout(done, 500); });
    await route.continue();
  });
  await page.goto(url);
  const moved = await page.evaluate(() => new Promise((done) => {
    let sum = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) { sum += entry.hadRecentInput ? 0 : entry.value; }
    }).observe({ type: 'layout-shift', buffered: true });
    setTimeout(() => done(sum), 900);
  }));
  tally.check(moved < 0.05, `${url} moves by ${moved.toFixed(3)} at ${settings.viewport.width} px`);
  await page.close();
}

/** Pictures come, in the proportions that were kept for them. */
async function pictures(browser, server, folder) {
  const page = await browser.newPage(PHONE);
  for (const file of files(folder, '.html')) {
    await page.goto(`${server.url}/${file}`);
    const wrong = await page.evaluate(async () => {
      const all = [...document.images];
      all.forEach((image) => { image.loading = 'eager'; });
      await Promise.all(all.map((image) => image.decode().catch(() => {})));
      const ratio = (image) => image.naturalWidth / image.naturalHeight;
      const kept = (image) => Number(image.getAttribute('width')) / Number(image.getAttribute('height'));
      const isWrong = (image) => !image.naturalWidth || !image.alt || Math.abs(ratio(image) / kept(image) - 1) > 0.02;
      return all.filter(isWrong).map((image) => image.currentSrc);
    });
    tally.check(!wrong.length, `${file}: pictures are not as said: ${wrong}`);
  }
  await page.close();
}

(async () => {
  const [folder] = process.argv.slice(2);
  const server = await serve(folder);
  const browser = await launch();
  const recipes = files(folder, 'index.html').filter((file) => file.startsWith('recipes/'));
  // The recipe with the longest page.
  const longest = recipes.map((file) => [require('fs').statSync(path.join(folder, file)).size, file]).sort().pop()[1];
  const url = `${server.url}/${longest}`;
  const wide = { viewport: { width: 1280, height: 800 } };
  await switches(browser, url);
  await keyboard(browser, url);
  await bench(browser, server, longest);
  await onward(browser, url);
  for (const settings of [PHONE, wide]) {
    await place(browser, url, settings);
    for (const file of [longest, 'index.html']) await shift(browser, `${server.url}/${file}`, settings);
  }
  await find(browser, folder, server.url);
  await pictures(browser, server, folder);
  await offline(browser, folder);
  await browser.close();
  server.close();
  tally.end();
})();
