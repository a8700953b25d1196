"""A drawing that shows itself in a notebook."""

from dataclasses import dataclass, fields

from crackkit.drawing.on_page import on_page
from crackkit.drawing.shapes import Picture
from crackkit.drawing.standalone import alt_text


@dataclass(frozen=True, repr=False)
class ShownPicture(Picture):
    """A `Picture` with an image and words for a notebook."""

    def __repr__(self) -> str:
        return alt_text(self)

    def _repr_mimebundle_(self, include=None, exclude=None) -> dict:
        return {"text/html": on_page(self), "text/plain": alt_text(self)}


def still(picture: Picture) -> ShownPicture:
    """Give a picture the way to show itself."""
    return ShownPicture(**{field.name: getattr(picture, field.name) for field in fields(picture)})
