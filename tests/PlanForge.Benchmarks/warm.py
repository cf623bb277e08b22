#!/usr/bin/env python3
"""What a redraw by `follow` takes: one length of one former is edited to and fro, saved, and the time the program states is read.

usage: warm.py PROGRAM... -- DESIGN FORMER KEY [SAVES]

    warm.py dotnet src/PlanForge/bin/Release/net10.0/planforge.dll -- designs/oxbow-1420.yaml F3 thickness 40

Prints median, least and greatest of the second half of the saves, when the runtime has compiled what is used, and the process's
peak of memory. The pause of 100 ms before a redraw, in which an editor may still be saving, is not in it.
"""
import pathlib
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time


def edited(text, former, key, step):
    """The text with the former's length a little larger: by as many steps of 0.01 mm."""
    value = re.compile(r"(name: *" + re.escape(former) + r"\b.*?\b" + key + r": *)([^,}\n#]+)", re.DOTALL)

    def larger(found):
        old = found[2].strip()
        plain = re.fullmatch(r"[0-9.]+", old)
        return found[1] + (f"{float(old) + 0.01 * step:.2f}" if plain else f"({old}) + {0.01 * step:.2f} mm")

    return value.sub(larger, text, count=1)


def peak(process):
    status = pathlib.Path(f"/proc/{process.pid}/status").read_text()
    return int(re.search(r"VmHWM:\s+(\d+)", status)[1]) / 1024


def main():
    apart = sys.argv.index("--")
    program = [str(pathlib.Path(word).resolve()) if pathlib.Path(word).exists() else word for word in sys.argv[1:apart]]
    design, former, key, *rest = sys.argv[apart + 1:]
    saves = int(rest[0]) if rest else 40
    source = pathlib.Path(design)
    with tempfile.TemporaryDirectory() as folder:
        for file in source.parent.glob("*"):
            if file.is_file():
                shutil.copy(file, folder)
        copy = pathlib.Path(folder, source.name)
        text = copy.read_text()
        if edited(text, former, key, 1) == text:
            sys.exit(f"there is no former {former} with a {key}")
        follow = subprocess.Popen([*program, "follow", copy.name], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        times = []
        wanted = lambda line: re.search(r"(?:re)?drawn in (\d+) ms", line)
        for line in follow.stdout:
            found = wanted(line)
            if not found:
                if "error" in line:
                    follow.terminate()
                    sys.exit(line)
                continue
            times.append(int(found[1]))
            if len(times) > saves:
                break
            time.sleep(0.2)
            copy.write_text(edited(text, former, key, len(times) % 5))
        memory = peak(follow)
        follow.terminate()
        follow.wait()
    late = times[1 + saves // 2:]
    print(f"{source.stem}, {former} {key}: first {times[0]} ms; redraws median {statistics.median(late):.0f}, least {min(late)}, "
          f"greatest {max(late)} ms of {len(late)}; peak {memory:.0f} MB")


main()
