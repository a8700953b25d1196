"""Errors of callbacks stand on the page, in place, before they go on to the log."""

from functools import wraps

from crackkit.words import _


def surfaced(method):
    """Show an error of a method on the page, then raise it again.

    The method's object has a ``view`` with an ``error``.
    """

    @wraps(method)
    def safe(self, *args, **kwargs):
        try:
            return method(self, *args, **kwargs)
        except Exception as error:
            self.view.error = _("Something went wrong here: {what}").format(what=error)
            raise

    return safe
