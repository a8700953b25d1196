"""Where a plan lies in its band, and the words beside it."""

from crackkit.drawing.frames import Frame

LEAST_WIDE = 920.0  # below this width the right column goes under the bands: the plan needs room
PLAN = (290.0, 380.0)  # least and largest height of the plan
ASPECT = 0.62  # height over width of the room for the plan
OVER, UNDER = 52.0, 48.0  # room in the band over and under the plan
SIDE = (176.0, 250.0)  # least and largest width of the words beside the plan
SIDE_SHARE = 0.30


def plan_band(
    left: float, top: float, width: float, beside: float, apart: float
) -> tuple[Frame, Frame, Frame]:
    """Give the band, and in it the room for the plan and the room for words beside it.

    Parameters
    ----------
    left, top, width : float
        Of the band [drawing units].
    beside, apart : float
        Room to the left of the plan, and between it and the words [drawing units].
    """
    side = min(max(SIDE_SHARE * width, SIDE[0]), SIDE[1])
    room = width - side - beside - apart
    tall = min(max(ASPECT * room, PLAN[0]), PLAN[1])
    band = Frame(left, top, width, OVER + tall + UNDER)
    plan = Frame(left + beside, top + OVER, room, tall)
    words = Frame(left + width - side, top + OVER - 14, side, tall + 28)
    return band, plan, words
