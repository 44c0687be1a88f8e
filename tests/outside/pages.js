// Every page in chromium, under a strict Content Security Policy: no request leaves the
// site, none fails, the console stays silent, nothing scrolls sideways at 320 px, and
// what there is to read does not depend on scripts.
//
//     node pages.js SITE
//
// Sources: Content Security Policy Level 3 (W3C); WCAG 2.2, 1.4.10 Reflow.
const { files, serve, launch, Tally } = require('./common');

const POLICY = { 'content-security-policy': "default-src 'self'" };

/** Opens a page and notes everything that it asks for and says. */
async function visit(context, server, file) {
  const page = await context.newPage();
  const noted = { outside: [], broken: [], said: [] };
  page.on('request', (request) => {
    if (!request.url().startsWith(`${server.url}/`)) noted.outside.push(request.url());
  });
  page.on('response', (response) => {
    if (response.status() >= 400) noted.broken.push(response.url());
  });
  page.on('console', (message) => noted.said.push(message.text()));
  page.on('pageerror', (error) => noted.said.push(String(error)));
  await page.goto(`${server.url}/${file}`);
  await page.waitForTimeout(100);
  const seen = await page.evaluate(() => {
    const sideways = document.documentElement.scrollWidth - window.innerWidth;
    // What only works with scripts is there only with them: buttons, and finding by text.
    document.querySelectorAll('main button, main search').forEach((extra) => extra.remove());
    const text = document.querySelector('main').innerText.replace(/\s+/g, ' ').trim();
    return { text, sideways };
  });
  await page.close();
  return { ...noted, ...seen };
}

(async () => {
  const [folder] = process.argv.slice(2);
  const server = await serve(folder, POLICY);
  const browser = await launch();
  const narrow = { viewport: { width: 320, height: 640 } };
  const scripted = await browser.newContext(narrow);
  const plain = await browser.newContext({ ...narrow, javaScriptEnabled: false });
  const tally = new Tally();
  for (const file of files(folder, '.html')) {
    const seen = await visit(scripted, server, file);
    tally.check(!seen.outside.length, `${file} asks outside: ${seen.outside.join(' ')}`);
    tally.check(!seen.broken.length, `${file} asks in vain: ${seen.broken.join(' ')}`);
    tally.check(!seen.said.length, `${file} says: ${seen.said.join(' | ')}`);
    tally.check(seen.sideways <= 0, `${file} is ${seen.sideways} px too wide at 320 px`);
    const without = new Set((await visit(plain, server, file)).text.split(' '));
    const lost = seen.text.split(' ').filter((word) => !without.has(word));
    tally.check(seen.text && !lost.length, `${file} without scripts lacks: ${lost.slice(0, 10).join(' ')}`);
  }
  await browser.close();
  server.close();
  tally.end();
})();
