#!/bin/sh
# Installs what the browser checks need on a bare Debian machine, and nothing
# that is already there: Chromium, fonts for every script, poppler, Java for the
# HTML checker, Node for the npm client, hunspell dictionaries, rclone and GNU
# parallel for docs/district.md, and the npm packages in package-lock.json.
set -eu
cd "$(dirname "$0")"

missing=
need() { command -v "$1" >/dev/null 2>&1 || missing="$missing $2"; }
package() { dpkg -s "$1" >/dev/null 2>&1 || missing="$missing $1"; }

need chromium chromium
need pdftoppm poppler-utils
need java default-jre-headless
need npm npm
need hunspell hunspell
need rclone rclone
need parallel parallel
for p in fonts-noto-core fonts-noto-cjk \
	hunspell-en-us hunspell-es hunspell-fr hunspell-pt-br hunspell-ru hunspell-uk hunspell-vi hunspell-ko hunspell-ar; do
	package "$p"
done

if [ -n "$missing" ]; then
	if [ "$(id -u)" != 0 ]; then
		echo "please install:$missing" >&2
		exit 1
	fi
	apt-get update -qq
	# shellcheck disable=SC2086 # a list of package names
	DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing
fi

if [ ! -f node_modules/.package-lock.json ] || [ package-lock.json -nt node_modules/.package-lock.json ]; then
	npm ci --no-audit --no-fund --loglevel=error
fi
