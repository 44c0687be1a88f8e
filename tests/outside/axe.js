// Accessibility of every page with npm `axe-core`: the rules for WCAG 2.0 to 2.2, A and
// AA, and good practice, on wide and narrow pages, light and dark.
//
//     node axe.js SITE
//
// What axe cannot decide is printed as "to look at" and not counted.
const fs = require('fs');
const { files, serve, launch, Tally } = require('./common');

const MODES = [
  ['wide', { viewport: { width: 1280, height: 900 }, colorScheme: 'light' }],
  ['narrow', { viewport: { width: 320, height: 640 }, colorScheme: 'light' }],
  ['dark', { viewport: { width: 1280, height: 900 }, colorScheme: 'dark' }],
  ['narrow and dark', { viewport: { width: 320, height: 640 }, colorScheme: 'dark' }],
];
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe says about a page: what is against a rule, and what it cannot decide. */
async function judge(page, axe) {
  await page.evaluate(axe);
  return page.evaluate(async (values) => {
    const { violations, incomplete } = await window.axe.run(document, {
      runOnly: { type: 'tag', values }, resultTypes: ['violations', 'incomplete'],
    });
    const brief = ({ id, nodes }) => `${id} (${nodes.length}) ${nodes[0].target.join(' ')}`;
    return { violations: violations.map(brief), incomplete: incomplete.map(brief) };
  }, TAGS);
}

(async () => {
  const [folder] = process.argv.slice(2);
  const axe = fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
  const server = await serve(folder);
  const browser = await launch();
  const tally = new Tally();
  const open = new Set();
  // The modes side by side: each page is a process of its own.
  await Promise.all(MODES.map(async ([mode, settings]) => {
    const context = await browser.newContext(settings);
    const page = await context.newPage();
    for (const file of files(folder, '.html')) {
      await page.goto(`${server.url}/${file}`);
      const { violations, incomplete } = await judge(page, axe);
      tally.check(!violations.length, `${file}, ${mode}: ${violations.join('; ')}`);
      incomplete.forEach((finding) => open.add(finding.replace(/\s*\(\d+\).*/, '')));
    }
    await context.close();
  }));
  if (open.size) console.error(`  to look at, not counted: ${[...open].join(', ')}`);
  await browser.close();
  server.close();
  tally.end();
})();
