#!/usr/bin/env bash
# The editor of the desk is what its script makes of the packages in its lock file.
set -u
editor=$(cd "$(dirname "$0")/../../src/preview/desk/editor" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
passed=0 failed=0
bash "$editor/build.sh" "$work/editor.js" || echo '  it cannot be made'
for file in editor.js editor.licences.txt; do
    if cmp "$editor/$file" "$work/$file"; then passed=$((passed + 1)); else failed=$((failed + 1)); fi
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
