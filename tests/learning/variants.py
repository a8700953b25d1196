"""What must hold for the comparisons of every lesson, and what each of their variants helps."""

from crackkit.learning.comparison import Compared, Comparison, compared, helped, measures


def tried(now, comparisons) -> dict[str, tuple[Comparison, tuple[Compared, ...]]]:
    """Each comparison by its key, with what becomes of its variants."""
    return {each.key: (each, compared(now, each)) for each in comparisons}


def assert_each_can_be_built_and_one_is_present(found: tuple[Compared, ...]) -> None:
    """No variant is refused or drawn back, and one of them is the structure as it stands."""
    assert all(one.error is None and not one.moved for one in found)
    assert [one.present for one in found].count(True) == 1
    assert len({one.label for one in found}) == len(found)


def helps(comparison: Comparison, found: tuple[Compared, ...]) -> dict[str, str]:
    """How much each variant helps, by its label."""
    told = measures(comparison, tuple(one.outcome for one in found))
    present = next(each for each, one in zip(told, found, strict=True) if one.present)
    return {one.label: helped(present, each) for one, each in zip(found, told, strict=True)}
