"""What an engineer types: a structure in one line, in the units of the job.

>>> SimpleBeam(span="20 ft", width="12 in", depth="20 in", bars="3 #6", dead="0.9 kip/ft")
"""

from crackkit.sandbox.code_line import code_line
from crackkit.sandbox.comparison import compare
from crackkit.sandbox.reports import report
from crackkit.sandbox.simple_beam import SimpleBeam
from crackkit.sandbox.sweeps import sweep
from crackkit.sandbox.wrong_input import WrongInput

__all__ = ["SimpleBeam", "WrongInput", "code_line", "compare", "report", "sweep"]
