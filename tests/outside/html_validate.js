// Every page through npm `html-validate`: its recommended, document and accessibility rules.
//
//     node html_validate.js SITE
//
// Rules about how HTML is laid out in the file are off: nobody reads the source. Files of
// the site itself need no integrity hash.
const path = require('path');
const { HtmlValidate } = require('html-validate');
const { files, Tally } = require('./common');

const SETTINGS = {
  root: true,
  extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
  rules: {
    'attr-quotes': 'off', 'doctype-style': 'off', 'long-title': 'off',
    'no-trailing-whitespace': 'off', 'void-style': 'off',
    'require-sri': ['error', { target: 'crossorigin' }],
  },
};

(async () => {
  const [folder] = process.argv.slice(2);
  const validator = new HtmlValidate(SETTINGS);
  const tally = new Tally();
  for (const file of files(folder, '.html')) {
    const report = await validator.validateFile(path.join(folder, file));
    const messages = report.results.flatMap((result) => result.messages);
    const errors = messages.filter(({ severity }) => severity === 2);
    const first = errors.slice(0, 5).map((e) => `${e.line}:${e.column} ${e.ruleId}: ${e.message}`);
    tally.check(!errors.length, `${file}: ${errors.length} findings: ${first.join('; ')}`);
  }
  tally.end();
})();
