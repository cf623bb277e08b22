"""What ezdxf says about a DXF file: parts and sheets of stock, as R2000 and, where the name ends in _mm, as R12."""
import ezdxf
import ezdxf.bbox
import ezdxf.recover

KINDS = {"AC1015": {"LINE", "ARC", "CIRCLE", "LWPOLYLINE"}, "AC1009": {"LINE", "ARC", "CIRCLE", "POLYLINE"}}
LAYERS = ["ENGRAVE", "SCORE", "CUT", "NOTES_NOT_CUT"]
CUT, NOTES = "CUT", "NOTES_NOT_CUT"


def check(report, file):
    report.check(file, "needs no repair and has no errors", lambda: audit_fault(file))
    document = ezdxf.readfile(file)
    entities = list(document.modelspace())
    report.check(file, "holds lines, arcs, circles and polylines only", lambda: kind_fault(document, entities))
    report.check(file, "is in millimetres", lambda: unit_fault(file, document))
    report.check(file, "names each layer in its table, in ASCII", lambda: layer_fault(document, entities))
    report.check(file, "has its notes on a layer that no machine takes for work", lambda: notes_fault(document, entities))
    report.check(file, "engraves and scores before it cuts, openings before outlines", lambda: order_fault(entities))
    report.check(file, "cuts along closed outlines, or says where they are open on purpose", lambda: open_fault(file, entities))
    report.check(file, "announces its true extents", lambda: extents_fault(document, entities))


def audit_fault(file):
    document, auditor = ezdxf.recover.readfile(file)
    again = document.audit()
    findings = [f"{entry.code} {entry.message}" for log in (auditor, again) for entry in log.errors + log.fixes]
    return "; ".join(findings) or None


def kind_fault(document, entities):
    kinds = KINDS[document.dxfversion]
    return ", ".join(sorted({entity.dxftype() for entity in entities} - kinds)) or (None if entities else "nothing")


def unit_fault(file, document):
    """R12 has no units: the file's name says them."""
    if file.stem.endswith("_mm"):
        return None if document.dxfversion == "AC1009" else document.dxfversion
    found = [document.header.get(name) for name in ("$ACADVER", "$INSUNITS", "$MEASUREMENT")]
    return None if found == ["AC1015", 4, 1] else str(found)


def layer_fault(document, entities):
    used = {entity.dxf.layer for entity in entities}
    missing = {name for name in used if not document.layers.has_entry(name) or not name.isascii()}
    return ", ".join(sorted(missing | (used - set(LAYERS)))) or None


def notes_fault(document, entities):
    if not any(entity.dxf.layer == NOTES for entity in entities):
        return "no notes"
    layer = document.layers.get(NOTES)
    if not layer.is_frozen():
        return "it is not frozen"
    if document.dxfversion == "AC1015" and layer.dxf.plot != 0:
        return "it is plotted"
    frozen = [name for name in LAYERS[:3] if document.layers.has_entry(name) and document.layers.get(name).is_frozen()]
    return f"{frozen} is frozen too" if frozen else None


def order_fault(entities):
    """Within a part, that is until its last outline, nothing is done after something that comes later."""
    last = 0
    for entity in entities:
        if entity.dxf.layer == NOTES:
            continue
        step = LAYERS.index(entity.dxf.layer) if entity.dxf.layer != CUT else 2 if is_opening(entity) else 3
        if step < last and last != 3:
            return f"{entity.dxftype()} on {entity.dxf.layer} comes too late"
        last = step
    return None


def vertices(entity):
    """Vertices of a polyline as x, y, bulge."""
    if entity.dxftype() == "LWPOLYLINE":
        return list(entity.get_points("xyb"))
    return [(vertex.dxf.location.x, vertex.dxf.location.y, vertex.dxf.get("bulge", 0)) for vertex in entity.vertices]


def is_closed(entity):
    return entity.dxftype() == "CIRCLE" or entity.dxftype() in ("LWPOLYLINE", "POLYLINE") and entity.is_closed


def is_opening(entity):
    """Closed polylines that run clockwise; circles do not tell."""
    if entity.dxftype() == "CIRCLE":
        return True
    if not is_closed(entity):
        return False
    corners = vertices(entity)
    area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, corners[1:] + corners[:1])) / 2
    if len(corners) == 2:
        area = corners[0][2]
    return area < 0


def open_fault(file, entities):
    is_said = b"Open on purpose" in file.read_bytes()
    for entity in entities:
        if entity.dxf.layer == CUT and not is_closed(entity) and not is_said:
            return f"{entity.dxftype()} {entity.dxf.handle} is open"
    return None


def extents_fault(document, entities):
    box = ezdxf.bbox.extents([entity for entity in entities if entity.dxf.layer != NOTES])
    wanted = [*box.extmin.vec2, *box.extmax.vec2]
    found = [*document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2]]
    # ezdxf measures curves by points on them, a hundredth of a millimetre apart from the curve at most.
    return None if all(abs(a - b) <= 0.011 for a, b in zip(wanted, found)) else f"{found} instead of {wanted}"
