"""Takeoffs to write: a small one with hand figures, a long one, and any that a caller's names can make."""

from __future__ import annotations

from ductrun.kit.texts import REFUSED_CHARACTERS
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.takeoff import (
    Takeoff,
    TakeoffGroup,
    TakeoffItem,
    TakeoffLine,
    TakeoffQuantity,
    TakeoffShare,
    TakeoffTotal,
    TakeoffUnit,
    VolumeMeasure,
)
from hypothesis import strategies as st
from msgspec import UNSET

FT, EACH, YD3 = TakeoffUnit.FT, TakeoffUnit.EACH, TakeoffUnit.YD3

EXCAVATION = TakeoffLine(
    line=1,
    group=TakeoffGroup.SITE_WORK,
    item=TakeoffItem.EXCAVATION,
    description="Excavation, in the bank",
    exact_quantity=TakeoffQuantity(66.66666666666667, YD3),
    basis="120 ft x 3 ft x 5 ft / 27",
    pointer="#/result/stretches/0/trench/excavation_volume",
    shares=[TakeoffShare("road", TakeoffQuantity(66.66666666666667, YD3))],
    measure=VolumeMeasure.BANK,
    unit_labor_hours=0.12,
    labor_hours=8.0,  # 66.6667 x 0.12, derived
)
CONDUIT = TakeoffLine(
    line=2,
    group=TakeoffGroup.DUCT,
    item=TakeoffItem.CONDUIT,
    description="PVC Schedule 40, trade size 4, sticks of 10 ft",
    exact_quantity=TakeoffQuantity(1899.0, FT),
    basis="3 ducts x (120 ft + 513 ft)",
    pointer="#/result/stretches/0/joints/straight_length",
    shares=[TakeoffShare("road", TakeoffQuantity(360.0, FT)), TakeoffShare("field", TakeoffQuantity(1539.0, FT))],
    conduit_type=ConduitType.PVC_SCHEDULE_40,
    size="4",
    waste_percent=3.0,
    order_quantity=TakeoffQuantity(1960.0, FT),  # 1899 x 1.03 = 1955.97, up to sticks of 10 ft, derived
    package="stick of 10 ft",
    package_count=196,
    unit_price=4.215,
    price=8261.4,  # 1960 x 4.215, derived
    unit_labor_hours=0.05,
    labor_hours=94.95,  # 1899 x 0.05, derived
)
BELLS = TakeoffLine(
    line=3,
    group=TakeoffGroup.DUCT,
    item=TakeoffItem.END_BELL,
    description="End bell, trade size 4",
    exact_quantity=TakeoffQuantity(6.0, EACH),
    basis="3 ducts x 2 ends",
    pointer="#/result/stretches/0/joints/end_bell_count",
    shares=[TakeoffShare("road", TakeoffQuantity(3.0, EACH)), TakeoffShare("field", TakeoffQuantity(3.0, EACH))],
    conduit_type=ConduitType.PVC_SCHEDULE_40,
    size="4",
    order_quantity=TakeoffQuantity(6.0, EACH),
)
SMALL = Takeoff(
    lines=[EXCAVATION, CONDUIT, BELLS],
    total=TakeoffTotal(
        unpriced_lines=[3],
        lines_without_hours=[3],
        complete=False,
        price=8261.4,
        labor_hours=102.95,  # 8 + 94.95, derived
    ),
)
HOSTILE = (
    '=HYPERLINK("http://example.org","x")',
    "+1+1",
    "-2+3",
    "@SUM(1)",
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    '"quoted", it\'s; a: b',
    "&amp;lt; _x0041_ ]]>",
    "\uff1d1+1",
    "Gatterbauer \u5730\u4e0b\u7ba1\u8def \U0001f6a7 e\u0301",
)


def named(text: str, line: int = 1) -> TakeoffLine:
    """Give a line whose texts are all the caller's."""
    return TakeoffLine(
        line=line,
        group=TakeoffGroup.CABLE,
        item=TakeoffItem.CABLE,
        description=text,
        exact_quantity=TakeoffQuantity(100.5, FT),
        basis=text,
        pointer="#/result/circuits/0/cable_length",
        shares=[TakeoffShare(text[:80], TakeoffQuantity(100.5, FT))],
        size=text[:40],
        package=text[:100],
        order_quantity=TakeoffQuantity(105.0, FT),
    )


def long_takeoff(count: int) -> Takeoff:
    """Give a takeoff of many lines, each to be told from the others."""
    groups = list(TakeoffGroup)
    lines = [
        TakeoffLine(
            line=number,
            group=groups[(number - 1) * len(groups) // count],
            item=list(TakeoffItem)[(number * 7) % len(TakeoffItem)],
            description=f"Row number {number:03d} of the long list, PVC Schedule 40, laid in concrete below the road",
            exact_quantity=TakeoffQuantity(1000.0 + number / 3, FT),
            basis=f"{number} ducts x (120 ft + 513 ft)",
            pointer=f"#/result/stretches/{number}/joints/straight_length",
            shares=[
                TakeoffShare("under the road", TakeoffQuantity(500.0, FT)),
                TakeoffShare("across the field", TakeoffQuantity(500.0 + number / 3, FT)),
            ],
            conduit_type=ConduitType.PVC_SCHEDULE_40,
            size="4",
            waste_percent=3.0,
            order_quantity=TakeoffQuantity(1040.0 + number, FT),
            package="stick of 10 ft",
            package_count=104 + number,
            unit_price=4.25,
            price=round((1040.0 + number) * 4.25, 2),
            unit_labor_hours=0.05,
            labor_hours=(1000.0 + number / 3) * 0.05,
        )
        for number in range(1, count + 1)
    ]
    total = TakeoffTotal(
        unpriced_lines=[],
        lines_without_hours=[],
        complete=True,
        price=round(sum(float(line.price or 0) for line in lines), 2),
        labor_hours=sum(float(line.labor_hours or 0) for line in lines),
    )
    return Takeoff(lines=lines, total=total)


texts = st.one_of(
    st.sampled_from(HOSTILE),
    st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=80).filter(
        lambda text: not REFUSED_CHARACTERS.search(text)
    ),
)
amounts = st.floats(0, 1e9, allow_nan=False)


@st.composite
def lines(draw: st.DrawFn) -> TakeoffLine:
    """Give a line that a caller's names and rates can make."""
    unit = draw(st.sampled_from(TakeoffUnit))
    return TakeoffLine(
        line=draw(st.integers(1, 2000)),
        group=draw(st.sampled_from(TakeoffGroup)),
        item=draw(st.sampled_from(TakeoffItem)),
        description=draw(texts),
        exact_quantity=TakeoffQuantity(draw(amounts), unit),
        basis=draw(texts),
        pointer="#/result/stretches/0",
        shares=[TakeoffShare(name, TakeoffQuantity(draw(amounts), unit)) for name in draw(st.lists(texts, max_size=3))],
        size=draw(texts | st.just(UNSET)),
        order_quantity=draw(st.builds(TakeoffQuantity, amounts, st.just(unit)) | st.just(UNSET)),
        unit_price=draw(amounts | st.just(UNSET)),
        package_count=draw(st.integers(0, 10**6) | st.just(UNSET)),
    )
