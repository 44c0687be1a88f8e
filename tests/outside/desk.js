// The desk in chromium: a recipe with eight steps, a fold, a cut and a class, written by keyboard alone,
// with no file touched by the test; sixty letters a second for a minute; the page and the sheet that
// follow; a class changed in fields; saves that fail, and saves against what is changed elsewhere; axe on wide and narrow windows.
//
//     node desk.js TOURIER CONTENT FOLDER [PICTURES]
//
// Where a folder for pictures is named, what the windows look like is put there.
const fs = require('fs');
const path = require('path');
const { spawn } = require('child_process');
const { launch, Tally } = require('./common');

const [tourier, from, folder, pictures] = process.argv.slice(2);
const tally = new Tally();
const content = path.join(folder, 'desk-content');
const LONGEST = 'recipes/puff-paste.md';
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
let actions = 0;

/** The running desk and its address. */
function start() {
  fs.cpSync(from, content, { recursive: true });
  const run = spawn(tourier, ['--quiet', '--content', content, 'preview', '--desk', '--no-browser'], { stdio: ['ignore', 'pipe', 'ignore'], cwd: folder });
  return new Promise((ready) => {
    run.stdout.once('data', (said) => ready({ run, url: String(said).match(/http:\S+/)[0] }));
  });
}

const text = (page) => page.evaluate(() => window.tourierEditor.text());
const disk = (name) => fs.readFileSync(path.join(content, name), 'utf8');

async function press(page, keys, times = 1) {
  for (let count = 0; count < times; count += 1) await page.keyboard.press(keys);
  actions += times;
}
async function type(page, words) { await page.keyboard.type(words); actions += words.length; }

/** Goes on with Tab until a thing of this id has the keyboard. */
async function to(page, id) {
  for (let count = 0; count < 80; count += 1) {
    if (await page.evaluate((it) => document.activeElement?.id === it, id)) return;
    await press(page, 'Tab');
  }
  throw new Error(`no way to ${id} by keyboard`);
}

async function look(page, name) {
  if (pictures) await page.screenshot({ path: path.join(pictures, `${name}.png`) });
}

const settled = (page) => page.waitForFunction(() => document.body.dataset.seen === document.body.dataset.typed, null, { timeout: 60000 });

/**
 * Whether the page beside the text comes to be as asked. It is asked in one go, within the desk: the frame of an
 * older state is taken away at any moment.
 */
const seen = (page, asks) => page.waitForFunction(`(${asks})(document.querySelector('#view iframe:not(.next)')?.contentDocument ?? document)`, null, { timeout: 60000 }).then(() => true, () => false);

