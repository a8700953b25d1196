"""A still picture on somebody's page: painted in light and in dark, composed wide and narrow.

All of them stand in the HTML and the page's own style shows the one that fits, so that a kept
page needs no kernel and no script. Where a page lets no style through, the first one shows.
"""

from crackkit.drawing.shapes import Picture
from crackkit.drawing.standalone import image

ROOM = 900  # px; in less room the words of a wide picture get too small to read
_HIDDEN = ' style="display:none"'
_SWITCHES = (
    "<style>.ck-still{container-type:inline-size}"
    '[data-jp-theme-light="false"] .ck-still .ck-light{display:none!important}'
    '[data-jp-theme-light="false"] .ck-still .ck-dark{display:block!important}'
    f"@container (max-width:{ROOM - 1}px){{"
    ".ck-still>.ck-wide{display:none!important}"
    ".ck-still>.ck-narrow{display:block!important}}</style>"
)


def on_page(wide: Picture, narrow: Picture | None = None) -> str:
    """Give HTML that shows a picture in the colours of the page and as large as it has room for.

    Parameters
    ----------
    wide : Picture
        The picture; the only one where no other is given.
    narrow : Picture, optional
        The same composed for little room.
    """
    if narrow is None:
        return f'<div class="ck-still">{_SWITCHES}<div>{_both_themes(wide)}</div></div>'
    return (
        f'<div class="ck-still">{_SWITCHES}'
        f'<div class="ck-wide">{_both_themes(wide)}</div>'
        f'<div class="ck-narrow"{_HIDDEN}>{_both_themes(narrow)}</div></div>'
    )


def _both_themes(picture: Picture) -> str:
    return (
        f'<div class="ck-light">{image(picture, "light")}</div>'
        f'<div class="ck-dark"{_HIDDEN}>{image(picture, "dark")}</div>'
    )
