// What the page checks share: a server on this machine, Debian's chromium, counting.
const fs = require('fs');
const http = require('http');
const path = require('path');

const KINDS = {
  '.css': 'text/css', '.html': 'text/html; charset=utf-8', '.js': 'text/javascript',
  '.pdf': 'application/pdf', '.png': 'image/png', '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2', '.xml': 'application/xml',
};

/** Every file below `folder` that ends in `end`, in order. */
function files(folder, end) {
  const all = fs.readdirSync(folder, { recursive: true }).map((name) => name.split(path.sep).join('/'));
  return all.filter((name) => name.endsWith(end)).sort();
}

/** Serves `folder`, with `headers` on every answer. */
function serve(folder, headers = {}) {
  const root = path.resolve(folder);
  const server = http.createServer((request, response) => {
    let name = decodeURIComponent(new URL(request.url, 'http://x').pathname);
    if (name.endsWith('/')) name += 'index.html';
    const file = path.join(root, name);
    if (!file.startsWith(root + path.sep) || !fs.existsSync(file)) {
      response.writeHead(404);
      return response.end();
    }
    response.writeHead(200, { 'content-type': KINDS[path.extname(file)] || 'application/octet-stream', ...headers });
    return fs.createReadStream(file).pipe(response);
  });
  return new Promise((ready) => {
    server.listen(0, '127.0.0.1', () => {
      const close = () => { server.closeAllConnections(); server.close(); };
      ready({ url: `http://127.0.0.1:${server.address().port}`, close });
    });
  });
}

/** Debian's own chromium, which may make no request of its own. */
function launch() {
  const { chromium } = require('playwright-core');
  const args = ['--no-sandbox', '--disable-gpu', '--disable-background-networking',
    '--disable-component-update', '--disable-sync', '--no-first-run'];
  return chromium.launch({ executablePath: process.env.CHROMIUM || '/usr/bin/chromium', args });
}

/** Counts what holds and prints what does not. */
class Tally {
  passed = 0;
  failed = 0;

  check(holds, finding) {
    if (holds) { this.passed += 1; return; }
    this.failed += 1;
    if (this.failed <= 40) console.error(`  ${finding}`);
  }

  end() {
    if (!this.passed && !this.failed) this.check(false, 'nothing was there to check');
    console.log(`${this.passed} passed, ${this.failed} failed`);
    process.exit(this.failed ? 1 : 0);
  }
}

module.exports = { files, serve, launch, Tally };
