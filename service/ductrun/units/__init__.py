"""Dimensions, the unit codes each allows, the quantities made of them, and the factors between them.

A dimension is declared once, as a set of unit codes and a class: in geometry, mechanics, heat or electricity. All else
follows from that. SI is the meeting point: m, m2, m3, kg, kg/m, N, N/m, Pa, kg/m3, K, 1/K, rad, s, A, V, W. The foot is
the international foot (0.3048 m exactly); the US survey foot differs by two parts in a million.
"""

from typing import Final

from ductrun.units.codes import Code as Code
from ductrun.units.codes import UnitCode as UnitCode
from ductrun.units.electricity import *  # noqa: F403  # every dimension that is declared there
from ductrun.units.geometry import *  # noqa: F403
from ductrun.units.heat import *  # noqa: F403
from ductrun.units.mechanics import *  # noqa: F403
from ductrun.units.quantities import UNIT_CODES as UNIT_CODES
from ductrun.units.quantities import AnyQuantity as AnyQuantity
from ductrun.units.quantities import Quantity as Quantity

STANDARD_GRAVITY: Final = 9.80665  # m/s2, exact by definition (ISO 80000-3); turns a mass per length into a weight
DEFINITIONS: Final = {code.text: code for codes in UNIT_CODES.values() for code in codes}
