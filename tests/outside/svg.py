"""What an XML parser says about an SVG file."""
import xml.etree.ElementTree

SPACE = "{http://www.w3.org/2000/svg}"
ELEMENTS = {SPACE + name for name in ("svg", "title", "desc", "rect", "g", "path", "circle")}


def check(report, file):
    report.check(file, "is well-formed, of true size and plain", lambda: fault(file))


def fault(file):
    root = xml.etree.ElementTree.parse(file).getroot()
    sides = [root.get("width"), root.get("height")]
    if not all(side.endswith("mm") for side in sides):
        return f"its size {sides} is not in millimetres"
    if root.get("viewBox").split() != ["0", "0"] + [side.removesuffix("mm") for side in sides]:
        return f"its view box {root.get('viewBox')} is not its size {sides}"
    strange = {element.tag for element in root.iter()} - ELEMENTS
    if strange:
        return f"it holds {sorted(strange)}"
    return "it has transforms" if any(element.get("transform") for element in root.iter()) else None
