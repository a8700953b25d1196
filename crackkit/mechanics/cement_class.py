"""How fast a cement hardens: slow (S), normal (N) or rapid (R), in the letters of EN 1992-1-1."""

from crackkit.words import _

CEMENT_CLASSES = ("S", "N", "R")
"""S: class 32.5 N. N: 32.5 R and 42.5 N. R: 42.5 R and 52.5. Type I is near N, type III near R."""


def of_class(values, cement_class):
    """The value of a table that stands under a class of cement.

    Parameters
    ----------
    values : dict
        What stands under each class.
    cement_class : str
        "S", "N" or "R" (EN 1992-1-1:2004, 3.1.2(6)).

    Returns
    -------
    object
        The value of that class.

    Raises
    ------
    ValueError
        If the class is not known.
    """
    if cement_class not in values:
        message = _("The class of cement must be S, N or R, not {given}.")
        raise ValueError(message.format(given=cement_class))
    return values[cement_class]
