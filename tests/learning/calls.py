"""What must hold for the calls of every lesson, and which of them a notebook asks."""

import ast
import json

from crackkit.launch.places import LESSONS
from tests.learning.outcomes import outcome


def assert_one_right_answer_and_named_beliefs(call) -> None:
    """One choice is right, each has its reason, and behind each wrong one stands a belief."""
    assert [choice.right for choice in call.choices].count(True) == 1
    assert all(choice.why for choice in call.choices)
    assert all(choice.misconception for choice in call.choices if not choice.right)
    assert len({choice.text for choice in call.choices}) == len(call.choices) >= 3
    assert outcome(call.structure) and outcome(call.after)


def asked_in_notebook(lesson: str) -> set[str]:
    """Keys of the calls that the notebook of a lesson asks."""
    cells = json.loads((LESSONS / f"{lesson}.ipynb").read_text("utf-8"))["cells"]
    code = "\n".join("".join(cell["source"]) for cell in cells if cell["cell_type"] == "code")
    return {
        node.args[2].value
        for node in ast.walk(ast.parse(code))
        if isinstance(node, ast.Call) and getattr(node.func, "attr", "") == "Call"
    }
