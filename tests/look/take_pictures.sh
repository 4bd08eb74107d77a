#!/usr/bin/env bash
# Takes the README's two pictures from the published demo pack: a session's page and a sheet of cards.
# Usage: tests/look/take_pictures.sh PUBLISHED_FOLDER   (needs chromium, poppler-utils and imagemagick)
set -euo pipefail
published=$(realpath "$1")
here=$(dirname "$(realpath "$0")")
chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking \
    --disable-component-update --disable-sync --hide-scrollbars --window-size=1100,1500 \
    --screenshot="$here/page.png" "file://$published/sessions/athletics/brook-leap.html" 2>/dev/null
pdftoppm -r 90 -f 2 -l 2 -singlefile -png "$published/print/athletics/brook-leap/cards.pdf" "$here/cards"
for picture in page cards; do
    convert "$here/$picture.png" -resize 1100x -colors 64 -strip "PNG8:$here/$picture.png"
done
