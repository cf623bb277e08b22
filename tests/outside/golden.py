"""Compares the sheets of a plan with pictures that a person has looked at and approved.

The pictures are tests/outside/golden/DESIGN-NN.png, grey, one a page of plan.pdf as poppler draws it. After a change of the drawings
that was looked at page by page:   python3 tests/outside/golden.py FOLDER   (FOLDER holds a plan.pdf) renews those of a design.
"""
import pathlib
import struct
import subprocess
import sys
import tempfile
import zlib

import raster

RESOLUTION = 50
PICTURES = pathlib.Path(__file__).parent / "golden"

# Mean grey of blocks: a line of a title may be drawn a little darker by another version of the program, nothing may move or go.
BLOCK = 6
GREATEST_DIFFERENCE = 40


def check(report, plan, design):
    approved = sorted(PICTURES.glob(f"{design}-*.png"))
    if not approved:
        return
    with tempfile.TemporaryDirectory() as folder:
        drawn = render(plan, pathlib.Path(folder))
        report.check(plan, "has as many pages as were approved", lambda: None if len(drawn) == len(approved) else f"{len(drawn)}, not {len(approved)}")
        for page, picture in zip(drawn, approved):
            report.check(plan, f"looks like {picture.name}", lambda page=page, picture=picture: fault(page, picture))


def fault(page, approved):
    difference = raster.largest_difference(page, read_png(approved), BLOCK)
    return None if difference <= GREATEST_DIFFERENCE else f"a block differs by {difference:.0f} of 255 grey levels"


def render(plan, folder):
    subprocess.run(["pdftoppm", "-gray", "-r", str(RESOLUTION), str(plan), str(folder / "p")], check=True)
    return [raster.parse_pgm(file.read_bytes()) for file in sorted(folder.glob("p-*.pgm"))]


def read_png(file):
    """An 8-bit grey picture without interlacing (PNG specification, W3C, second edition, sections 9 and 11)."""
    data = file.read_bytes()
    width, height, depth, colour, _, _, interlace = struct.unpack(">IIBBBBB", data[16:29])
    if (depth, colour, interlace) != (8, 0, 0):
        raise ValueError("not an 8-bit grey picture")
    packed, at = b"", 8
    while at < len(data):
        length, kind = struct.unpack(">I4s", data[at:at + 8])
        packed += data[at + 8:at + 8 + length] if kind == b"IDAT" else b""
        at += length + 12
    rows, before, raw = [], bytearray(width), zlib.decompress(packed)
    for y in range(height):
        start = y * (width + 1)
        before = unfiltered(raw[start], bytearray(raw[start + 1:start + 1 + width]), before)
        rows.append(bytes(before))
    return raster.Picture(width, height, b"".join(rows))


def unfiltered(kind, row, above):
    if kind == 2:
        return bytearray((x + up) & 255 for x, up in zip(row, above))
    for i in range(len(row)) if kind else ():
        left, corner = (row[i - 1], above[i - 1]) if i else (0, 0)
        guess = (0, left, above[i], (left + above[i]) // 2, paeth(left, above[i], corner))[kind]
        row[i] = (row[i] + guess) & 255
    return row


def paeth(left, up, corner):
    return min((left, up, corner), key=lambda value: abs(left + up - corner - value))


def write_png(file, picture):
    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    # Every row as it differs from the one above: most of a drawing is white.
    rows, above = b"", bytes(picture.width)
    for y in range(picture.height):
        row = picture.row(y)
        rows += b"\2" + bytes((x - up) & 255 for x, up in zip(row, above))
        above = row
    header = struct.pack(">IIBBBBB", picture.width, picture.height, 8, 0, 0, 0, 0)
    file.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(rows, 9)) + chunk(b"IEND", b""))


def renew(folder):
    PICTURES.mkdir(exist_ok=True)
    for old in PICTURES.glob(f"{folder.name}-*.png"):
        old.unlink()
    with tempfile.TemporaryDirectory() as scratch:
        for number, picture in enumerate(render(folder / "plan.pdf", pathlib.Path(scratch)), 1):
            write_png(PICTURES / f"{folder.name}-{number:02}.png", picture)


if __name__ == "__main__":
    renew(pathlib.Path(sys.argv[1]))
