"""``python -m crackkit``: open the workbook, test it, make its figures and handouts."""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - an older Python ends here, in plain words
    sys.exit(
        "crackkit needs Python 3.11 or newer; this is Python {}.{}.\n".format(*sys.version_info)
        + "Install a newer one from python.org, then start again with it, for example:\n"
        + "    python3.12 -m crackkit"
    )

import argparse
import importlib
import importlib.util

from crackkit import __version__
from crackkit.launch.environment import TESTS, WORKBOOK, enter
from crackkit.launch.opening import FIRST_LESSON, open_lesson
from crackkit.launch.server import USUAL_PORT
from crackkit.launch.testing import run_tests
from crackkit.launch.trouble import Trouble
from crackkit.words import _

# What each command is for, and the module whose ``main(arguments)`` carries it out.
_makers = {
    "figures": (_("draw the pictures in figures/ anew"), "crackkit.figures"),
    "handouts": (_("print worksheets for a class"), "crackkit.handouts"),
    "report": (_("gather what a class has done"), "crackkit.class_sheet"),
}
_commands = ("open", "test", *_makers)


def main(arguments: list[str]) -> int:
    """Carry out one command line; give the exit code."""
    if not arguments or arguments[0] not in (*_commands, "-h", "--help", "--version"):
        arguments = ["open", *arguments]
    known, rest = _parser().parse_known_args(arguments)
    if rest and known.command == "open":
        _parser().error(_("unknown: {rest}").format(rest=" ".join(rest)))
    try:
        return _carry_out(known, rest)
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print(_("\nStopped."), file=sys.stderr)
        return 130


def _carry_out(known: argparse.Namespace, rest: list[str]) -> int:
    enter(TESTS if known.command == "test" else WORKBOOK)
    if known.command == "open":
        open_lesson(known.lesson, known.port, not known.no_browser)
        return 0
    if known.command == "test":
        return run_tests(rest, known.benchmark)
    return _made_by(_makers[known.command][1], rest)


def _made_by(module: str, arguments: list[str]) -> int:
    if importlib.util.find_spec(module) is None:
        raise Trouble(_("This edition of the workbook cannot do that yet."))
    return importlib.import_module(module).main(arguments) or 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m crackkit",
        description=_("A workbook on cracks in concrete and the bars that keep them small."),
        epilog=_("Without a command the workbook is opened. More: python -m crackkit test --help"),
    )
    parser.add_argument("--version", action="version", version=f"crackkit {__version__}")
    commands = parser.add_subparsers(dest="command", metavar=_("command"))
    _add_open(commands)
    _add_test(commands)
    for name, (purpose, _module) in _makers.items():
        commands.add_parser(name, help=purpose, description=purpose, add_help=False)
    return parser


def _add_open(commands) -> None:
    purpose = _("open the workbook in the browser (this is what happens without a command)")
    command = commands.add_parser("open", help=purpose, description=purpose)
    command.add_argument(
        "lesson",
        nargs="?",
        default=FIRST_LESSON,
        help=_("which lesson: its file name or its number (default: %(default)s)"),
    )
    command.add_argument(
        "--port",
        type=int,
        default=USUAL_PORT,
        metavar="N",
        help=_("the first port to try on this computer (default: %(default)s)"),
    )
    command.add_argument(
        "--no-browser", action="store_true", help=_("only print the address to open")
    )


def _add_test(commands) -> None:
    purpose = _("run all tests: mechanics, published values, lessons, the page itself")
    command = commands.add_parser(
        "test",
        help=purpose,
        description=purpose,
        epilog=_("Anything else is passed on to pytest, for example: -k slab -x"),
    )
    command.add_argument(
        "--benchmark", action="store_true", help=_("time the live path instead of testing")
    )


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
