"""A key in cells of its own, a line a head: 'WT – Werktage bis Versand'. What it explains is read no other way."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis

POUND = Decimal("0.45359237")
BOARDS = [["GC1 board", 240, 380, 1236, 0], ["GD2 board", 320, 420, 872, 15]]
KEYS = [
    ("Stock Sub Bulk Rate CT", "euro for one metric tonne; grammes per square metre; microns; days to dispatch"),
    ("Sorte FG VD Kurs WT", "Euro für eine Tonne, ab Werk; Gramm je Quadratmeter; Mikrometer; Tage bis zum Versand"),
    ("Sorte GR EP Tarif CT", "euros pour une tonne, départ usine; grammes par mètre carré; microns; délai en jours"),
    ("Calidad GR ES Tarifa CT", "euros por una tonelada métrica; gramos por metro cuadrado; micras; plazo en días"),
    ("Kvalitet YV TJ Pris LT", "euro för ett ton (1000 kg); gram per kvadratmeter; mikrometer; dagar till leverans"),
]  # fmt: skip


def keyed(heads, said, sign="–"):
    board, sub, bulk, rate, time = heads.split()
    money, weight, thick, days = said.split("; ")
    key = [f"{head} {sign} {words}" for head, words in ((rate, money), (sub, weight), (bulk, thick), (time, days))]
    return lines([["Key"], *([line] for line in key), [], [board, sub, bulk, rate, time], *BOARDS])


@pytest.mark.parametrize(("heads", "said"), KEYS)
@pytest.mark.parametrize("sign", ["–", "-", "=", ":"])
def test_a_key_of_lines_explains_each_head(heads, said, sign):
    found = keyed(heads, said, sign)
    assert {(line.offer.currency, line.offer.basis) for line in found.values()} == {("EUR", Basis.TONNE)}
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
    assert [line.offer.caliper_um for line in found.values()] == [380, 420]
    assert [line.offer.grammage_gsm for line in found.values()] == [240, 320]
    assert [line.offer.lead_days for line in found.values()] == [(0, 0), (15, 15)]


def test_loads_that_a_key_explains_stay_order_sizes():
    key = ["TL = truckload, 40,000 lb and up", "LTL = less than a truckload, 5,000 lb to 40,000 lb"]
    found = lines([*([line] for line in key), [], ["Grade", "pt", "TL $/ST", "LTL $/ST"], ["SBS", 18, 1180, 1236]])
    assert [
        tuple(limit and round(limit / POUND) for limit in (line.offer.from_kg, line.offer.below_kg))
        for line in found.values()
    ] == [(40_000, None), (5_000, 40_000)]
    assert [f"{line.offer.price:f}" for line in found.values()] == ["1180", "1236"]


def test_a_line_that_answers_what_a_head_asks_is_no_head():
    rows = [["Price – subject to change"], ["Sub – grammes per square metre"], ["Lead time – 4 weeks"], []]
    found = lines([*rows, ["Board", "Sub", "Price EUR/tonne"], *(row[:2] + row[3:4] for row in BOARDS)])
    assert [f"{line.offer.price:f}" for line in found.values()] == ["1236", "872"]
    assert {line.offer.lead_days for line in found.values()} == {(28, 28)}


@pytest.mark.parametrize("head", ["CT", "ct", "Ct"])
def test_a_head_like_cents_over_times_is_none_of_prices(head):
    rows = [["GC1", 240, 1236, "in stock"], ["GD2", 320, 872, "3 weeks"], ["GT2", 400, 842, "10 working days"]]
    found = lines([["Board", "g/m²", "EUR/tonne", head], *rows])
    assert [line.offer.lead_days for line in found.values()] == [(0, 0), (21, 21), (14, 14)]
    assert {(str(line.state), line.offer.currency) for line in found.values()} == {("accepted", "EUR")}


def test_cents_over_figures_stay_cents():
    found = lines([["Grade", "pt", "ct per lb"], ["SBS", 18, 58.5], ["CRB", 20, 44.25]])
    assert [str(line.offer.price) for line in found.values()] == ["0.585", "0.4425"]


def test_a_board_called_lined_is_what_its_code_says():
    found = lines([["Board", "g/m²", "EUR/tonne"], ["GD2 lined chipboard", 320, 872], ["Plain chipboard", 400, 655]])
    assert [line.offer.grade for line in found.values()] == ["CRB", "URB"]


@pytest.mark.parametrize(
    ("said", "heads", "sizes"),
    [
        (
            "TL means 40,000 lb or more on one truck; LTL means 5,000 lb up to, not including, 40,000 lb.", "LTL TL",
            [(5_000, 40_000), (40_000, None)],
        ),
        (
            "TL stands for 40,000 lb and up, LTL stands for 5,000 lb up to 40,000 lb", "LTL TL",
            [(5_000, 40_000), (40_000, None)],
        ),
        ("KM bedeutet Aufträge unter 5 t; GM bedeutet 5 t und mehr auf einem Lkw", "KM GM", [(None, 5), (5, None)]),
        ("PC signifie moins de 5 t ; CC signifie 5 t et plus sur un camion", "PC CC", [(None, 5), (5, None)]),
        ("PQ significa menos de 5 t; CC significa 5 t o más en un camión", "PQ CC", [(None, 5), (5, None)]),
        ("HB betyder 5 ton eller mer på en bil; DB betyder under 5 ton", "DB HB", [(None, 5), (5, None)]),
    ],
)  # fmt: skip
def test_a_sentence_says_what_size_a_head_means(said, heads, sizes):
    unit = POUND if "lb" in said else 1000
    found = lines([[said], ["EUR per 1000 kg"], ["Grade", "µm", "g/m²", *heads.split()], ["GC1", 400, 250, 1290, 1240]])
    limits = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert [tuple(limit and round(limit / unit) for limit in pair) for pair in limits] == sizes
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize(
    "said",
    [
        "TL means a full truck; LTL means anything less", "TL ships in 2 weeks; LTL means 5,000 lb and up",
        "KM bedeutet nicht unter 5 t; GM ist das Übrige",
    ],
)  # fmt: skip
def test_a_sentence_that_tells_no_size_leaves_it_asked(said):
    heads = ["KM", "GM"] if "KM" in said else ["LTL", "TL"]
    found = lines([[said], ["EUR per 1000 kg"], ["Grade", "µm", "g/m²", *heads], ["GC1", 400, 250, 1290, 1240]])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_what_is_below_a_load_stays_an_order_size():
    said = "TL = 40,000 lb or more on one truck; LTL = anything below that. Delivered."
    rows = [["Grade", "µm", "g/m²", "USD/ST"], [None] * 3 + ["LTL", "TL"], ["GC1", 400, 250, 1290, 1240], [said]]
    found = lines(rows)
    limits = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert [tuple(limit and round(limit / POUND) for limit in pair) for pair in limits] == [
        (None, 40_000), (40_000, None),
    ]  # fmt: skip
