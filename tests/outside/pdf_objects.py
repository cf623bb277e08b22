"""What qpdf reads in the objects of a PDF: shared sheets, clipping, attached files."""
import base64
import hashlib
import json
import re
import subprocess


def check(report, file, sheet_count, is_tiled):
    objects = Objects(file)
    report.check(file, "carries its sources, named as such, with true sizes and checksums", lambda: attachment_fault(objects))
    report.check(file, "says the same of itself twice", lambda: metadata_fault(objects))
    if is_tiled:
        report.check(file, "holds each sheet once", lambda: form_fault(objects, sheet_count))
        report.check(file, "cuts every sheet off at its window", lambda: clip_fault(objects))


class Objects:
    """The objects of a file as qpdf writes them in JSON, streams unpacked."""

    def __init__(self, file):
        command = ["qpdf", "--json=2", "--json-stream-data=inline", "--decode-level=generalized", str(file)]
        self.all = json.loads(subprocess.run(command, check=True, stdout=subprocess.PIPE).stdout)["qpdf"][1]
        self.catalog = self.value(self.all["trailer"]["value"]["/Root"])

    def value(self, reference):
        return self.all[f"obj:{reference}"]["value"]

    def dictionary(self, reference):
        return self.all[f"obj:{reference}"]["stream"]["dict"]

    def data(self, reference):
        return base64.b64decode(self.all[f"obj:{reference}"]["stream"]["data"])

    def pages(self):
        return [self.value(page) for page in self.value(self.catalog["/Pages"])["/Kids"]]

    def forms(self):
        return [name[4:] for name, entry in self.all.items() if entry.get("stream", {}).get("dict", {}).get("/Subtype") == "/Form"]


def window_edges(file):
    """For each page the places of the edges of its windows, across and up, mm; none for a page without windows."""
    objects, edges = Objects(file), []
    for page in objects.pages():
        parts = page["/Contents"] if isinstance(page["/Contents"], list) else [page["/Contents"]]
        clips = re.findall(r"q ([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) re W n", objects.data(parts[0]).decode("latin-1"))
        numbers = [[float(number) for number in clip] for clip in clips]
        edges.append(([x for left, _, width, _ in numbers for x in (left, left + width)],
                      [y for _, low, _, height in numbers for y in (low, low + height)]))
    return edges


def attachment_fault(objects):
    names = objects.catalog["/Names"]["/EmbeddedFiles"]["/Names"]
    if sorted(names[1::2]) != sorted(objects.catalog["/AF"]):
        return "the associated files are not the embedded ones"
    if names[0::2] != sorted(names[0::2]) or not any(name.endswith(".yaml") for name in names[0::2]):
        return f"the names {names[0::2]} are in no order or lack the description"
    for specification in names[1::2]:
        entries = objects.value(specification)
        stream = entries["/EF"]["/F"]
        parameters, data = objects.dictionary(stream)["/Params"], objects.data(stream)
        sum_ = "b:" + hashlib.md5(data).hexdigest()
        if entries["/AFRelationship"] != "/Source" or parameters["/Size"] != len(data) or not same_bytes(parameters["/CheckSum"], sum_):
            return f"{entries['/UF']}: {entries['/AFRelationship']}, {parameters} for {len(data)} bytes with the sum {sum_}"
        wanted = "/application/yaml" if entries["/UF"].endswith(".yaml") else "/text/plain"
        if objects.dictionary(stream)["/Subtype"] != wanted:
            return f"{entries['/UF']} is said to be {objects.dictionary(stream)['/Subtype']}"
    return None


def same_bytes(found, wanted):
    # Bytes that happen to be text are written as text.
    return found == wanted or found[:2] == "u:" and "b:" + found[2:].encode("latin-1", "replace").hex() == wanted


def metadata_fault(objects):
    packet = objects.data(objects.catalog["/Metadata"]).decode("utf-8")
    information = objects.value(objects.all["trailer"]["value"]["/Info"])
    for key, element in (("/Title", "dc:title"), ("/Author", "dc:creator"), ("/Producer", "pdf:Producer")):
        said = information.get(key, "u:").removeprefix("u:")
        written = re.search(f"<{element}>(.*?)</{element}>", packet, re.DOTALL)
        plain = re.sub("<[^>]*>", "", written[1]) if written else ""
        if plain.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&") != said:
            return f"{key} is '{said}', {element} '{plain}'"
    return "there is a date or an id" if re.search("Date|DocumentID|InstanceID", packet + str(information)) else None


def form_fault(objects, sheet_count):
    forms = objects.forms()
    if len(forms) != sheet_count:
        return f"{len(forms)} forms for {sheet_count} sheets"
    shown = [name for page in objects.pages() for name in page["/Resources"].get("/XObject", {}).values()]
    return None if set(shown) == set(forms) else f"shown are {sorted(set(shown))} of {forms}"


def clip_fault(objects):
    for number, page in enumerate(objects.pages(), 1):
        content = objects.data(page["/Contents"]).decode("latin-1")
        shown = re.findall(r"/Sheet\d+ Do", content)
        clipped = re.findall(r"q (?:[-\d.]+ ){4}re W n 1 0 0 1 [-\d.]+ [-\d.]+ cm /Sheet\d+ Do Q", content)
        if len(shown) != len(clipped) or len(shown) != len(page["/Resources"].get("/XObject", {})):
            return f"page {number}: {len(clipped)} of {len(shown)} are cut off"
    return None
