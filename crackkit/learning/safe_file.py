"""One JSON file that is never left half written, never silently lost, and shared by kernels."""

import contextlib
import json
import os
import tempfile
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

PATIENCE = 5.0  # seconds to wait for another kernel that is writing


@contextlib.contextmanager
def locked(path: Path) -> Iterator[None]:
    """Keep other kernels from reading, changing and writing the file at the same time.

    Where locks do not exist (a read-only folder, a kernel inside a browser) the work goes on
    without one; the file is still replaced in one piece.

    Parameters
    ----------
    path : Path
        The file; the lock is a file beside it.

    Raises
    ------
    TimeoutError
        If another kernel has held the lock for five seconds.
    """
    lock = _lock(path)
    try:
        yield
    finally:
        if lock is not None:
            lock.release()


def _lock(path: Path):
    try:
        from filelock import FileLock, SoftFileLock

        if issubclass(FileLock, SoftFileLock):
            return None  # a mere marker file, which a killed kernel would leave behind for ever
        path.parent.mkdir(parents=True, exist_ok=True)
        lock = FileLock(path.with_name(f"{path.name}.lock"), timeout=PATIENCE)
        lock.acquire()
    except TimeoutError:
        raise
    except (ImportError, NotImplementedError, OSError):
        return None
    return lock


def content(path: Path):
    """Read the file; None where there is none.

    Parameters
    ----------
    path : Path
        The file.

    Raises
    ------
    ValueError
        If it is not JSON in UTF-8.
    OSError
        If it cannot be read.
    """
    try:
        return json.loads(path.read_text("utf-8"))
    except FileNotFoundError:
        return None
    except RecursionError:
        raise ValueError("nested too deeply") from None


def replace_content(path: Path, state) -> None:
    """Write the file in one piece: whoever reads it finds the old or the new, never a half.

    Parameters
    ----------
    path : Path
        The file; its folder is made where it is missing.
    state : object
        Anything JSON can hold, see `plain`.

    Raises
    ------
    OSError
        If the folder cannot be written or the disk is full; the old file is then untouched.
    """
    text = json.dumps(state, indent=1)
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.stem}-", suffix=".tmp")
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        Path(name).replace(path)
    except BaseException:
        with contextlib.suppress(OSError):
            Path(name).unlink()
        raise
    _settle(path.parent)


def _settle(folder: Path) -> None:
    # A rename survives a power cut only once the folder itself is on the disk. Not every system
    # lets a folder be opened; there the file is still whole.
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def plain(value):
    """Give a copy of a value as JSON will hold it.

    Arrays and numbers of numpy become lists and numbers, tuples lists, sets sorted lists, a number
    without value (NaN, infinity) becomes None, any other stranger its text.

    Parameters
    ----------
    value : object
        What is to be kept.
    """
    return json.loads(json.dumps(value, default=_familiar), parse_constant=lambda _name: None)


def _familiar(stranger):
    if hasattr(stranger, "tolist"):
        return stranger.tolist()
    return sorted(stranger) if isinstance(stranger, (set, frozenset)) else str(stranger)


def dated(path: Path, word: str = "") -> Path:
    """Give a name beside the file that tells the moment and is not taken yet.

    Parameters
    ----------
    path : Path
        The file, for instance ``progress.json``.
    word : str
        Put before the date, for instance ``"unreadable"``.
    """
    moment = datetime.now(UTC).strftime("%Y%m%dT%H%M%SZ")
    stem = "-".join(part for part in (path.stem, word, moment) if part)
    name, count = path.with_name(f"{stem}{path.suffix}"), 1
    while name.exists():
        count += 1
        name = path.with_name(f"{stem}-{count}{path.suffix}")
    return name


def set_aside(path: Path) -> Path:
    """Rename a file that cannot be read, so that nothing overwrites it.

    Parameters
    ----------
    path : Path
        The file.

    Returns
    -------
    Path
        Its new name.
    """
    aside = dated(path, "unreadable")
    return path.replace(aside)
