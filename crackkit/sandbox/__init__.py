"""What an engineer types: a structure in one line, in the units of the job.

>>> SimpleBeam(span="20 ft", width="12 in", depth="20 in", bars="3 #6", dead="0.9 kip/ft")
>>> Cantilever(overhang="1.5 m", depth="200 mm", top="12 @ 150", load="4 kN/m", wall="300 mm")
>>> ContinuousBeam(spans="5 m, 6 m, 5 m", depth="200 mm", dead="1.5 kN/m2", live="5 kN/m2")
>>> TensionMember(pull="110 kN", bars="4 x 12 mm", width="150 mm", depth="150 mm", cover="25 mm")
>>> CrackControl(bars="12 @ 150", across="10 @ 200", cover="40 mm", moment="30 kNm")
>>> GroundSlab(length="24 m", thickness="150 mm", left=0.9, right=0.9, bars="12 @ 150", age="90 d")
>>> CurledSlab(length="4.5 m", thickness="125 mm", load="10 kN", along="0.2 m", across="0.2 m")
>>> CornerSlab(length="6 m", width="6 m", cut="3 m x 3 m", diagonals="2 x 12 mm at 50 mm")
"""

from crackkit.sandbox.cantilever import Cantilever
from crackkit.sandbox.code_line import code_line
from crackkit.sandbox.comparison import compare
from crackkit.sandbox.continuous_beam import ContinuousBeam
from crackkit.sandbox.corner_slab import CornerSlab
from crackkit.sandbox.crack_control import CrackControl
from crackkit.sandbox.curled_slab import CurledSlab
from crackkit.sandbox.ground_slab import GroundSlab
from crackkit.sandbox.reports import report
from crackkit.sandbox.simple_beam import SimpleBeam
from crackkit.sandbox.sweeps import sweep
from crackkit.sandbox.tension_member import TensionMember
from crackkit.sandbox.wrong_input import WrongInput

__all__ = [
    "Cantilever",
    "ContinuousBeam",
    "CornerSlab",
    "CrackControl",
    "CurledSlab",
    "GroundSlab",
    "SimpleBeam",
    "TensionMember",
    "WrongInput",
    "code_line",
    "compare",
    "report",
    "sweep",
]
