"""Measures grey pictures, with nothing but the standard library."""
import re

ROW_STEP = 8
DARK = bytes(1 if grey < 128 else 0 for grey in range(256))


class Picture:
    def __init__(self, width, height, pixels):
        self.width, self.height, self.pixels = width, height, pixels

    def row(self, y):
        return self.pixels[y * self.width:(y + 1) * self.width]

    def turned(self):
        """Columns as rows."""
        return Picture(self.height, self.width, b"".join(self.pixels[x::self.width] for x in range(self.width)))


def parse_pgm(data):
    header = re.match(rb"P5\s+(?:#.*\n)?(\d+)\s+(\d+)\s+255\s", data)
    width, height = int(header[1]), int(header[2])
    pixels = data[header.end():]
    if len(pixels) != width * height:
        raise ValueError(f"{len(pixels)} pixels in a picture of {width} x {height}")
    return Picture(width, height, pixels)


def find_scale(picture, step, parts):
    """The length in pixels of a scale: `parts` + 1 strokes of like width, `step` pixels apart, between first and last middle.

    A check bar has rows where only its tick marks are dark, two millimetres of them: not every row is looked at. None when no row shows such a scale; the median of all rows
    that do otherwise. A scale is recognised within 5 % of its size, so that a wrong one is measured and not overlooked.
    """
    found = []
    for y in range(0, picture.height, ROW_STEP):
        row = picture.row(y)
        if min(row) >= 128:
            continue
        strokes = [match.span() for match in re.finditer(b"\x01+", row.translate(DARK))]
        middles = [(start + end) / 2 for start, end in strokes if end - start < step / 4]
        for i in range(len(middles) - parts):
            steps = [middles[i + k + 1] - middles[i + k] for k in range(parts)]
            if max(steps) - min(steps) <= 2 and abs(sum(steps) / parts - step) < step / 20:
                found.append(middles[i + parts] - middles[i])
    return sorted(found)[len(found) // 2] if found else None


def largest_difference(a, b, block, slack=0, columns=(), rows=()):
    """The largest difference of mean greys of square blocks; pictures may differ by a pixel in size.

    With a slack, a block of one picture may lie that many pixels beside its place in the other. Blocks that touch one of the
    given columns or rows of pixels are left out.
    """
    if abs(a.width - b.width) > 1 or abs(a.height - b.height) > 1:
        return 255.0
    largest = 0
    width, height = min(a.width, b.width), min(a.height, b.height)
    kept = [not any(k * block - 1 <= x <= (k + 1) * block for x in columns) for k in range(width // block)]
    for top in range(0, height - block + 1, block):
        if any(top - 1 <= y <= top + block for y in rows):
            continue
        sums = [block_sums(picture, top, block, width // block) for picture in (a, b)]
        for k, (x, y) in enumerate(zip(*sums)):
            if kept[k] and abs(x - y) > largest:
                beside = [block_sum(b, k * block + dx, top + dy, block)
                          for dx in range(-slack, slack + 1) for dy in range(-slack, slack + 1)
                          if 0 <= k * block + dx <= width - block and 0 <= top + dy <= height - block]
                largest = max(largest, min(abs(x - y) for y in beside))
    return largest / block / block


def block_sum(picture, left, top, block):
    return sum(sum(picture.pixels[y * picture.width + left:y * picture.width + left + block]) for y in range(top, top + block))


def block_sums(picture, top, block, count):
    sums = [0] * count
    for y in range(top, top + block):
        row = picture.row(y)
        if min(row) == 255:
            sums = [total + 255 * block for total in sums]
        else:
            sums = [total + sum(row[k * block:(k + 1) * block]) for k, total in enumerate(sums)]
    return sums
