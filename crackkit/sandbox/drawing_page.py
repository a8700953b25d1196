"""The page of a report that holds the drawing."""

from dataclasses import replace

from crackkit.drawing import sheet
from crackkit.drawing.shapes import Picture

_FEET = 36.0  # room for the sentence at the foot, drawing units


def drawing_page(page: Picture, picture: Picture) -> Picture:
    """Set a drawing into an empty page.

    A drawing that is too tall makes the page larger in drawing units: on paper all of it,
    words too, becomes so much smaller that it fits.

    Parameters
    ----------
    page : Picture
        Head and foot.
    picture : Picture
        The drawing.
    """
    room = page.height - sheet.TOP - sheet.BOTTOM - _FEET
    larger = max(1.0, picture.height / room)
    around = tuple(sheet.moved(shape, 0.0, 0.0, larger) for shape in page.shapes)
    left = (page.width * larger - picture.width) / 2
    drawn = tuple(sheet.moved(shape, left, sheet.TOP * larger) for shape in picture.shapes)
    size = {"width": page.width * larger, "height": page.height * larger}
    return replace(page, shapes=(*around, *drawn), **size)
