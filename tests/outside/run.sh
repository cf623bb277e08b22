#!/bin/sh
# Judges the files of one run by programs that are not ours: qpdf, poppler, mupdf, Chromium and ezdxf.
#   tests/outside/run.sh FOLDER [WORD...]
# FOLDER holds plan.pdf and, as far as there are any, plan-*.pdf, cut/*.dxf, cut/*.svg, parts/*.dxf, parts/*.svg and sheets/*.svg.
# Every WORD (or phrase in quotes) must be found in the text of plan.pdf.
# Prints a line `ok` or `FAIL` for each check; exits with 1 if one failed, with 2 if a program is missing.
# Debian packages: qpdf poppler-utils mupdf-tools chromium python3 python3-ezdxf
set -eu

for program in qpdf pdfinfo pdftoppm pdftotext mutool chromium /usr/bin/python3; do
    command -v "$program" > /dev/null || { echo "FAIL $program is not installed" >&2; exit 2; }
done
/usr/bin/python3 -c 'import ezdxf' 2> /dev/null || { echo 'FAIL python3-ezdxf is not installed' >&2; exit 2; }

exec /usr/bin/python3 -B "$(dirname "$0")/check.py" "$@"
