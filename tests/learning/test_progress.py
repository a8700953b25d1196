"""What a learner has done is never lost, whatever happens to the file."""

import json
import os
import subprocess
import sys
import threading
from pathlib import Path

import numpy as np
import pytest

import crackkit
from crackkit.learning import logbook, progress, safe_file
from crackkit.learning.progress import Progress

ROOT = Path(crackkit.__file__).parents[1]


@pytest.fixture
def kept(tmp_path) -> Progress:
    return Progress(tmp_path / "data" / "progress.json")


def _again(kept: Progress) -> Progress:
    return Progress(kept.path)


def _python(script: str, *arguments) -> subprocess.Popen:
    command = [sys.executable, "-c", script, *map(str, arguments)]
    return subprocess.Popen(command, cwd=ROOT, stderr=subprocess.PIPE, text=True)


def _disk_full(*_arguments, **_named):
    raise OSError(28, "No space left on device")


def test_an_answer_is_there_when_the_file_is_opened_again(kept):
    kept.record("03", "where", ["bottom", "middle"], right=False)
    kept.record("03", "where", ["bottom"], right=True, score=0.8)
    first, second = _again(kept).attempts("03", "where")
    assert (first.answer, first.right, first.score) == (["bottom", "middle"], False, None)
    assert (second.answer, second.right, second.score) == (["bottom"], True, 0.8)
    assert first.time <= second.time
    assert kept.notices == ()


def test_items_and_lessons_are_kept_apart(kept):
    kept.record("03", "a", 1, right=True)
    kept.record("03", "b", 2, right=True)
    kept.record("04", "a", 3, right=True)
    assert [a.answer for a in kept.attempts("03", "a")] == [1]
    assert [a.answer for a in kept.attempts("03")] == [1, 2]
    assert kept.attempts("05") == ()


def test_the_best_attempt_is_right_first_then_high_then_early(kept):
    assert kept.best("03", "bars") is None
    for answer, right, score in [(1, False, 9.0), (2, True, None), (3, True, 0.5), (4, True, 0.5)]:
        kept.record("03", "bars", answer, right, score)
    assert kept.best("03", "bars").answer == 3


def test_a_lesson_is_done_once_and_keeps_the_first_time(kept):
    assert not kept.done("03")
    kept.mark_done("03")
    first = kept.summary()["03"].last
    kept.mark_done("03")
    assert _again(kept).done("03")
    assert kept.summary()["03"].last == first


def test_a_lesson_called_by_number_is_the_same_lesson(kept):
    kept.record(3, "a", 1, right=True)
    kept.record("3", "a", 2, right=True)
    kept.mark_done(3)
    assert [a.answer for a in kept.attempts(3)] == [1, 2]
    assert kept.done("3")


def test_settings_are_remembered(kept):
    assert kept.setting("units", "US") == "US"
    kept.set_setting("units", "SI")
    kept.set_setting("theme", "dark")
    assert (_again(kept).setting("units"), _again(kept).setting("theme")) == ("SI", "dark")


def test_the_summary_counts_lesson_by_lesson(kept):
    kept.record("04", "a", 1, right=False)
    kept.record("03", "a", 1, right=True)
    kept.record("03", "b", 1, right=False)
    kept.mark_done("03")
    summary = kept.summary()
    assert list(summary) == ["03", "04"]
    assert (summary["03"].attempts, summary["03"].right, summary["03"].done) == (2, 1, True)
    assert summary["04"].last == kept.attempts("04")[0].time


def test_answers_of_numpy_and_of_tuples_become_plain_at_once(kept):
    answer = {"x": np.float64(1.5), "n": np.int64(3), "row": np.arange(2), "ends": (1, 2)}
    kept.record("03", "a", answer | {"width": float("nan"), "text": "\ud800"}, np.bool_(True))
    expected = {"x": 1.5, "n": 3, "row": [0, 1], "ends": [1, 2], "width": None, "text": "\ud800"}
    assert _again(kept).attempts("03")[0].answer == expected


def test_a_score_that_is_no_number_never_reaches_the_file(kept):
    with pytest.raises(ValueError, match="good"):
        kept.record("03", "a", 1, right=True, score="good")
    assert kept.attempts("03") == ()


