#!/usr/bin/env bash
# How long a whole run takes, from the shell's start of the process to its end: the median of 20 runs of each command.
#   tests/PlanForge.Benchmarks/cold.sh [PROGRAM...]
# PROGRAM: what to run, a command line in one word (default: the Release build). On a busy machine give it precedence:
#   sudo chrt -f 50 tests/PlanForge.Benchmarks/cold.sh
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
(($#)) || set -- "dotnet $root/src/PlanForge/bin/Release/net10.0/planforge.dll"
exec python3 - "$root" "$@" <<'PYTHON'
import glob, os, statistics, subprocess, sys, tempfile, time

RUNS = 20
root, programs = sys.argv[1], sys.argv[2:]
designs = sorted(glob.glob(os.path.join(root, "designs", "*.yaml")))
with tempfile.TemporaryDirectory() as folder:
    lines = [["--version"], ["check", "-q", max(designs, key=os.path.getsize)]]
    lines += [["draw", "-q", design, "--to", folder] for design in designs]
    lines += [["draw", "-q", *designs, "--to", folder]]
    for program in programs:
        for line in lines:
            times = []
            for run in range(RUNS + 2):
                start = time.perf_counter()
                subprocess.run(program.split() + line, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
                times.append((time.perf_counter() - start) * 1e3)
            shown = " ".join(os.path.basename(word) for word in line if word not in ("--to", folder))
            # The first two runs fill the file cache.
            print(f"{statistics.median(times[2:]):7.1f} ms (least {min(times[2:]):.1f})  {os.path.basename(program.split()[-1])} {shown}")
PYTHON
