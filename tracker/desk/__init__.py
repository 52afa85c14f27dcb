"""What a user does, one module a task. Both faces, the window and the commands, call these and nothing below but trade/.

Every function takes the open Desk first unless it says otherwise. An edit returns an Edit: `edit.text` says what was
done, `undo(desk, edit)` reverses it and returns the Edit that does it again. What a user caused (a bad date, a
database that can't be opened) raises `Trouble` with one plain sentence.

opening      open_desk(database: str | None = None, today: date | None = None, who: str | None = None) -> Desk
             default_database() -> str                 the setting, else the user's data folder
             remember_database(database: str) -> None
             Desk: .today .who .database .close()      safe to use from any one thread at a time
trouble      Trouble(Exception)
edits        Edit(text, changes)    undo(desk, edit) -> Edit
             history(desk, limit=200) -> tuple[Change, ...]      Change(id, at, who, text, table, row, was, now)

take_in      read(desk | None, path, answers=Answers()) -> TakenIn
                 TakenIn(reading, content, answers, imported_on)   imported_on: the day this very file was taken in, or None
             read_again(desk | None, taken, answers) -> TakenIn    the same bytes with more answers
             store(desk, taken, remember: Mapping[str, str] = {}) -> Stored(file_id, offers, held, questions, already)
                 `remember`: question keys and the values to keep for the vendor
             workbook(content, name) -> Workbook of Grids          the sheet as the vendor sent it (may raise Trouble)
contract     file_object(taken) -> dict                            one entry of the import JSON
files        files(desk) -> tuple[PriceFile, ...]       PriceFile(id, name, sha256, vendor, received, imported_at, offers, held, withdrawn)
             content(desk, file_id) -> bytes
             withdraw(desk, file_id) -> Edit            its offers no longer count; kept, and can be brought back
questions    open_questions(desk) -> tuple[OpenQuestion, ...]   OpenQuestion(id, file_id, file, vendor, question: trade.offer.Question, lines)
             answer(desk, question_id, value, remember=True) -> Stored   re-reads the kept file with the answer
             set_aside(desk, question_id) -> Edit
             remembered(desk, vendor=None) -> tuple[Remembered, ...]     Remembered(id, vendor, key, value, words, said_at)
             forget(desk, answer_id) -> Edit

quotes       load_snapshot(desk) -> Snapshot            all offers as columns (desk.snapshot)
             compare(desk, snapshot, footing: ChosenFooting) -> Comparison      (desk.comparison)
explanation  explain(desk, comparison, index) -> Explanation(steps: tuple[Step, ...], reasons: tuple[str, ...],
                 notes: tuple[Note, ...], evidence: tuple[Evidence, ...], rate: Rate | None, verdict: dict)
offers_json  offer_objects(desk, comparison, indices) -> list[dict]     the OFFER objects of `quotes --json`
levels       set_level(desk, grade, per_tonne: Decimal, currency, on: date, source, spread: Decimal | None = None) -> Edit
             levels(desk) -> tuple[Level, ...]          Level(id, grade, on, per_tonne, currency, source, spread)
             remove_level(desk, level_id) -> Edit
rates        set_rate(desk, code, euros: Decimal, on: date) -> Edit
             rate(desk, code, into, on: date) -> Rate | None      Rate(factor, date, source): 1 code = factor into
             currencies(desk) -> tuple[str, ...]

samples      log(desk, vendor, grade, caliper_um=None, quantity='', needed=None, on=None, for_what='') -> Logged(number, edit)
             record(desk, number, kind: EventKind, on=None, until=None, note='') -> Edit
             samples(desk, as_of=None) -> tuple[Sample, ...]      outstanding first, most overdue on top
             add_readings(desk, number, property, values: Sequence[Decimal], unit='') -> Edit
             readings(desk, number) -> tuple[SampleReading, ...]
             events(desk, number) -> tuple[SampleEvent, ...]
             Sample: number vendor grade caliper_um quantity for_what requested needed promised sent arrived state
                 waiting_days due due_from overdue_days chased verdict
             EventKind: promised sent arrived refused cancelled chased   SampleState: requested promised sent arrived tested …
waits        lead_times(desk) / turn_round(desk, as_of=None) -> Waits       per vendor and in all
today        today(desk, comparison=None) -> Today(overdue, questions, out_of_line, lapsing)
verdicts     approve(desk, vendor, product, for_what, by) / reject(desk, vendor, product, because, by) -> Edit
vendors      vendors(desk) -> tuple[str, ...]           as stored, in the order of their names
demo         fresh_demo(folder: Path, today=None) -> Desk
keeping      backup(desk, path), restore(database, path), check(desk) -> tuple[str, ...]   sentences; empty: all well
"""
