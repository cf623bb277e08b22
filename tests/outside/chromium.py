"""Pages of a PDF as Chromium's own viewer shows them, over the pipe of its remote debugging (no package but the browser)."""
import base64
import fcntl
import json
import os
import pathlib
import subprocess
import tempfile
import time

import raster

PROGRAMS = ("/usr/lib/chromium/chromium", "/usr/bin/chromium")
OPTIONS = (
    "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync", "--remote-debugging-pipe", "--hide-scrollbars",
)
SCALE = 3  # device pixels to one of the viewer's, of which 96 are an inch at a zoom of 100 %
RESOLUTION = 96 * SCALE
BORDER = 60  # of the window around the page, in the viewer's pixels
PATIENCE = 30  # seconds

GREY = """
(async () => {
    const blob = await (await fetch("data:image/png;base64,DATA")).blob();
    const image = await createImageBitmap(blob);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext("2d");
    context.drawImage(image, 0, 0);
    const colours = context.getImageData(0, 0, image.width, image.height).data;
    let text = "";
    for (let start = 0; start < colours.length; start += 4 * 8190) {
        let piece = "";
        for (let i = start; i < Math.min(colours.length, start + 4 * 8190); i += 4)
            piece += String.fromCharCode(Math.round((colours[i] + colours[i + 1] + colours[i + 2]) / 3));
        text += btoa(piece);
    }
    return image.width + " " + image.height + " " + text;
})()
"""


def find():
    return next((program for program in PROGRAMS if os.path.exists(program)), None)


class Browser:
    """A browser without a window. Use it in a `with`."""

    def __enter__(self):
        self.folder = tempfile.TemporaryDirectory(ignore_cleanup_errors=True)
        read, self.commands = os.pipe()
        self.answers, write = os.pipe()

        def take_pipes():
            # Out of the way first: either may have the other's number.
            high = [fcntl.fcntl(end, fcntl.F_DUPFD, 100) for end in (read, write)]
            os.dup2(high[0], 3)
            os.dup2(high[1], 4)

        self.process = subprocess.Popen(
            [find(), *OPTIONS, f"--force-device-scale-factor={SCALE}", f"--user-data-dir={self.folder.name}", "about:blank"],
            preexec_fn=take_pipes, close_fds=False, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(read)
        os.close(write)
        self.sent = 0
        self.received = b""
        self.blank = self.open("about:blank")
        return self

    def __exit__(self, *_):
        try:
            self.ask("Browser.close")
            self.process.wait(20)
        finally:
            self.process.kill()
            self.folder.cleanup()

    def ask(self, method, session=None, **parameters):
        self.sent += 1
        message = {"id": self.sent, "method": method, "params": parameters}
        if session:
            message["sessionId"] = session
        data = memoryview(json.dumps(message).encode() + b"\0")
        while data:
            data = data[os.write(self.commands, data):]
        while True:
            answer = self.receive()
            if answer.get("id") == self.sent:
                if "error" in answer:
                    raise RuntimeError(f"{method}: {answer['error']}")
                return answer["result"]

    def receive(self):
        while b"\0" not in self.received:
            part = os.read(self.answers, 1 << 20)
            if not part:
                raise RuntimeError("the browser has gone")
            self.received += part
        message, self.received = self.received.split(b"\0", 1)
        return json.loads(message)

    def open(self, address):
        target = self.ask("Target.createTarget", url=address)["targetId"]
        return target, self.ask("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]

    def page(self, file, page, width, height):
        """The picture of a page of that size in mm, once it no longer changes, at RESOLUTION."""
        target, session = self.open(f"{pathlib.Path(file).resolve().as_uri()}#page={page}&toolbar=0&navpanes=0&zoom=100")
        across, up = (round(length / 25.4 * 96) + 2 * BORDER for length in (width, height))
        self.ask("Emulation.setDeviceMetricsOverride", session, width=across, height=up, deviceScaleFactor=SCALE, mobile=False)
        before, start = None, time.monotonic()
        try:
            while time.monotonic() - start < PATIENCE:
                time.sleep(0.7)
                data = self.ask("Page.captureScreenshot", session, format="png")["data"]
                if data == before and (picture := find_page(self.grey(data), width, height)):
                    return picture
                before = data
            raise RuntimeError(f"page {page} did not show in {PATIENCE} s")
        finally:
            self.ask("Target.closeTarget", targetId=target)

    def grey(self, png):
        result = self.ask("Runtime.evaluate", self.blank[1], expression=GREY.replace("DATA", png), awaitPromise=True)["result"]
        width, height, data = result["value"].split(" ")
        return raster.Picture(int(width), int(height), base64.b64decode(data))


def find_page(window, width, height):
    """The part of a window that is the page, by the white of its margins; None before it shows. Other pages may be in sight."""
    wanted = [round(length / 25.4 * RESOLUTION) for length in (width, height)]
    left = window.row(window.height // 2).find(b"\xff" * 8)
    margin = window.pixels[left + 4::window.width] if left >= 0 else b""
    top = margin.find(b"\xff" * (wanted[1] - SCALE))
    if top < 0 or left + wanted[0] > window.width or top + wanted[1] > window.height:
        return None
    rows = [window.row(y)[left:left + wanted[0]] for y in range(top, top + wanted[1])]
    return raster.Picture(wanted[0], wanted[1], b"".join(rows))
