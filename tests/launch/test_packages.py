import pytest

from crackkit.launch import packages
from crackkit.launch.packages import lacking, requirements_of_tests, requirements_of_workbook


def test_comments_options_and_the_project_itself_are_no_packages(tmp_path):
    file = tmp_path / "requirements.txt"
    file.write_text("# words\nnumpy>=2,<3  # arrays\n\n-e .\n")
    assert requirements_of_workbook(file) == ["numpy>=2,<3"]


def test_what_is_here_is_not_missed():
    assert lacking(["pytest>=1.0", "pytest"]) == []


@pytest.mark.parametrize("requirement", ["no-such-package-at-all>=1", "pytest>=9999"])
def test_what_is_absent_or_too_old_is_named(requirement):
    assert lacking([requirement]) == [requirement.split(">=")[0]]


def test_ten_is_newer_than_nine():
    assert packages._numbers("2.10") > packages._numbers("2.9.7")


def test_requirements_and_package_ask_for_the_same_releases():
    declared = packages.tomllib.loads(packages.PYPROJECT.read_text("utf-8"))["project"]
    stated = {line.split(",")[0].strip() for line in requirements_of_workbook()}
    assert stated == set(declared["dependencies"])


def test_every_requirement_says_what_it_is_for():
    lines = packages.REQUIREMENTS.read_text("utf-8").splitlines()
    bare = [line for line in lines if line and not line.startswith("#") and "#" not in line]
    assert bare == []


def test_the_tests_ask_for_pytest():
    assert any(requirement.startswith("pytest>=") for requirement in requirements_of_tests())
