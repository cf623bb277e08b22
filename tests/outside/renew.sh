#!/bin/sh
# Renews what is kept of the drawings, after a change that somebody has looked at page by page: the pictures of the demos' sheets, the
# picture of the README and the example set. Run it from the repository's root after a Release build.
set -eu
program="dotnet src/PlanForge/bin/Release/net10.0/planforge.dll"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
$program draw designs/*.yaml tests/outside/example/wedge-800.yaml --to "$work" > /dev/null
for design in designs/*.yaml; do
    /usr/bin/python3 -B tests/outside/golden.py "$work/$(basename "$design" .yaml)"
done
for picture in designs/preview/*.svg; do
    cp "$work/oxbow-1420/sheets/${picture##*oxbow-1420-}" "$picture"
done
rm -rf tests/outside/example/wedge-800 "$work/wedge-800/sheets"
cp -r "$work/wedge-800" tests/outside/example/wedge-800
$program schema > designs/planforge.schema.json
