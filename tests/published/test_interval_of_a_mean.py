"""The confidence interval of a mean, against NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.

ZARR13.DAT, 195 heat-flow values (public US government data): mean 9.261460, standard deviation 0.022789,
95 % interval 9.258242 to 9.264679.
"""

from pathlib import Path

import pytest

from tracker.trade.readings import spread_of, student_t

VALUES = [
    float(line)
    for line in Path(__file__).with_name("zarr13.txt").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#")
]


def test_heat_flow_values() -> None:
    spread = spread_of(VALUES)
    assert spread.n == 195
    assert spread.mean == pytest.approx(9.261460, abs=1e-6)
    assert spread.deviation == pytest.approx(0.022789, abs=1e-6)
    assert spread.low == pytest.approx(9.258242, abs=1e-6)
    assert spread.high == pytest.approx(9.264679, abs=1e-6)


@pytest.mark.parametrize(
    ("degrees", "point"),
    [(1, 12.706), (4, 2.776), (9, 2.262), (19, 2.093), (29, 2.045), (40, 2.021), (60, 2.000), (100, 1.984)],
)
def test_students_t_as_the_handbook_prints_it(degrees: int, point: float) -> None:
    """NIST/SEMATECH e-Handbook, upper critical values of Student's t for 0.025 (a copy of the table was read)."""
    assert student_t(degrees) == pytest.approx(point, abs=5e-4)


@pytest.mark.parametrize(
    ("degrees", "point"), [(1, 12.71), (2, 4.30), (5, 2.57), (10, 2.23), (20, 2.09), (35, 2.03), (50, 2.01)]
)
def test_students_t_as_the_guidelines_print_it(degrees: int, point: float) -> None:
    """NIST Technical Note 1297, table B.1, 95 %."""
    assert student_t(degrees) == pytest.approx(point, abs=5e-3)
