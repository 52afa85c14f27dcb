"""Evidence comes out of its packing as it went in, whichever way a line holds it."""

from hypothesis import given
from hypothesis import strategies as st

from tracker.store.evidence import evidence_at, pack_evidence
from tracker.trade.offer import Evidence, Line, LineEvidence, Offer, RowEvidence, Source, State

words = st.text(max_size=6)
pieces = st.builds(Evidence, words, words, words, words)
shared = [
    ((Evidence("grade", "B", "SBS"), True), (Evidence("currency", "E1", "USD"), False)),
    ((Evidence("grade", "B", "CUK"), True),),
]
in_rows = st.builds(RowEvidence, st.sampled_from(shared), st.integers(1, 9))


def line(said) -> Line:
    return Line(Offer(Source("", "A1")), State.ACCEPTED, (), said)


@given(st.lists(st.lists(pieces | in_rows, max_size=4).map(tuple), max_size=6))
def test_every_piece_comes_back(parts):
    lines = [line(LineEvidence(said)) for said in parts]
    packed = pack_evidence(lines)
    assert [evidence_at(packed, place) for place in range(len(lines))] == [tuple(one.evidence) for one in lines]
    assert evidence_at(packed, len(lines)) == ()


def test_words_that_look_like_the_packing_are_words():
    odd = ['",0],["', '\\",1],["', "],[", "\\", '"', "[[", "é\n\u2028"]
    said = [
        (Evidence("product", f"A{at}", text, text), Evidence("grade", "B1", odd[-at])) for at, text in enumerate(odd)
    ]
    packed = pack_evidence([line(each) for each in said])
    assert [evidence_at(packed, at) for at in range(len(odd))] == said


def test_rows_name_their_own_cells():
    lines = [line(LineEvidence((RowEvidence(shared[0], row), Evidence("vendor", "A1", "x")))) for row in (7, 8)]
    packed = pack_evidence(lines)
    assert [piece.said_by for piece in evidence_at(packed, 0)] == ["B7", "E1", "A1"]
    assert [piece.said_by for piece in evidence_at(packed, 1)] == ["B8", "E1", "A1"]


def test_a_line_compares_by_its_pieces():
    plain = (Evidence("grade", "B7", "CUK"),)
    made = LineEvidence((RowEvidence(shared[1], 7),))
    assert line(plain) == line(made)
    assert hash(line(plain)) == hash(line(made))
    assert line(plain) != line(LineEvidence((RowEvidence(shared[1], 8),)))
    assert (len(made), made[0], made[-1:]) == (1, plain[0], plain)
