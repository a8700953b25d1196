"""A call whose right answer is found by mechanics: each answer names the outcome it belongs to."""

from dataclasses import dataclass

from crackkit.learning.choices import Choice, Question, right, wrong


@dataclass(frozen=True)
class Answer:
    """An answer, and the outcome for which it is right.

    Attributes
    ----------
    outcome : str
        Name of the outcome.
    text, belief, why : str
        What it says, what leads to it where it is wrong, and what is said to who chose it.
    """

    outcome: str
    text: str
    belief: str
    why: str

    def choice(self, found: str) -> Choice:
        """Give it as a choice, right where its outcome is the one that was found."""
        if self.outcome == found:
            return right(self.text, self.why)
        return wrong(self.text, self.belief, self.why)


def called(key: str, text: str, found: str, answers, before, after) -> Question:
    """Put a call together; the outcome that mechanics found decides which answer is right."""
    return Question(key, text, tuple(one.choice(found) for one in answers), before, after)
