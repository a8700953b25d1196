"""What went wrong, said so that the reader can mend it."""


class Trouble(Exception):
    """A plain message for the person at the keyboard; shown without a traceback."""
