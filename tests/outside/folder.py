"""Judges how `draw` leaves its folder when it is killed, when the disk is full and when nothing may be written.

    folder.py PROGRAM...      PROGRAM is what runs planforge, such as: dotnet src/PlanForge/bin/Release/net10.0/planforge.dll

Two designs of one name are drawn over each other. After every interrupted run the folder must be one of them whole: every file that the
manifest lists with its SHA-256 (FIPS 180-4, by Python's hashlib), and no file that it does not list.
Needs root for the two small file systems (tmpfs). Prints a line `ok` or `FAIL` for each check; exits with 1 if one failed.
"""
import hashlib
import json
import os
import pathlib
import signal
import subprocess
import sys
import tempfile
import time

KILLS = 50
UNLISTED = {"manifest.json", "history.json"}
DESIGN = pathlib.Path(__file__).parents[2] / "designs" / "thimble-36.yaml"
failures = 0


def report(name, fault):
    global failures
    failures += fault is not None
    print(f"ok {name}" if fault is None else f"FAIL {name}: {fault}", flush=True)


def run(program, *words):
    return subprocess.run([*program, *map(str, words)], capture_output=True, text=True)


def state(folder):
    """The fingerprint of what is whole in a folder; raises where it is a mixture."""
    manifest = json.loads((folder / "manifest.json").read_text())
    listed = {file["path"]: file["sha256"] for file in manifest["files"]}
    found = {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}
    if found - UNLISTED != set(listed):
        raise ValueError(f"{sorted((found - UNLISTED) ^ set(listed))} are listed or there, not both")
    for path, digest in listed.items():
        if hashlib.sha256((folder / path).read_bytes()).hexdigest() != digest:
            raise ValueError(f"{path} is not what the manifest lists")
    return manifest["fingerprint"]


def fault_of(folder, allowed):
    try:
        whole = state(folder)
    except (OSError, ValueError, KeyError) as fault:
        return str(fault)
    return None if whole in allowed else f"{whole} was never drawn"


def killed(program, folder, designs):
    states = set()
    took = 0
    for design in designs:
        began = time.monotonic()
        run(program, "draw", design, "--to", folder)
        took = max(took, time.monotonic() - began)
        states.add(state(folder / "thimble-36"))
    report("the two designs differ", None if len(states) == 2 else "they do not")
    seen = []
    cut_short = 0
    for kill in range(KILLS):
        process = subprocess.Popen([*program, "draw", str(designs[kill % 2]), "--to", str(folder)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(took * (0.2 + kill / KILLS))
        process.send_signal(signal.SIGKILL)
        cut_short += process.wait() != 0
        seen.append(fault_of(folder / "thimble-36", states))
        report(f"the folder is whole after kill {kill + 1}", seen[-1])
    report("some runs were cut short and some were not", None if 0 < cut_short < KILLS else f"{cut_short} of {KILLS} were")
    after = run(program, "draw", designs[0], "--to", folder)
    left = sorted(path.name for path in folder.iterdir() if path.name != "thimble-36")
    report("the next run clears up", None if after.returncode == 0 and not left else f"{after.stderr} {left}")


def small_disk(program, scratch, designs):
    disk = scratch / "disk"
    disk.mkdir()
    subprocess.run(["mount", "-t", "tmpfs", "-o", "size=8m", "tmpfs", str(disk)], check=True)
    try:
        first = run(program, "draw", designs[0], "--to", disk)
        report("the first design fits the small disk", None if first.returncode == 0 else first.stderr)
        before = state(disk / "thimble-36")
        filler = disk / "filler"
        room = os.statvfs(disk)
        filler.write_bytes(bytes(max(0, room.f_bavail * room.f_frsize - 40_000)))
        full = run(program, "draw", designs[1], "--to", disk)
        report("a full disk ends with exit code 3", None if full.returncode == 3 else f"{full.returncode} {full.stderr}")
        report("a full disk is named", None if "full" in full.stderr or "No space left" in full.stderr else full.stderr)
        report("a full disk leaves the last output whole", fault_of(disk / "thimble-36", {before}))
        left = sorted(path.name for path in disk.iterdir())
        report("a full disk leaves nothing beside it", None if left == ["filler", "thimble-36"] else str(left))
        filler.unlink()
        subprocess.run(["mount", "-o", "remount,ro", str(disk)], check=True)
        locked = run(program, "draw", designs[1], "--to", disk)
        report("a read-only disk ends with exit code 3", None if locked.returncode == 3 else f"{locked.returncode} {locked.stderr}")
        report("a read-only disk leaves the last output whole", fault_of(disk / "thimble-36", {before}))
    finally:
        subprocess.run(["umount", str(disk)], check=True)


def read_only_folder(program, folder, designs):
    run(program, "draw", designs[0], "--to", folder)
    before = state(folder / "thimble-36")
    (folder / "thimble-36").chmod(0o555)
    locked = run(program, "draw", designs[1], "--to", folder)
    report("a read-only folder ends with exit code 3", None if locked.returncode == 3 else f"{locked.returncode} {locked.stderr}")
    report("a read-only folder stays as it was", fault_of(folder / "thimble-36", {before}))
    (folder / "thimble-36").chmod(0o755)


def main(program):
    with tempfile.TemporaryDirectory() as scratch:
        scratch = pathlib.Path(scratch)
        other = scratch / "thimble-36.yaml"
        other.write_text(DESIGN.read_text().replace("{name: F3,", "{name: F33,"))
        designs = [DESIGN, other]
        killed(program, scratch / "killed", designs)
        read_only_folder(program, scratch / "locked", designs)
        small_disk(program, scratch, designs)
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
