"""The virtual environment ``.venv`` beside the project: made once, renewed when it must be."""

import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path

from crackkit.launch.installation import install
from crackkit.launch.packages import lacking, requirements_of_tests, requirements_of_workbook
from crackkit.launch.places import ENVIRONMENT, PROJECT, environment_python
from crackkit.launch.trouble import Trouble
from crackkit.words import _

WORKBOOK = "workbook"
TESTS = "tests"

_wanted = {
    WORKBOOK: requirements_of_workbook,
    TESTS: lambda: requirements_of_workbook() + requirements_of_tests(),
}
_pip_arguments = {
    WORKBOOK: ["-r", "requirements.txt"],
    TESTS: ["-r", "requirements.txt", "-e", ".[test]"],
}


def enter(purpose: str) -> None:
    """Return if this interpreter can serve the purpose; else go on in the project's environment.

    Parameters
    ----------
    purpose : {"workbook", "tests"}
        What the packages are needed for.

    Raises
    ------
    Trouble
        If the environment cannot be made.
    """
    if not ENVIRONMENT.exists() and not lacking(_wanted[purpose]()):
        return
    _stand(purpose)
    if Path(sys.prefix).resolve() != ENVIRONMENT.resolve():
        _go_on_in(environment_python())


def _stand(purpose: str) -> None:
    if not environment_python().exists():
        _make()
    if _stamp(purpose) not in _stamps():
        print(_("Installing what the {purpose} needs into {folder} (once).").format(
            purpose=purpose, folder=ENVIRONMENT))  # fmt: skip
        log = ENVIRONMENT / "install.log"
        install(environment_python(), _pip_arguments[purpose], PROJECT, log)
        with _stamp_file().open("a", encoding="utf-8") as file:
            file.write(_stamp(purpose) + "\n")


def _make() -> None:
    if importlib.util.find_spec("ensurepip") is None or importlib.util.find_spec("venv") is None:
        raise Trouble(
            _(
                "This Python cannot make a virtual environment: its module venv is missing.\n"
                "On Debian and Ubuntu: sudo apt install python3-venv\n"
                "On other systems install Python 3.11 or newer from python.org."
            )
        )
    print(_("Making a Python environment for the workbook in {folder}").format(folder=ENVIRONMENT))
    # A .venv whose interpreter is gone (Python was upgraded) is useless: make it anew.
    _forget_a_dead_environment()
    made = subprocess.run(
        [sys.executable, "-m", "venv", str(ENVIRONMENT)], capture_output=True, text=True
    )
    if made.returncode != 0:
        raise Trouble(
            _("The environment could not be made in {folder}:\n{error}").format(
                folder=ENVIRONMENT, error=(made.stdout + made.stderr).strip()
            )
        )


def _forget_a_dead_environment() -> None:
    if (ENVIRONMENT / "pyvenv.cfg").exists():
        shutil.rmtree(ENVIRONMENT)


def _stamp(purpose: str) -> str:
    """Name a purpose together with the very packages it wants, so that a change is noticed."""
    wanted = "\n".join(_wanted[purpose]())
    return f"{purpose} {hashlib.sha256(wanted.encode()).hexdigest()[:16]}"


def _stamps() -> list[str]:
    file = _stamp_file()
    return file.read_text("utf-8").splitlines() if file.exists() else []


def _stamp_file() -> Path:
    return ENVIRONMENT / "crackkit-installed.txt"


def _go_on_in(python: Path) -> None:
    """Run the same command again with another interpreter; never returns."""
    command = [str(python), "-m", "crackkit", *sys.argv[1:]]
    paths = [str(PROJECT), *filter(None, [os.environ.get("PYTHONPATH")])]
    os.environ["PYTHONPATH"] = os.pathsep.join(paths)
    sys.stdout.flush()
    if os.name == "nt":  # there, exec returns to the prompt while the new process still runs
        sys.exit(_patient_call(command))
    os.execv(python, command)


def _patient_call(command: list[str]) -> int:
    with subprocess.Popen(command) as process:
        while True:
            try:
                return process.wait()
            except KeyboardInterrupt:
                continue  # Ctrl-C reached the new process as well: let it stop by itself
