"""BLAS works with one thread, whoever loads numpy first: with more, small solves crawl."""

import json
import subprocess
import sys

import pytest

COUNT = """
import json, threadpoolctl
import scipy.linalg
print(json.dumps([pool["num_threads"] for pool in threadpoolctl.threadpool_info()]))
"""


@pytest.mark.parametrize("first", ["import numpy, crackkit", "import crackkit, numpy"])
def test_small_solves_have_one_thread(first, monkeypatch):
    for name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"):
        monkeypatch.delenv(name, raising=False)
    ran = subprocess.run([sys.executable, "-c", first + COUNT], capture_output=True, text=True)
    assert ran.returncode == 0, ran.stderr
    threads = json.loads(ran.stdout)
    assert threads and set(threads) == {1}
