"""What must hold for what a lesson tells its readers."""


def assert_alike_in_both_systems(promises: dict[str, bool], more_than: int) -> None:
    """Many things are promised, and the same to readers of either system of units."""
    si, us = (
        {text[4:] for text in promises if text.startswith(f"{system}: ")} for system in ("SI", "US")
    )
    assert si == us and len(si) > more_than