def test_a_kernel_killed_just_before_the_file_is_replaced_leaves_the_old_one_whole(kept):
    kept.record("03", "a", "kept", right=True)
    before = kept.path.read_bytes()
    killed = _python(
        "import os, sys, pathlib\n"
        "from crackkit.learning.progress import Progress\n"
        "pathlib.Path.replace = lambda *_: os._exit(9)\n"
        "Progress(sys.argv[1]).record('03', 'a', 'lost', right=True)\n",
        kept.path,
    )
    killed.communicate(timeout=60)
    assert killed.returncode == 9
    assert kept.path.read_bytes() == before
    kept.record("03", "a", "later", right=True)
    assert [a.answer for a in _again(kept).attempts("03")] == ["kept", "later"]


def test_the_new_text_is_on_the_disk_before_the_old_file_goes(kept, monkeypatch):
    order = []
    fsync, replace = os.fsync, Path.replace
    monkeypatch.setattr(os, "fsync", lambda handle: (order.append("fsync"), fsync(handle)))
    monkeypatch.setattr(Path, "replace", lambda *a: (order.append("replace"), replace(*a))[1])
    kept.set_setting("units", "SI")
    assert order[:2] == ["fsync", "replace"]


def test_two_kernels_at_work_at_once_lose_nothing(kept):
    script = (
        "import sys\n"
        "from crackkit.learning.progress import Progress\n"
        "kept = Progress(sys.argv[1])\n"
        "for n in range(200): kept.record('03', sys.argv[2], n, right=True)\n"
        "assert not kept.notices, kept.notices\n"
    )
    kernels = [_python(script, kept.path, name) for name in ("one", "two")]
    for kernel in kernels:
        _out, errors = kernel.communicate(timeout=120)
        assert kernel.returncode == 0, errors
    for name in ("one", "two"):
        assert [a.answer for a in kept.attempts("03", name)] == list(range(200))


def test_threads_of_one_kernel_lose_nothing(kept):
    def work(name):
        for n in range(30):
            kept.record("03", name, n, right=True)

    threads = [threading.Thread(target=work, args=(name,)) for name in "abc"]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert [len(kept.attempts("03", name)) for name in "abc"] == [30, 30, 30]


@pytest.mark.parametrize(
    "text",
    [
        b'{"version": 1, "settings": {}, "less',
        b"\xff\xfe\x00",
        b"",
        b"[]",
        b'{"version": "1"}',
        b'{"version": 1, "settings": {}, "lessons": []}',
        b'{"version": 1, "settings": {}, "lessons": {"03": {"attempts": [{}]}}}',
        b'{"version": -5}',
        b"[" * 100_000,
    ],
)
def test_an_unreadable_file_is_set_aside_and_told_of(kept, text):
    kept.path.parent.mkdir()
    kept.path.write_bytes(text)
    kept.record("03", "a", 1, right=True)
    aside = list(kept.path.parent.glob("progress-unreadable-*.json"))
    assert [file.read_bytes() for file in aside] == [text]
    assert len(kept.notices) == 1
    assert str(aside[0]) in kept.notices[0]
    assert len(_again(kept).attempts("03")) == 1


def test_a_second_unreadable_file_does_not_overwrite_the_first(kept):
    kept.path.parent.mkdir()
    for text in ("one", "two", "three"):
        kept.path.write_text(text)
        kept.summary()
    asides = kept.path.parent.glob("progress-unreadable-*.json")
    assert sorted(file.read_text() for file in asides) == ["one", "three", "two"]


def test_a_file_of_a_newer_version_is_left_alone(kept):
    kept.path.parent.mkdir()
    text = json.dumps({"version": logbook.VERSION + 1, "work": "of tomorrow"})
    kept.path.write_text(text)
    kept.record("03", "a", 1, right=True)
    kept.set_setting("units", "SI")
    assert kept.start_afresh() is None
    assert kept.path.read_text() == text
    assert [a.answer for a in kept.attempts("03")] == [1]
    assert kept.setting("units") == "SI"
    assert any("newer crackkit" in notice for notice in kept.notices)


def test_a_file_of_an_older_version_is_brought_up_step_by_step(kept, monkeypatch):
    monkeypatch.setitem(logbook.STEPS, -1, lambda old: {"units": old["unit"]})
    monkeypatch.setitem(
        logbook.STEPS, 0, lambda old: {"settings": {"units": old["units"]}, "lessons": {}}
    )
    kept.path.parent.mkdir()
    kept.path.write_text('{"version": -1, "unit": "SI"}')
    assert kept.setting("units") == "SI"
    kept.mark_done("03")
    assert json.loads(kept.path.read_text())["version"] == logbook.VERSION


