"""What qpdf, poppler, mupdf and Chromium say about a PDF."""
import re
import subprocess
import xml.etree.ElementTree

import chromium
import pdf_objects
import raster

PAPERS = {  # ISO 216 and ANSI Y14.1 sizes, mm
    "a4": (210, 297), "a3": (297, 420), "a2": (420, 594), "a1": (594, 841), "a0": (841, 1189),
    "letter": (215.9, 279.4), "legal": (215.9, 355.6), "tabloid": (279.4, 431.8),
}
BAR_RESOLUTION = 600
PICTURE_RESOLUTION = 300
VIEWER_BLOCK = chromium.RESOLUTION // 25  # a millimetre
VIEWER_SLACK = 2  # pixels: the viewer rounds the size of a page to whole ones of its own, three of these


def check(report, file, sheets, words):
    report.check(file, "passes qpdf --check without a word", lambda: qpdf_fault(file))
    boxes = page_boxes(file)
    report.check(file, "has pages whose boxes agree", lambda: box_fault(boxes))
    if sheets:
        report.check(file, "has pages of the size of the sheets", lambda: sheet_fault(boxes, sheets))
    if paper := PAPERS.get(file.stem.removeprefix("plan-").lower()):
        report.check(file, "has pages of the size of its paper", lambda: paper_fault(boxes, paper))
    if words:
        text = " ".join(run("pdftotext", str(file), "-").decode("utf-8").split())
        for word in words:
            report.check(file, f"says '{word}'", lambda: None if word in text else "pdftotext does not find it")
    edges = pdf_objects.window_edges(file)
    for page in range(1, len(boxes) + 1):
        check_page(report, file, page, boxes[page - 1], edges[page - 1])
    check_in_viewer(report, file, boxes)


def check_page(report, file, page, box, edges):
    # Tiles show the same sheets over and over: one program measures the even pages, the other the odd ones.
    is_tile = bool(edges[0])
    for place, (name, command) in enumerate((
            ("poppler", ("pdftoppm", "-gray", "-r", BAR_RESOLUTION, "-f", page, "-l", page, file)),
            ("mupdf", ("mutool", "draw", "-q", "-F", "pgm", "-r", BAR_RESOLUTION, "-o", "-", file, page)))):
        if is_tile and page % 2 == place:
            continue
        picture = raster.parse_pgm(run(*command))
        for turned, axis in ((False, "level"), (True, "upright")):
            report.check(
                file, f"page {page}: the {axis} bar measures 100 mm at {BAR_RESOLUTION} dpi of {name}",
                lambda: bar_fault(picture.turned() if turned else picture, 100, 10))
    if is_tile and page % 3:
        return
    poppler = run("pdftoppm", "-gray", "-r", PICTURE_RESOLUTION, "-f", page, "-l", page, file)
    mupdf = run("mutool", "draw", "-q", "-F", "pgm", "-r", PICTURE_RESOLUTION, "-o", "-", file, page)
    report.check(file, f"page {page}: poppler and mupdf show the same picture", lambda: picture_fault(poppler, mupdf, box, edges))


def check_in_viewer(report, file, boxes):
    """The first page, the middle one and the last in the viewer of a browser: it draws with a third program."""
    with chromium.Browser() as browser:
        for page in sorted({1, len(boxes) // 2 + 1, len(boxes)}):
            width, height = (side * 25.4 / 72 for side in boxes[page - 1]["Media"][2:])
            report.check(
                file, f"page {page}: poppler and Chromium show the same picture", lambda: viewer_fault(browser, file, page, width, height))


def viewer_fault(browser, file, page, width, height):
    shown = browser.page(file, page, width, height)
    wanted = raster.parse_pgm(run("pdftoppm", "-gray", "-r", chromium.RESOLUTION, "-f", page, "-l", page, file))
    if not any(grey < 128 for grey in wanted.pixels):
        return "the page is empty"
    worst = raster.largest_difference(shown, wanted, VIEWER_BLOCK, VIEWER_SLACK)
    return None if worst <= 40 else f"a square millimetre differs by {worst:.0f} of 255 in grey"


def run(*command):
    return subprocess.run([str(word) for word in command], check=True, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL).stdout


def qpdf_fault(file):
    result = subprocess.run(["qpdf", "--check", str(file)], stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    text = result.stdout.decode("utf-8")
    return text if result.returncode or re.search("warning|error(?!s found|s that qpdf)", text, re.IGNORECASE) else None


def page_boxes(file):
    """For each page the media, crop and trim box, each as four numbers in points."""
    count = int(re.search(rb"^Pages: +(\d+)", run("pdfinfo", file), re.MULTILINE)[1])
    text = run("pdfinfo", "-box", "-f", 1, "-l", count, file).decode("utf-8")
    pages = {}
    for page, kind, numbers in re.findall(r"^Page +(\d+) (Media|Crop|Trim)Box: +(.*)$", text, re.MULTILINE):
        pages.setdefault(int(page), {})[kind] = [float(number) for number in numbers.split()]
    return [pages[page] for page in range(1, count + 1)]


def box_fault(boxes):
    for page, box in enumerate(boxes, 1):
        if not box["Media"] == box["Crop"] == box["Trim"] or box["Media"][:2] != [0, 0]:
            return f"page {page}: {box}"
    return None


def size_fault(page, box, width, height):
    # pdfinfo prints two decimals.
    wanted = [length * 72 / 25.4 for length in (width, height)]
    found = box["Media"][2:]
    if any(abs(a - b) > 0.0051 for a, b in zip(wanted, found)):
        return f"page {page} measures {found} pt instead of {wanted}"
    return None


def sheet_fault(boxes, sheets):
    if len(boxes) != len(sheets):
        return f"{len(boxes)} pages for {len(sheets)} sheets"
    for page, (box, sheet) in enumerate(zip(boxes, sheets), 1):
        root = xml.etree.ElementTree.parse(sheet).getroot()
        if fault := size_fault(page, box, *(float(root.get(side).removesuffix("mm")) for side in ("width", "height"))):
            return fault
    return None


def paper_fault(boxes, paper):
    for page, box in enumerate(boxes, 1):
        upright, level = size_fault(page, box, *paper), size_fault(page, box, *reversed(paper))
        if upright and level:
            return upright
    return None


def bar_fault(picture, length, parts):
    pixels_per_mm = BAR_RESOLUTION / 25.4
    measured = raster.find_scale(picture, length / parts * pixels_per_mm, parts)
    if measured is None:
        return f"no scale of {parts} times {length / parts} mm found"
    wanted = length * pixels_per_mm
    return None if abs(measured - wanted) <= 1 else f"it measures {measured} pixels instead of {wanted:.2f}"


def picture_fault(poppler, mupdf, box, edges):
    # Blocks of a millimetre: renderers differ in how they smooth edges, by up to 27 of 255 as measured; a line of 0.18 mm is 46. Coarser pictures
    # would do worse: poppler draws lines in whole pixels.
    # Where an edge falls just between two pixels they may choose another one; a line that a window cuts along its length is drawn
    # whole by the one and half by the other, so blocks at the edges of windows are left out.
    block = PICTURE_RESOLUTION // 25
    pixels = PICTURE_RESOLUTION / 25.4
    height = box["Media"][3] * PICTURE_RESOLUTION / 72
    columns, rows = [x * pixels for x in edges[0]], [height - y * pixels for y in edges[1]]
    worst = raster.largest_difference(raster.parse_pgm(poppler), raster.parse_pgm(mupdf), block, 1, columns, rows)
    return None if worst <= 36 else f"a square millimetre differs by {worst:.0f} of 255 in grey"
