// Every drawing: well-formed, with a viewBox, a title and a description, and every word
// inside the picture when it is set in the site's own typefaces.
//
//     node svg.js SITE
//
// Source: SVG 2 (W3C), 5.8 title and desc, 8.2 viewBox; measured in chromium.
const fs = require('fs');
const path = require('path');
const { files, serve, launch, Tally } = require('./common');

const FACES = ['Asap-Regular', 'Asap-Bold', 'Vollkorn-Regular'].map((name) => {
  const [family, weight] = name.split('-');
  return `@font-face { font-family: ${family}; font-weight: ${weight === 'Bold' ? 700 : 400};`
    + ` src: url(/assets/fonts/${name}.woff2); }`;
}).join('\n');

/** In the page: reads one drawing, measures its words, and says what is wrong. */
async function examine({ text, speaks }) {
  const faults = [];
  const drawing = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  if (drawing.querySelector('parsererror') || drawing.localName !== 'svg') return ['is no SVG'];
  if (!/^(-?[\d.]+[ ,]+){3}[\d.]+$/.test(drawing.getAttribute('viewBox') || '')) faults.push('has no viewBox');
  const says = (name) => [...drawing.children].find((e) => e.localName === name)?.textContent.trim();
  if (speaks && !says('title')) faults.push('has no title');
  if (speaks && !says('desc')) faults.push('has no description');
  if (drawing.querySelector('script, foreignObject')) faults.push('holds what is no drawing');
  document.body.replaceChildren(document.adoptNode(drawing));
  await Promise.all([...document.fonts].map((face) => face.load()));
  const { x, y, width, height } = drawing.viewBox.baseVal;
  const scale = drawing.getScreenCTM().inverse();
  for (const word of drawing.querySelectorAll('text')) {
    const box = word.getBoundingClientRect();
    const [from, to] = [[box.left, box.top], [box.right, box.bottom]]
      .map(([left, top]) => new DOMPoint(left, top).matrixTransform(scale));
    // A line of type is a little higher than its letters.
    const inside = from.x >= x - 1 && to.x <= x + width + 1 && from.y >= y - 4 && to.y <= y + height + 4;
    if (!inside) faults.push(`cuts off "${word.textContent}"`);
  }
  return faults;
}

(async () => {
  const [folder] = process.argv.slice(2);
  const server = await serve(folder);
  const browser = await launch();
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  const body = `<!doctype html><style>${FACES} body { margin: 0; } svg { width: 640px; }</style>`;
  await page.route('**/board', (route) => route.fulfill({ contentType: 'text/html', body }));
  await page.goto(`${server.url}/board`);
  const tally = new Tally();
  for (const file of files(folder, '.svg')) {
    const text = fs.readFileSync(path.join(folder, file), 'utf8');
    const faults = await page.evaluate(examine, { text, speaks: !/^(\w\w\/)?assets\//.test(file) });
    tally.check(!faults.length, `${file} ${faults.join(', ')}`);
  }
  await browser.close();
  server.close();
  tally.end();
})();
