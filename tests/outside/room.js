// The room in chromium, as on a phone that scanned the code: axe clean at 360 and 1280 px, light
// and dark; nothing is wider than the page; a button marks without any script; the terminal's
// code, drawn as its letters stand on dark and on light, is read by `zbar`.
//
//     node room.js TOURIER CONTENT FOLDER
//
// Sources: WCAG 2.2; ISO/IEC 18004 as `zbar` decodes it.
const fs = require('fs');
const path = require('path');
const { spawn, spawnSync } = require('child_process');
const { launch, Tally } = require('./common');

const [tourier, from, folder] = process.argv.slice(2);
const tally = new Tally();
const content = path.join(folder, 'room-content');
const HOST = '127.0.0.2';
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The course, with a class that began forty minutes ago, in a zone where it is the afternoon. */
function course() {
  fs.cpSync(from, content, { recursive: true });
  const ahead = 14 - new Date().getUTCHours();
  const zone = `Etc/GMT${ahead > 0 ? `-${ahead}` : ahead < 0 ? `+${-ahead}` : ''}`;
  const change = (file, swaps) => {
    const whole = path.join(content, file);
    const text = swaps.reduce((text, [old, now]) => text.replace(old, now), fs.readFileSync(whole, 'utf8'));
    fs.writeFileSync(whole, text);
  };
  const at = (hours) => new Date(Date.now() + (ahead + hours) * 3600e3 - 40 * 60e3).toISOString();
  const session = (day, hours) => `${at(day).slice(0, 10)} ${at(0).slice(11, 16)} to ${at(hours).slice(11, 16)}`;
  change('course.yaml', [['Europe/Dublin', zone], ['06:15 to 22:30', '06:00 to 22:00']]);
  change('classes/evening-3.yaml', [['2027-03-02 18:00 to 21:00', session(0, 3)], ['2027-03-03 18:00 to 21:30', session(24, 4)]]);
}

/** The running preview, what it printed, and the room's address. */
function start() {
  const args = ['--color', 'always', '--content', content, 'preview', '--no-browser', '--room', HOST];
  const run = spawn(tourier, args, { stdio: ['ignore', 'pipe', 'ignore'] });
  let said = '';
  return new Promise((ready) => {
    run.stdout.on('data', (more) => {
      said += more;
      const url = said.match(/http:\/\/127\.0\.0\.2:[0-9]+\/[0-9a-f]+/);
      // The code ends with a line of white.
      if (url && /\u001b\[0m\n$/.test(said)) ready({ run, said, url: url[0] });
    });
  });
}

/** What `zbar` reads where the terminal shows these colours by itself. */
function scanned(said, paper) {
  const lines = said.split('\n').filter((line) => line.includes('\u001b[38;5;16;48;5;231m'));
  const rows = lines.flatMap((line) => {
    const signs = [...line.replace(/\u001b\[[0-9;]*m/g, '')];
    return ['█▀', '█▄'].map((dark) => signs.map((sign) => (dark.includes(sign) ? 0 : 255)));
  });
  const scale = 6;
  const margin = 5;
  const width = (rows[0].length + 2 * margin) * scale;
  const height = (rows.length + 2 * margin) * scale;
  const picture = Buffer.alloc(width * height, paper);
  rows.forEach((row, y) => row.forEach((grey, x) => {
    for (let line = 0; line < scale; line += 1) {
      const at = ((y + margin) * scale + line) * width + (x + margin) * scale;
      picture.fill(grey, at, at + scale);
    }
  }));
  const file = path.join(folder, 'room-code.pgm');
  fs.writeFileSync(file, Buffer.concat([Buffer.from(`P5 ${width} ${height} 255\n`), picture]));
  const answer = spawnSync('zbarimg', ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', file], { encoding: 'utf8' });
  return answer.stdout.trim();
}

async function judge(page, name) {
  await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
  const found = await page.evaluate(async (values) => {
    const { violations } = await window.axe.run(document, { runOnly: { type: 'tag', values } });
    return violations.map(({ id, nodes }) => `${id} ${nodes[0].target.join(' ')}`);
  }, TAGS);
  tally.check(!found.length, `axe, ${name}: ${found.join('; ')}`);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  tally.check(!wide, `${name} is wider than the screen`);
}

/** A button is pressed where no script runs, and the day file has the mark. */
async function marks(browser, url) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(url);
  await page.getByRole('link', { name: 'Evenings' }).click();
  await page.getByRole('link', { name: 'Layers by Hand, evening 3' }).click({ timeout: 60000 });
  await page.getByRole('button', { name: /^Begun: Lock in the butter, instructor/ }).click({ timeout: 60000 });
  await page.getByText('lock-in-the-butter begun').waitFor({ timeout: 60000 });
  const day = fs.readFileSync(path.join(content, 'classes/evening-3.day.txt'), 'utf8');
  tally.check(/instructor: layered-dough\/lock-in-the-butter begun\n$/.test(day), `the day file says ${day}`);
  await context.close();
}

(async () => {
  course();
  const { run, said, url } = await start();
  for (const paper of [0, 255]) tally.check(scanned(said, paper) === url, `the code on ${paper ? 'white' : 'black'} is not read`);
  const browser = await launch();
  try {
    let ready = false;
    for (let tries = 0; !ready && tries < 300; tries += 1) {
      const page = await browser.newPage();
      ready = (await page.goto(url)).status() === 200;
      await page.close();
      if (!ready) await new Promise((later) => { setTimeout(later, 200); });
    }
    await marks(browser, url);
    for (const [width, colorScheme] of [[360, 'light'], [360, 'dark'], [1280, 'light']]) {
      const context = await browser.newContext({ viewport: { width, height: 740 }, colorScheme, bypassCSP: true });
      const page = await context.newPage();
      const heard = [];
      page.on('console', (line) => { if (line.type() === 'error') heard.push(line.text()); });
      await page.goto(url);
      for (const name of ['', 'evening-3', 'saturday-puff']) {
        await page.goto(new URL(`/.preview/evening/${name}`, url).href, { timeout: 60000 });
        await judge(page, `${name || 'the list'}, ${width}, ${colorScheme}`);
      }
      tally.check(!heard.length, `the browser complains: ${heard.join('; ')}`);
      await context.close();
    }
  } catch (error) {
    tally.check(false, String(error.stack));
  }
  await browser.close();
  run.kill('SIGINT');
  await new Promise((ended) => { run.once('exit', ended); });
  tally.end();
})();
