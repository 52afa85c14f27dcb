"""Documents as they are printed: valid JSON, a line a thing, and an iterator like a list."""

import json

from hypothesis import given
from hypothesis import strategies as st

from tracker.commands.printing import json_text

plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=3), inner, max_size=3),
    max_leaves=12,
)


@given(plain, st.integers(0, 5))
def test_what_is_printed_reads_back(document, depth):
    assert json.loads(json_text(document, depth)) == document


@given(st.lists(plain, max_size=4))
def test_an_iterator_is_printed_as_the_list_of_its_items(items):
    assert json_text({"lines": iter(items)}, 4) == json_text({"lines": items}, 4)


def test_empty_things_stay_on_their_line():
    assert json_text({"lines": [], "more": {}}, 3) == '{\n "lines": [],\n "more": {}\n}'
