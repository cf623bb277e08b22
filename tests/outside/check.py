"""Runs every outside check over the files of one run; see run.sh."""
import pathlib
import sys

import dxf
import golden
import pdf
import pdf_objects
import svg
from report import Report


def main(folder, words):
    report = Report(folder)
    plan = folder / "plan.pdf"
    report.check(plan, "is there", lambda: None if plan.is_file() else "no such file")
    sheets = sorted((folder / "sheets").glob("*.svg"))
    for file in sorted(folder.glob("plan*.pdf")):
        pdf_objects.check(report, file, len(sheets), file != plan)
        pdf.check(report, file, sheets if file == plan else [], words if file == plan else [])
    golden.check(report, plan, folder.name)
    for file in sorted((folder / "cut").glob("*.dxf")) + sorted((folder / "parts").glob("*.dxf")):
        dxf.check(report, file)
    for file in sorted((folder / "cut").glob("*.svg")) + sorted((folder / "parts").glob("*.svg")) + sheets:
        svg.check(report, file)
    return report.close()


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit("usage: run.sh FOLDER [WORD...]")
    sys.exit(main(pathlib.Path(sys.argv[1]), sys.argv[2:]))
