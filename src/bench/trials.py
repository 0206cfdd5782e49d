"""The trials of PipeRows.trial in numpy; one run, timed in ms, for each line read."""

import sys
import time

import numpy as np

trials = int(sys.argv[1])
print("ready", flush=True)
for line in sys.stdin:
    generator = np.random.default_rng(abs(int(line)))
    start = time.perf_counter()
    volts = generator.normal(17.9, 0.02, trials) + generator.uniform(-0.1, 0.1, trials)
    watts = volts * volts / generator.normal(4.02, 0.012, trials)
    mean, deviation = watts.mean(), watts.std(ddof=1)
    watts.sort()
    symmetric = np.quantile(watts, [0.025, 0.975])
    held = round(0.95 * trials)
    widths = watts[held:] - watts[: trials - held]
    best = int(widths.argmin())
    shortest = (watts[best], watts[best + held])
    print(1000 * (time.perf_counter() - start), flush=True)