/** A recipe from nothing, by keyboard alone. */
async function write(page) {
  await to(page, 'new');
  await press(page, 'Enter');
  await to(page, 'field-title');
  await type(page, 'Tuesday squares');
  await press(page, 'Tab');
  await type(page, 'A folded dough, cut square and baked dark.');
  await press(page, 'Tab');
  await type(page, '12 squares');
  await press(page, 'Tab');
  const formula = ['500 g bread flour', '270 g water', '10 g fine salt', '6 g instant yeast', '30 g butter'];
  for (const line of formula) { await type(page, line); await press(page, 'Enter'); }
  await press(page, 'Tab');
  const steps = ['Mix', 'Let it rise', 'Roll', 'Fold', 'Rest', 'Cut', 'Proof', 'Bake'];
  for (const line of steps) { await type(page, line); await press(page, 'Enter'); }
  await look(page, 'begin');
  await to(page, 'dialog-do');
  await press(page, 'Enter');
  await page.waitForFunction(() => document.getElementById('texts').value === 'recipes/tuesday-squares.md');
  await settled(page);
  tally.check((disk('recipes/tuesday-squares.md').match(/^## /gm) ?? []).length === 8, 'the new text has not eight steps');
  // Each ticket gets its rows: from the top down to the row of its step.
  const rows = { Mix: ['until: it is smooth'], 'Let it rise': ['wait: 60 min (45 min to 90 min)', 'where: bench', 'at: 22 °C'], Roll: ['sheet: 40 x 30 cm'], Fold: ['turn: letter'], Rest: ['wait: 20 min (15 min to 40 min)', 'where: fridge'], Cut: ['sheet: 42 x 32 cm'], Proof: ['wait: 45 min (35 min to 60 min)', 'where: bench', 'at: 24 °C'], Bake: ['bake: 220 °C, 18 min', 'until: the crust is dark'] };
  await press(page, 'Control+Home');
  for (const [step, lines] of Object.entries(rows)) {
    const at = (await text(page)).split('\n').findIndex((line) => line === `## ${step}`);
    await press(page, 'Control+Home');
    await press(page, 'ArrowDown', at + 1);
    await press(page, 'End');
    for (const line of lines) { await press(page, 'Enter'); await press(page, 'Escape'); await type(page, line); await press(page, 'Escape'); await page.locator('.cm-content').focus(); }
    if (step === 'Cut') {
      await page.evaluate(() => document.getElementById('cut').focus());
      await to(page, 'cut');
      await press(page, 'Enter');
      await to(page, 'field-kind');
      await press(page, 'ArrowDown', 2);
      await to(page, 'field-side');
      await press(page, 'Control+A');
      await type(page, '10');
      await settled(page);
      await look(page, 'cut');
      await page.waitForTimeout(400);
      await press(page, 'Tab');
      await press(page, 'Enter');
    }
  }
  await settled(page);
  await press(page, 'Control+S');
  await page.waitForFunction(() => document.getElementById('save').disabled);
  const written = disk('recipes/tuesday-squares.md');
  for (const part of ['turn: letter', 'cut: squares 10 cm', 'bake: 220 °C, 18 min']) tally.check(written.includes(part), `${part} is not on the disk:\n${written}`);
  tally.check(!await page.locator('#faults li.told-error').count(), `errors: ${await page.locator('#faults').innerText()}`);
  tally.check(await seen(page, (it) => it.querySelectorAll('section.step').length === 8), 'the page has not eight steps');
  tally.check(await seen(page, (it) => it.querySelector('figure svg')), 'no drawing of the fold or the cut');
  console.log(`  a recipe with eight steps, a fold and a cut: ${actions} keys`);
  await look(page, 'written');
}

const open = async (page, name) => {
  await page.selectOption('#texts', name);
  await page.waitForFunction((it) => document.body.dataset.path === it, name);
  await settled(page);
  await page.waitForTimeout(500);
};

/** Swaps in a recipe that has none, and one more where it has some, both read by the program. */
async function swaps(page) {
  const one = async (name, lines) => {
    await page.locator('#swap').click();
    await page.locator('#field-name').fill(name);
    await page.locator('#field-lines').fill(lines);
    await page.locator('#dialog-do').click();
    await settled(page);
    await page.keyboard.press('Control+S');
    await page.waitForFunction(() => document.getElementById('save').disabled);
    tally.check(!await page.locator('#faults li.told-error').count(), `a swap is a fault: ${await page.locator('#faults').innerText()}`);
  };
  await open(page, 'recipes/rye-loaf.md');
  await one('sugar', '18 g granulated sugar for honey');
  await one('no spice', 'without bread spice');
  const text = disk('recipes/rye-loaf.md');
  tally.check(text.includes('\nswaps:\n  sugar:\n    - 18 g granulated sugar for honey\n  no spice:\n    - without bread spice\n---\n'), `the swaps are not in the head:\n${text.slice(0, 1200)}`);
  await open(page, 'classes/evening-3.yaml');
  tally.check(!await page.locator('#swap').isVisible(), 'a class is offered a swap');
}

/** A class that exists, changed in fields by keyboard alone: only the lines concerned are other ones. */
async function lesson(page) {
  const name = 'classes/evening-3.yaml';
  const file = path.join(content, name);
  fs.writeFileSync(file, disk(name).replace('changeover: 5 min', '# as the hall is small\nchangeover: 5 min'));
  const before = disk(name);
  await open(page, name);
  await page.waitForFunction((it) => window.tourierEditor.text() === it, before);
  await to(page, 'class');
  await press(page, 'Enter');
  await page.locator('#field-bakers').waitFor();
  tally.check(await page.locator('#field-bakers').inputValue() === '14', 'the form does not show how many bake');
  tally.check(await page.locator('#field-pieces-1').inputValue() === '10', 'the form does not show what is made');
  tally.check(/demonstrate.*changeover/.test(await page.locator('#dialog-body').innerText()), 'what the form does not show is not named');
  await look(page, 'class');
  await judge(page, 'the form of a class');
  const fill = async (id, words) => { await to(page, id); await press(page, 'Control+A'); await type(page, words); };
  await fill('field-bakers', '16');
  await fill('field-pieces-0', '12');
  // What cannot be written is said, and what was filled in is still there.
  await fill('field-kit', 'mixer');
  await to(page, 'dialog-do');
  await press(page, 'Enter');
  await page.locator('#dialog-body .why').filter({ hasText: /\S/ }).waitFor();
  tally.check(await page.locator('#field-bakers').inputValue() === '16', 'what was filled in is lost');
  await fill('field-kit', 'mixer: 5\noven: 2\ntray per oven: 4\nfridge tray: 16\nfreezer tray: 4\nproofer tray: 16\ninstructor: 1');
  await to(page, 'dialog-do');
  await press(page, 'Enter');
  await page.waitForFunction(() => window.tourierEditor.text().includes('bakers: 16'));
  await press(page, 'Control+S');
  await page.waitForFunction(() => document.getElementById('save').disabled);
  const wanted = before.replace('bakers: 14', 'bakers: 16').replace('pieces: 10', 'pieces: 12').replace('mixer: 4', 'mixer: 5');
  tally.check(disk(name) === wanted, `other lines changed:\n${disk(name)}`);
  await open(page, 'recipes/rye-loaf.md');
  tally.check(!await page.locator('#class').isVisible(), 'a recipe is offered the form of a class');
}

/** A save that fails says so; what is typed stays, and is saved when it can be. */
async function fails(page) {
  const name = 'recipes/tin-loaf.md';
  const file = path.join(content, name);
  await open(page, name);
  const before = disk(name);
  fs.chmodSync(file, 0o444);
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('Unsaved.');
  await page.keyboard.press('Control+S');
  await page.locator('#state').filter({ hasText: 'tin-loaf.md' }).waitFor();
  tally.check(disk(name) === before, 'a save that failed changed the file');
  tally.check((await text(page)).endsWith('Unsaved.'), 'a save that failed lost what was typed');
  // Another text is opened at once: what was typed here is there again.
  await open(page, 'recipes/rye-loaf.md');
  await open(page, name);
  tally.check((await text(page)).endsWith('Unsaved.'), 'another text lost what was typed');
  fs.chmodSync(file, 0o644);
  await page.keyboard.press('Control+S');
  await page.waitForFunction(() => document.getElementById('save').disabled);
  tally.check(disk(name).endsWith('Unsaved.'), 'the next save was not done');
}

/** What would change is told before publishing, at first that nothing can be said. */
async function asked(page) {
  await page.locator('#publish').click();
  await page.locator('#dialog-body').getByText('not published from here yet').waitFor({ timeout: 60000 });
  await look(page, 'publish');
  await page.keyboard.press('Escape');
}

/** How long the page, then the sheet, takes to follow a letter. */
async function follow(page) {
  await open(page, LONGEST);
  await page.locator('.cm-content').focus();
  const median = async (times) => {
    const all = [];
    for (let count = 0; count < times; count += 1) {
      const begun = Date.now();
      const shown = page.evaluate(() => new Promise((ready) => document.getElementById('view').addEventListener('shown', () => ready(), { once: true })));
      await page.keyboard.type('a');
      await shown;
      all.push(Date.now() - begun);
      await page.waitForTimeout(300);
    }
    return all.sort((one, other) => one - other)[Math.floor(times / 2)];
  };
  await page.keyboard.press('Control+End');
  const quick = await median(9);
  const sheets = await page.locator('#views option').evaluateAll((all) => all.map((one) => one.value).filter((it) => it.endsWith('.pdf')));
  tally.check(sheets.length > 0, 'no sheet is offered');
  await page.selectOption('#views', sheets[0]);
  await page.waitForTimeout(3000);
  await look(page, 'sheet');
  const slow = await median(5);
  console.log(`  the page follows a letter after ${quick} ms, the sheet after ${slow} ms (median)`);
  await page.selectOption('#views', { index: 0 });
  await page.waitForTimeout(1000);
}

/** Sixty letters a second, for a minute. */
async function fast(page, seconds) {
  await open(page, LONGEST);
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+End');
  await settled(page);
  const faults = await page.locator('#faults').innerText();
  const before = await text(page);
  const heap = () => page.evaluate(() => performance.memory?.usedJSHeapSize ?? 0);
  const first = await heap();
  let sent = '';
  const begun = Date.now();
  for (let count = 0; count < seconds * 60; count += 1) {
    const due = begun + count * 1000 / 60;
    const wait = due - Date.now();
    if (wait > 0) await new Promise((ready) => setTimeout(ready, wait));
    const letter = count % 6 === 5 ? ' ' : 'abcde'[count % 6];
    sent += letter;
    await page.keyboard.type(letter);
  }
  const took = (Date.now() - begun) / 1000;
  await settled(page);
  const after = await text(page);
  tally.check(after === before + sent, `letters were lost: ${after.length - before.length} of ${sent.length}`);
  tally.check(await page.locator('#faults').innerText() === faults, 'a fault is stale');
  const last = await heap();
  console.log(`  ${sent.length} letters in ${took.toFixed(1)} s; memory of the page ${(first / 2 ** 20).toFixed(0)} to ${(last / 2 ** 20).toFixed(0)} MiB`);
  tally.check(last < first + 64 * 2 ** 20, 'memory grows');
}

/** What is changed elsewhere is shown beside, and never written over; a reload keeps what is typed. */
async function both(page) {
  await open(page, 'recipes/tin-loaf.md');
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('Mine.');
  await settled(page);
  page.once('dialog', (dialog) => dialog.accept());
  await page.reload();
  await page.waitForFunction(() => document.getElementById('texts').value === 'recipes/tin-loaf.md');
  await settled(page);
  tally.check((await text(page)).endsWith('Mine.'), 'a reload lost what was typed');
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+Z');
  tally.check(!(await text(page)).endsWith('Mine.'), 'a reload lost what can be undone');
  await page.keyboard.type(' Mine.');
  const file = path.join(content, 'recipes/tin-loaf.md');
  fs.appendFileSync(file, '\nTheirs.\n');
  await page.waitForTimeout(800);
  await page.keyboard.press('Control+S');
  await page.locator('.sided').waitFor();
  tally.check(disk('recipes/tin-loaf.md').endsWith('Theirs.\n'), 'what was changed elsewhere was written over');
  await look(page, 'both');
  await page.keyboard.press('Escape');
}

/** Where a tap leads, and a fault at its line. */
async function taps(page) {
  await open(page, 'recipes/crescents.md');
  await page.frameLocator('#view iframe:not(.next)').locator('section.step h3').nth(2).click();
  const there = await page.waitForFunction(() => document.querySelector('.cm-activeLine')?.innerText.startsWith('## Cut'), null, { timeout: 20000 }).then(() => true, () => false);
  tally.check(there, `a tap on the third step leads to ${await page.locator('.cm-activeLine').first().innerText()}`);
}

async function judge(page, name) {
  await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
  const found = await page.evaluate(async (values) => {
    const { violations } = await window.axe.run({ exclude: ['iframe'] }, { runOnly: { type: 'tag', values } });
    return violations.map(({ id, nodes }) => `${id} ${nodes[0].target.join(' ')} ${nodes[0].failureSummary}`);
  }, TAGS);
  tally.check(!found.length, `axe, ${name}: ${found.join('; ')}`);
}

(async () => {
  const { run, url } = await start();
  const browser = await launch();
  try {
    const context = await browser.newContext({ viewport: { width: 1024, height: 700 }, bypassCSP: true });
    const page = await context.newPage();
    const said = [];
    page.on('pageerror', (error) => said.push(String(error)));
    await page.goto(url);
    await page.waitForFunction(() => document.body.dataset.seen, null, { timeout: 60000 });
    tally.check(!page.url().includes('#'), 'the key stays in the address');
    await look(page, 'wide');
    await write(page);
    await taps(page);
    await swaps(page);
    await lesson(page);
    await fails(page);
    await asked(page);
    await judge(page, '1024 x 700');
    await follow(page);
    await fast(page, Number(process.env.SECONDS_OF_TYPING || 60));
    await both(page);
    await page.setViewportSize({ width: 360, height: 740 });
    await page.waitForTimeout(300);
    await look(page, 'narrow');
    await judge(page, '360');
    tally.check(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'wider than 360 px');
    tally.check(!said.length, `the browser complains: ${said.join('; ')}`);
  } catch (error) {
    tally.check(false, String(error.stack));
  }
  await browser.close();
  run.kill('SIGINT');
  await new Promise((ended) => { run.once('exit', ended); });
  tally.end();
})();
