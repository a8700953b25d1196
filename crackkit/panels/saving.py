"""A picture as a file to keep: SVG as it stands, PNG and PDF through the print painter."""

import io

from crackkit.drawing.shapes import Picture
from crackkit.drawing.standalone import standalone

MIME = {"svg": "image/svg+xml", "png": "image/png", "pdf": "application/pdf"}


def picture_file(picture: Picture, kind: str, theme: str) -> bytes:
    """Give the bytes of a picture file.

    Parameters
    ----------
    picture : Picture
    kind : str
        ``"svg"``, ``"png"`` or ``"pdf"``.
    theme : str
        Theme to paint it in.
    """
    if kind == "svg":
        return standalone(picture, theme).encode("utf-8")
    from crackkit.drawing import print_painter

    buffer = io.BytesIO()
    print_painter.save(picture, buffer, kind, theme=theme)
    return buffer.getvalue()
