"""What ezdxf says about a DXF file."""
import ezdxf
import ezdxf.bbox
import ezdxf.recover

KINDS = {"LINE", "ARC", "CIRCLE", "LWPOLYLINE"}
CUT = "CUT"


def check(report, file):
    report.check(file, "needs no repair and has no errors", lambda: audit_fault(file))
    document = ezdxf.readfile(file)
    entities = list(document.modelspace())
    report.check(file, "holds lines, arcs, circles and polylines only", lambda: kind_fault(entities))
    report.check(file, "is in millimetres", lambda: unit_fault(document))
    report.check(file, "names each layer in its table, in ASCII", lambda: layer_fault(document, entities))
    report.check(file, "cuts along closed outlines only", lambda: open_fault(entities))
    report.check(file, "announces its true extents", lambda: extents_fault(document, entities))


def audit_fault(file):
    document, auditor = ezdxf.recover.readfile(file)
    again = document.audit()
    findings = [f"{entry.code} {entry.message}" for log in (auditor, again) for entry in log.errors + log.fixes]
    return "; ".join(findings) or None


def kind_fault(entities):
    return ", ".join(sorted({entity.dxftype() for entity in entities} - KINDS)) or (None if entities else "nothing")


def unit_fault(document):
    found = [document.header.get(name) for name in ("$ACADVER", "$INSUNITS", "$MEASUREMENT")]
    return None if found == ["AC1015", 4, 1] else str(found)


def layer_fault(document, entities):
    missing = {entity.dxf.layer for entity in entities if not document.layers.has_entry(entity.dxf.layer) or not entity.dxf.layer.isascii()}
    return ", ".join(sorted(missing)) or None


def open_fault(entities):
    for entity in entities:
        is_open = entity.dxftype() in ("LINE", "ARC") or entity.dxftype() == "LWPOLYLINE" and not entity.closed
        if entity.dxf.layer == CUT and is_open:
            return f"{entity.dxftype()} {entity.dxf.handle} is open"
    return None


def extents_fault(document, entities):
    box = ezdxf.bbox.extents(entities)
    wanted = [*box.extmin.vec2, *box.extmax.vec2]
    found = [*document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2]]
    # ezdxf measures curves by points on them, a hundredth of a millimetre apart from the curve at most.
    return None if all(abs(a - b) <= 0.011 for a, b in zip(wanted, found)) else f"{found} instead of {wanted}"
