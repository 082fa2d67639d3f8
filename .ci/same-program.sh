#!/bin/sh
# Makes the program in two folders of different names and compares the bytes.
set -eu
one=$(mktemp -d) two=$(mktemp -d)/somewhere/else
trap 'rm -rf "$one" "${two%/somewhere/else}"' EXIT
mkdir -p "$two"
git ls-files -z -- . ':!browser' | xargs -0 cp --parents -t "$one"
cp -r "$one/." "$two"
for dir in "$one" "$two"; do
	(cd "$dir" && make -s program VERSION=test)
done
cmp "$one/homebuild" "$two/homebuild"
"$one/homebuild" --version
