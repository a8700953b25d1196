import pytest

from crackkit.launch import environment
from crackkit.launch.environment import TESTS, WORKBOOK, enter
from crackkit.launch.places import environment_python
from crackkit.launch.trouble import Trouble


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """A project without an environment yet, and a record of what is done about it."""
    venv, done = tmp_path / ".venv", []
    monkeypatch.setattr(environment, "ENVIRONMENT", venv)
    monkeypatch.setattr(environment, "environment_python", lambda: environment_python(venv))
    monkeypatch.setattr(environment, "install", lambda *a: done.append(("install", *a[1])))
    monkeypatch.setattr(environment, "_go_on_in", lambda python: done.append(("enter", python)))
    return venv, done


@pytest.fixture
def packages_wanted(monkeypatch):
    def wanted(*names):
        monkeypatch.setitem(environment._wanted, WORKBOOK, lambda: list(names))

    return wanted


def stand_in_environment(venv):
    python = environment_python(venv)
    python.parent.mkdir(parents=True)
    python.touch()


def test_an_interpreter_that_has_everything_is_used_as_it_is(folder, packages_wanted):
    venv, done = folder
    packages_wanted("pytest")
    enter(WORKBOOK)
    assert (done, venv.exists()) == ([], False)


def test_a_missing_package_leads_to_an_environment_of_our_own(folder, packages_wanted):
    venv, done = folder
    packages_wanted("no-such-package")
    enter(WORKBOOK)
    assert [step[0] for step in done] == ["install", "enter"]
    assert environment_python(venv).exists()


def test_an_environment_that_stands_is_entered_and_not_installed_again(folder, packages_wanted):
    venv, done = folder
    packages_wanted("pytest")
    stand_in_environment(venv)
    enter(WORKBOOK)
    enter(WORKBOOK)
    assert [step[0] for step in done] == ["install", "enter", "enter"]


def test_changed_requirements_renew_the_environment(folder, packages_wanted):
    venv, done = folder
    stand_in_environment(venv)
    for wanted in ("numpy>=2", "numpy>=3"):
        packages_wanted(wanted)
        enter(WORKBOOK)
    assert [step[0] for step in done] == ["install", "enter"] * 2


def test_an_installation_that_broke_off_is_taken_up_again(folder, packages_wanted, monkeypatch):
    venv, _done = folder
    packages_wanted("numpy")
    stand_in_environment(venv)

    def no_network(*_):
        raise Trouble("no network")

    monkeypatch.setattr(environment, "install", no_network)
    for _attempt in range(2):
        with pytest.raises(Trouble):
            enter(WORKBOOK)


def test_the_tests_need_more_than_the_workbook(folder):
    venv, done = folder
    stand_in_environment(venv)
    enter(TESTS)
    assert done[0] == ("install", "-r", "requirements.txt", "-e", ".[test]")


@pytest.mark.parametrize("missing", ["venv", "ensurepip"])
def test_a_python_without_venv_is_told_which_package_brings_it(
    folder, packages_wanted, monkeypatch, missing
):
    packages_wanted("no-such-package")
    find = environment.importlib.util.find_spec
    monkeypatch.setattr(
        environment.importlib.util,
        "find_spec",
        lambda name: None if name == missing else find(name),
    )
    with pytest.raises(Trouble, match="sudo apt install python3-venv"):
        enter(WORKBOOK)


def test_an_environment_whose_python_is_gone_is_made_anew(folder, packages_wanted):
    venv, done = folder
    packages_wanted("no-such-package")
    venv.mkdir()
    (venv / "pyvenv.cfg").write_text("home = nowhere\n")
    (venv / "crackkit-installed.txt").write_text(environment._stamp(WORKBOOK) + "\n")
    enter(WORKBOOK)
    assert [step[0] for step in done] == ["install", "enter"]
    assert environment_python(venv).exists()
