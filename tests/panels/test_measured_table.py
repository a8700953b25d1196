"""Measured widths beside those of the rules, as a table that can be read aloud."""

import re
from html.parser import HTMLParser

import pytest

from crackkit import panels
from crackkit.panels.measured_table import MeasuredTable
from crackkit.panels.preferences import Preferences


class Grid(HTMLParser):
    """Rows of a table: tag, attributes and text of each cell."""

    def __init__(self, html):
        super().__init__()
        self.rows, self.texts, self.inside = [], [], None
        self.feed(html)

    def handle_starttag(self, tag, attrs):
        if tag == "tr":
            self.rows.append([])
        if tag in ("th", "td"):
            self.rows[-1].append([tag, dict(attrs), ""])
        self.inside = tag

    def handle_data(self, data):
        if self.inside in ("th", "td"):
            self.rows[-1][-1][2] += data
        else:
            self.texts.append(data)


def shown_by(table):
    found = table._repr_mimebundle_()
    return found[0] if isinstance(found, tuple) else found


def bundle(system="SI"):
    choices = Preferences()
    choices.system = system
    return shown_by(MeasuredTable(choices=choices))


def grid(system="SI"):
    return Grid(bundle(system)["text/html"])


def texts(row):
    return [text for _tag, _attrs, text in row]


def test_each_member_has_its_measured_width_and_for_each_rule_a_width_and_a_ratio():
    rows = grid().rows
    names, below, *members = rows[:-2]
    assert texts(names)[:2] == ["member", "measured"]
    assert len(texts(names)[2:]) == 4
    assert texts(below) == ["computed", "ratio"] * 4
    assert len(members) == 8
    first = texts(members[0])
    assert first[:2] == ["beam B1-a", "0.38\u202fmm"]
    assert first[2:4] == ["0.25\u202fmm", "1.50"]


def test_the_last_rows_are_mean_ratio_and_scatter():
    mean_row, scatter_row = grid().rows[-2:]
    assert texts(mean_row) == ["mean ratio", "1.25", "1.04", "1.32", "0.99"]
    assert texts(scatter_row) == ["scatter", "28 %", "36 %", "14 %", "19 %"]


def test_means_are_those_of_the_ratios_shown():
    shown = MeasuredTable(choices=Preferences())
    assert [row.ratios[0] for row in shown.rows] == pytest.approx(
        [row.measured / row.answers[0].width for row in shown.rows]
    )
    ratios = [row.ratios[2] for row in shown.rows]
    assert shown.mean_ratios[2] == pytest.approx(sum(ratios) / 8)
    spread = (sum((r - shown.mean_ratios[2]) ** 2 for r in ratios) / 7) ** 0.5
    assert shown.scatter[2] == pytest.approx(spread / shown.mean_ratios[2])


def test_in_us_units_the_widths_are_in_inches_and_the_ratios_the_same():
    si, us = grid().rows, grid("US").rows
    assert texts(us[2])[1] == "0.0150\u202fin"
    assert [texts(row)[3::2] for row in us[2:-2]] == [texts(row)[3::2] for row in si[2:-2]]
    assert [texts(row) for row in us[-2:]] == [texts(row) for row in si[-2:]]


def test_it_follows_the_choice_of_units_where_it_stands():
    choices = Preferences()
    table = MeasuredTable(choices=choices)
    assert "\u202fmm<" in table.view.html
    choices.system = "US"
    assert "\u202fin<" in table.view.html and "\u202fmm<" not in table.view.html
    assert table.view.html in shown_by(table)["text/html"]


def test_every_row_and_column_has_a_head_and_the_table_a_name():
    html = bundle()["text/html"]
    assert re.search(r"<p[^>]*>[^<]*Gilbert[^<]*from memory", html)
    for row in grid().rows[2:]:
        tag, attrs, _text = row[0]
        assert (tag, attrs["scope"]) == ("th", "row")
    widths = [sum(int(a.get("colspan", 1)) for _t, a, _x in row) for row in grid().rows]
    assert widths[0] == 10 and set(widths[2:]) == {10}
    assert {a["scope"] for row in grid().rows[:2] for _t, a, _x in row} == {"col", "colgroup"}


def test_it_paints_nothing_of_its_own_so_that_it_follows_the_colours_of_the_page():
    assert not re.search(r"color|background", bundle()["text/html"])


@pytest.mark.parametrize("kind", ["text/html", "text/plain"])
def test_it_says_that_measured_widths_include_shrinkage(kind):
    told = bundle()[kind]
    assert "include what shrinkage and creep added" in told
    assert "ratios above 1 are expected" in told


def test_lessons_find_it_with_the_panels():
    assert panels.MeasuredTable is MeasuredTable