def test_on_a_full_disk_work_goes_on_in_memory_and_is_saved_when_there_is_room(kept, monkeypatch):
    kept.record("03", "a", 1, right=True)
    with monkeypatch.context() as full:
        full.setattr(os, "fsync", _disk_full)
        kept.record("03", "a", 2, right=True)
        kept.mark_done("03")
        assert [a.answer for a in kept.attempts("03")] == [1, 2]
        assert kept.done("03")
        assert len(kept.notices) == 1
        assert "cannot be saved" in kept.notices[0]
        assert "No space left" in kept.notices[0]
        assert not list(kept.path.parent.glob("*.tmp")), "a failed write leaves no litter"
        assert len(_again(kept).attempts("03")) == 1
    kept.record("03", "a", 3, right=True)
    assert [a.answer for a in _again(kept).attempts("03")] == [1, 2, 3]
    assert _again(kept).done("03")
    assert kept.notices == ()


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0,
    reason="permissions do not bind this user; the full-disk test takes the same way",
)
def test_in_a_folder_that_cannot_be_written_work_goes_on_in_memory(kept):
    kept.record("03", "a", 1, right=True)
    kept.path.parent.chmod(0o500)
    try:
        again = _again(kept)
        again.record("03", "a", 2, right=True)
        assert [a.answer for a in again.attempts("03")] == [1, 2]
        assert "cannot be saved" in again.notices[0]
    finally:
        kept.path.parent.chmod(0o700)


def test_where_the_folder_cannot_even_be_made_work_goes_on_in_memory(tmp_path):
    (tmp_path / "file").write_text("in the way")
    kept = Progress(tmp_path / "file" / "progress.json")
    kept.record("03", "a", 1, right=True)
    kept.set_setting("units", "SI")
    assert [a.answer for a in kept.attempts("03")] == [1]
    assert kept.setting("units") == "SI"
    assert "cannot be saved" in kept.notices[0]


@pytest.mark.parametrize("trouble", [ImportError, NotImplementedError, PermissionError])
def test_without_locks_work_is_kept_all_the_same(kept, monkeypatch, trouble):
    import filelock

    def refuse(*_arguments, **_named):
        raise trouble("no locks here")

    monkeypatch.setattr(filelock.FileLock, "acquire", refuse)
    kept.record("03", "a", 1, right=True)
    assert len(_again(kept).attempts("03")) == 1
    assert kept.notices == ()


def test_while_another_kernel_holds_the_lock_nothing_is_overwritten(kept, monkeypatch):
    monkeypatch.setattr(safe_file, "PATIENCE", 0.05)
    kept.record("03", "a", 1, right=True)
    other = _again(kept)
    with safe_file.locked(kept.path):
        other.record("03", "a", 2, right=True)
        assert "cannot be saved" in other.notices[0]
    kept.record("03", "a", 3, right=True)
    other.record("03", "a", 4, right=True)
    assert [a.answer for a in kept.attempts("03")] == [1, 3, 2, 4]
    assert other.notices == ()


def test_starting_afresh_keeps_a_dated_copy_and_the_settings(kept):
    kept.record("03", "a", 1, right=True)
    kept.set_setting("units", "SI")
    copy = kept.start_afresh()
    assert copy.parent == kept.path.parent
    assert [a.answer for a in Progress(copy).attempts("03")] == [1]
    assert kept.summary() == {}
    assert _again(kept).setting("units") == "SI"
    assert kept.start_afresh() != copy


def test_starting_afresh_forgets_nothing_where_no_copy_can_be_kept(kept, monkeypatch):
    kept.record("03", "a", 1, right=True)
    monkeypatch.setattr(os, "fsync", _disk_full)
    assert kept.start_afresh() is None
    assert len(kept.attempts("03")) == 1
    assert "Nothing was cleared" in kept.notices[0]


def test_the_folder_can_be_chosen_and_one_kernel_shares_one_record(tmp_path, monkeypatch):
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    assert progress.progress().path == tmp_path / "progress.json"
    assert progress.progress() is progress.progress()


def test_the_usual_folder_is_the_users_own(monkeypatch):
    monkeypatch.delenv("CRACKKIT_HOME", raising=False)
    monkeypatch.setenv("XDG_DATA_HOME", "/somewhere/data")
    assert "crackkit" in progress.home().parts
