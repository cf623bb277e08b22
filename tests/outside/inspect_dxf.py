"""Files that ezdxf writes, in several versions of DXF, inspected by the program: `inspect_dxf.py planforge [WORD...]`."""
import pathlib
import subprocess
import sys
import tempfile

import ezdxf
from ezdxf import units

VERSIONS = ("R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018")
CORNERS = [(0, 0), (60, 0), (60, 40), (0, 40)]
FAULT = 4


def part(modelspace, version):
    """A plate with a round corner and two holes, as the version writes it."""
    attributes = {"layer": "CUT"}
    points = [(0, 0, 0), (60, 0, 0), (60, 30, 0.41421356), (50, 40, 0), (0, 40, 0)]
    if version == "R12":
        modelspace.add_polyline2d(points, format="xyb", close=True, dxfattribs=attributes)
    else:
        modelspace.add_lwpolyline(points, format="xyb", close=True, dxfattribs=attributes)
    modelspace.add_circle((15, 20), 5, dxfattribs=attributes)
    modelspace.add_line((40, 10), (50, 10), dxfattribs=attributes)
    modelspace.add_arc((50, 15), 5, 270, 90, dxfattribs=attributes)
    modelspace.add_line((50, 20), (40, 20), dxfattribs=attributes)
    modelspace.add_arc((40, 15), 5, 90, 270, dxfattribs=attributes)


CASES = {  # what is added to a sound part, and the word for the finding
    "sound": (lambda m: None, None),
    "open": (lambda m: m.add_line((100, 0), (140, 0), dxfattribs={"layer": "CUT"}), "open-contour"),
    "twice": (lambda m: m.add_circle((15, 20), 5, dxfattribs={"layer": "CUT"}), "duplicate"),
    "crossing": (lambda m: m.add_circle((60, 10), 5, dxfattribs={"layer": "CUT"}), "crossing"),
    "text": (lambda m: m.add_text("F1", dxfattribs={"layer": "CUT"}), "text"),
    "point": (lambda m: m.add_point((5, 5), dxfattribs={"layer": "CUT"}), "forbidden-entity"),
}
NEWER = {
    "spline": (lambda m: m.add_spline([(0, 0), (10, 5), (20, 0)], dxfattribs={"layer": "CUT"}), "spline"),
    "ellipse": (lambda m: m.add_ellipse((30, 80), (20, 0), 0.5, dxfattribs={"layer": "CUT"}), "ellipse"),
    "hatch": (lambda m: m.add_hatch(dxfattribs={"layer": "CUT"}).paths.add_polyline_path(CORNERS), "hatch"),
    "mtext": (lambda m: m.add_mtext("F1", dxfattribs={"layer": "CUT"}), "text"),
}


def write(folder, version, name, add):
    document = ezdxf.new(version)
    document.units = units.MM
    document.layers.add("CUT")
    modelspace = document.modelspace()
    part(modelspace, version)
    add(modelspace)
    file = folder / f"{name}-{version}-mm.dxf"
    document.saveas(file)
    return file


def main(program):
    failed = 0
    with tempfile.TemporaryDirectory() as folder:
        for version in VERSIONS:
            for name, (add, word) in (CASES if version == "R12" else CASES | NEWER).items():
                file = write(pathlib.Path(folder), version, name, add)
                run = subprocess.run([*program, "inspect", "--quiet", file], capture_output=True, text=True, check=False)
                is_right = run.returncode == 0 and not run.stdout if word is None else run.returncode == FAULT and f": fault: {word}: " in run.stdout
                failed += not is_right
                print("ok  " if is_right else "FAIL", f"{file.name} inspected", "" if is_right else f"exit {run.returncode}: {run.stdout}{run.stderr}")
    return 1 if failed else 0


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit("usage: inspect_dxf.py PROGRAM [WORD...]")
    sys.exit(main(sys.argv[1:]))
