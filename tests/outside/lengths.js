// How long a recipe's page is on a phone, how soon its ingredients come, and how many sheets
// it takes when it is printed from the browser.
//
//     node lengths.js SITE          holds every recipe's page to the bounds
//     node lengths.js SITE --table  prints what was measured
//
// The bounds are the project's own promise. A phone of 360 by 740 px is common practice, no
// source; ISO 216 for A4.
const { files, serve, launch, Tally } = require('./common');

const PHONE = { width: 360, height: 740 };
// A screen and a half before the first ingredient; what a step may take beside what all pages
// have, so that eight steps stay under 9,000 px; folds are drawn large enough to be done from.
const FIRST = 1.5 * PHONE.height;
const STEPS = 8;
const LONGEST = 9000;
const FOLDS = 1.1;
const SHEETS = 5;

(async () => {
  const [folder, said] = process.argv.slice(2);
  const server = await serve(folder, { 'cache-control': 'max-age=600' });
  const browser = await launch();
  const tally = new Tally();
  const names = files(folder, '.html').filter((name) => name.startsWith('recipes/'));
  for (const file of names) {
    const page = await browser.newPage({ viewport: PHONE });
    await page.goto(`${server.url}/${file}`);
    // The first page a reader opens may keep the device's own typefaces; from the second on
    // ours are there.
    await page.evaluate(() => document.fonts.ready);
    await page.goto(`${server.url}/${file}`);
    await page.evaluate(() => document.fonts.ready);
    // What is laid out only when it comes near has its true height then.
    const seen = await page.evaluate(() => {
      document.querySelectorAll('.drawing').forEach((it) => { it.style.contentVisibility = 'visible'; });
      return {
      first: document.querySelector('.formula tbody tr').getBoundingClientRect().top + scrollY,
      whole: document.documentElement.scrollHeight,
      folded: document.querySelector('#layers') !== null,
      steps: document.querySelectorAll('section.step').length,
      clipped: [...document.querySelectorAll('table, svg')].filter((it) => it.checkVisibility()
        && it.getBoundingClientRect().right > innerWidth + 1).length,
      };
    });
    const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
    const sheets = (pdf.match(/\/Type\s*\/Page\b(?!s)/g) || []).length;
    await page.close();
    const longest = LONGEST * Math.max(1, seen.steps / STEPS) * (seen.folded ? FOLDS : 1);
    tally.check(seen.first <= FIRST, `${file}: the first ingredient stands at ${Math.round(seen.first)} px`);
    tally.check(seen.whole <= longest, `${file}: ${seen.whole} px for ${seen.steps} steps`);
    tally.check(!seen.clipped, `${file}: ${seen.clipped} tables or drawings are wider than the phone`);
    tally.check(sheets > 0 && sheets <= SHEETS, `${file}: ${sheets} sheets of paper`);
    if (said === '--table') console.log(`| ${file.split('/')[1]} | ${seen.steps} | ${Math.round(seen.first)} | ${seen.whole} | ${sheets} |`);
  }
  await browser.close();
  server.close();
  tally.end();
})();
