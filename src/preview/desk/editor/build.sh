#!/usr/bin/env bash
# Makes editor.js of editor.mjs and the packages that package-lock.json names, in a folder of
# its own:
#
#     bash build.sh [FILE]        FILE is editor.js here where it is not said
#
# With it come the licences of all that is in it (editor.licences.txt).
set -eu
here=$(cd "$(dirname "$0")" && pwd)
to=$(realpath -m "${1:-$here/editor.js}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp "$here"/{package.json,package-lock.json,editor.mjs} "$work"
cd "$work"
npm ci --ignore-scripts --no-audit --no-fund --silent
node_modules/.bin/esbuild editor.mjs --bundle --minify --format=iife --target=es2022 \
    --charset=utf8 --legal-comments=none --log-level=warning --metafile=meta.json \
    --banner:js='/* CodeMirror and what it rests on: MIT, see editor.licences.txt. Made by build.sh. */' \
    --outfile="$to"
node - "$to" <<'END'
const fs = require('fs');
const inputs = Object.keys(JSON.parse(fs.readFileSync('meta.json')).inputs);
const names = new Set(inputs.map((path) => path.match(/node_modules\/((?:@[^/]+\/)?[^/]+)/)?.[1]).filter(Boolean));
const text = [...names].sort().map((name) => {
  const about = JSON.parse(fs.readFileSync(`node_modules/${name}/package.json`));
  const file = fs.readdirSync(`node_modules/${name}`).find((one) => /^licen[cs]e/i.test(one));
  return `${name} ${about.version}, ${about.license}\n\n${fs.readFileSync(`node_modules/${name}/${file}`, 'utf8').trim()}\n`;
});
fs.writeFileSync(process.argv[2].replace(/\.js$/, '.licences.txt'), text.join('\n\n'));
END
