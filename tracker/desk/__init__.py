"""What a user does, one module a task. Both faces, window and commands, call these and nothing below but trade/.

Every function takes the open Desk first unless it says otherwise. An edit returns an Edit: `edit.text` says what was
done, `undo(desk, edit)` reverses it and returns the Edit that does it again. What a user caused (a bad date, a
database that can't be opened) raises `Trouble` with one plain sentence.

opening      open_desk(database: str | None = None, today: date | None = None, who: str | None = None) -> Desk
             default_database() -> str                 the setting, else the user's data folder
             desk_on(…) -> Desk                        the same, opened once something needs it
             desk_if_there(database) -> Desk | None    is_there(desk)    refuse_missing(desk)    load_store(desk): ahead
             Desk: .today .who .database .close()      safe to use from any one thread at a time
trouble      Trouble(Exception)    sentence_for(problem) -> str | None     what to say of any failure; None: our fault
edits        Edit(text, changes)    undo(desk, edit) -> Edit
             history(desk, limit=200) -> tuple[Change, ...]      Change(id, at, who, text, table, row, was, now)
             latest_change(desk) -> int                grows with whatever any program writes
collecting   with no_collecting():                     no search for garbage while thousands of offers are made
             let_go(items)                             empties a long list in pieces, so that other threads run

take_in      read(desk | None, path, answers=Answers(), manner=Manner(show=False, cancelled=None)) -> TakenIn
                 TakenIn(reading, content, answers, imported_on: day this very file was taken in before, or None,
                 sheets: the Workbook of Grids if `show`); `cancelled`: a threading.Event that stops it with Trouble
             read_again(desk | None, taken, answers) -> TakenIn  the same with other answers: at once if sheets are held
             store(desk, taken, remember={}, words={}, anew=False)
                 -> Stored(file_id, offers, held, questions, already, answered)
                 `remember`: question keys and the values to keep for the vendor, `words`: what of the sheet each
                 answered; `anew`: in place of what is stored of the same file; a layout marked in the file
                 (Answers.layouts) is kept for the vendor too
             keep_ready() / stand_down()               a reading process started ahead of need
             read_bytes(desk | None, name, content, answers) -> TakenIn      a file that is held in memory
             workbook(content, name) -> Workbook of Grids        the sheet as the vendor sent it (may raise Trouble)
contract     file_object(taken) -> dict                one entry of the import JSON, its lines an iterator
files        files(desk) -> tuple[StoredFile, ...]
                 StoredFile(id, name, sha256, vendor, received, imported_at, imported_by, withdrawn, offers, held)
             find(desk, id or sha256) -> StoredFile    content(desk, file_id) -> bytes
             answers(desk, file_id) -> Answers         what it was read with
             read_anew(desk, file_id, answers, remember={}) -> Answers    what it was read with before
             name_vendor(desk, file_id, vendor) -> Edit          where the sheet named nobody
             withdraw(desk, *file_ids) / bring_back(desk, file_id) -> Edit     whether its offers count
layouts      layouts(desk, vendor=None) -> tuple[KeptLayout, ...]     forget_layout(desk, layout_id) -> Edit
                 KeptLayout(id, vendor, name, layout: trade.layout.Layout, made_at, made_by)
vendor_words words_to_vendor(file, questions) -> str   what to ask a vendor, as a draft
questions    open_questions(desk) -> tuple[OpenQuestion, ...]
                 OpenQuestion(id, file_id, file, vendor, question: trade.offer.Question, lines)
             answer(desk, question_id, value, remember=True) -> Stored     re-reads the kept file with the answer
             take_back(desk, stored.answered)          undoes it;  answer_again(desk, answered) -> Stored  redoes it
             set_aside(desk, question_id) -> Edit
             answer_kept(desk, sha256, settled) -> how many offers: answers to what a kept file left open
             remembered(desk, vendor=None) -> tuple[Remembered, ...]
                 Remembered(id, vendor, key, value, words, said_at, said_by)
             forget(desk, answer_id) -> Edit
changed_answers   change_answer(desk, answer_id, value) -> ChangedAnswer(text, answer_id, was, value, offers)     stored
                 offers that were read with it follow; change_answer(desk, answer_id, was) turns it back
known_answers     asked_of(reading) -> questions, all that a person can settle      Recalled(key, value, words)
open_dates   DATE_ORDER: the key of the question whether 03/04 is a day in March or in April

quotes       load_snapshot(desk) -> Snapshot           all offers as columns (desk.snapshot)
             compare(desk, snapshot, footing: ChosenFooting) -> Comparison      (desk.comparison)
             bracket_fits(snapshot, order_kg) -> flags      boards_without_a_bracket(comparison) -> int
             currencies_without_a_rate(comparison, indices) -> tuple[str, ...]
comparison   ChosenFooting(as_of, currency, per: Per, delivered, …)      Comparison: arrays aligned with the snapshot
standing     standings(comparison) -> a Standing by offer      standing_words(comparison, index, standing)
freight      where_freight_stands(snapshot, is_delivered) -> codes of FREIGHT_WORDS
choices      best_choices(comparison, among) -> flags       what nothing beats on both price and lead time
footing_words     footing_sentence(footing)      order_words(snapshot, index)      what every price of a list means
explanation  explain(desk, comparison, index) -> Explanation(offer, steps: tuple[Step, ...], reasons: tuple[str, ...],
                 notes: tuple[Note, ...], evidence: tuple[Evidence, ...], rate: Rate | None, verdict: dict)
             oldest_rate(comparison) -> date | None
offers_json  offer_objects(comparison, indices) -> list[dict]     the OFFER objects of `quotes --json`
offer_rows   offer_rows(comparison, indices) -> list[dict]       the same as rows with fixed columns, for export
export       flat(object) -> dict   write_csv(rows, path)   write_xlsx(rows, path, title, meaning)      no desk needed
grade_bands  grade_bands(comparison) -> dict[str, GradeBand(low, high, source, offered)]    every grade, offered or not
band_history band_history(comparison, grade) -> BandHistory(days, low, high, set_on)
yardsticks   yardsticks(desk) -> Yardsticks            levels, ratios and sensitivity as the user set them
             ratios_standing(ratios, day) -> dict      the ratio of each grade that holds on a day
sensitivity  sensitivity(desk) -> Sensitivity          set_sensitivity(desk, Sensitivity) -> Edit
ratios       set_ratio(desk, grade, low, high, on, source) -> Edit      ratios(desk) -> tuple[OwnRatio, ...]
             ratio_object(ratio) -> dict
levels       set_level(desk, grade, figure: LevelFigure, on: date, source, spread: Decimal | None) -> Edit
             levels(desk) -> tuple[Level, ...]         Level(id, grade, on, per_tonne, currency, source, spread)
             doubt_level(desk, grade, figure: LevelFigure, on) -> str | None     (level_doubt) what is odd about it
             remove_level(desk, level_id) -> Edit
             level_object(level) -> dict
price_index  read_index(path) -> Index                 carry_forward(desk, grade, index, name) -> Edit: of its level
rates        set_rate(desk, code, euros: Decimal, on: date) -> Edit
             doubt_rate(desk, code, euros, on) -> str | None     what is odd about it, as a sentence
             rate(desk, code, into, on: date) -> Rate | None
                 Rate(factor, on, source): 1 code = factor into; .said(day) in words
             currencies(desk) -> tuple[str, ...]

sample_requests   log_all(desk, Enquiry(vendors, grade, calipers_um, board, quantity, for_what, needed, on, contact))
                 -> LoggedAll(numbers, edit)            every vendor for every caliper, in one edit
             log(desk, vendor, grade, …) -> Logged(number, edit)      name_board(desk, number, board) -> Edit
sample_templates  save / forget -> Edit     templates(desk), template(desk, name): .used_on(day) -> Enquiry
sample_numbers    number_text(7) is 'S-0007', as on the label; number_said('S-0007') is 7
samples      samples(desk, as_of=None) -> tuple[Sample, ...]      outstanding first, most overdue on top
             sample(desk, number) -> Sample         events(desk, number) -> tuple[SampleEvent, ...]
             record(desk, number, kind: EventKind, on=None, until=None, note='', carrier='', tracking='') -> Edit
             chance_words(sample)                      what the record says of the next week
sample_life  EventKind: promised sent arrived refused cancelled lost chased
             SampleState: requested promised sent arrived tested refused cancelled lost; .outstanding
sample_json  sample_object(sample)      record_object(sample, checked, attachments)
readings     add(desk, number, property, values: Sequence[str], unit='', on=None, conditioned=None, method='') -> Edit
             remove(desk, reading_id, number) / take_back(desk, number, property, values=(), unit='') -> Edit
             readings(desk, number) -> tuple[Measured, ...]
claims       claim(desk, number, property, value, unit='', source='') / take_back -> Edit
             claims(desk, number) -> Claims(by_property, board, found, why_not)      typed ones before the price sheet's
sample_checks     check_sample(desk, number) -> SampleChecked(properties: tuple[PropertyChecked], board, why_not,
                 choices: the names of the boards it may be)
attachments  attach(desk, number, path) / take_off(desk, number, name) -> Edit      attachments, content, save_copy
contacts     set_contact(desk, vendor, name, mail, language) -> Edit      contact(desk, vendor) -> Contact
chasing      chases(desk, as_of=None) -> tuple[Chase(vendor, due, owed, contact)]
             draft(desk, vendor, folder, buyer='') -> Drafted(path, message)      an .eml; nothing is sent or recorded
             preview(desk, vendor) -> ChaseMessage(vendor, to, numbers, text)      signature(desk) -> str
             mark_chased(desk, numbers) / sign_as(desk, name) -> Edit
chase_templates   make_own(language) -> Path       a copy of the shipped words for the user to change
             template_in / original(language) -> ChaseTemplate      example(template) -> str
             keep_own(language, template) -> Path | None      None: as shipped, so no copy is kept
sample_papers     write_labels(desk, numbers, sheet, path)      write_calendar(desk, path) -> how many
             label_sheets() -> dict[key, name]
reporting    write_report(desk, path, footing=None, grade=None)      .pdf or .xlsx
             leave_papers(desk, folder) -> their paths      the report in both forms and a summary as text
waiting      WaitingRecord: usual(vendor) -> UsualTime | None, chance_within_a_week(vendor, waited)
             usual_words(days, low, high)
waits        turn_round(desk, as_of=None) / lead_times(desk, as_of=None) -> list[WaitRow]     all first, then by vendor
                 WaitRow(vendor | None, n, arrived, outstanding, median_days, low_days, high_days, method)
             wait_objects(rows) -> dict
measured_weights  measured_weights(desk) -> tuple[MeasuredWeight, ...]; ChosenFooting.measured_weight compares at them
weight_differences    weight_differences(desk, snapshot, footing, year_msf) -> tuple[WeightDifference, ...]
today        today(desk, comparison) -> Today(overdue: tuple[Sample], questions: tuple[OpenQuestion],
                 out_of_line: tuple[int], lapsing: tuple[int], chases: tuple[Chase])  offers: indices in the snapshot
verdicts     decide(desk, number, approved, words) -> Edit      on the board a sample is of
             approve(desk, vendor, product, for_what) / reject(desk, vendor, product, because) -> Edit
             verdicts(desk) -> tuple[BoardVerdict, ...]      Comparison.board_verdicts has them by offer
vendors      vendors(desk) -> tuple[str, ...]          by name
             vendor_meant(typed, known) -> VendorMeant(name, known, close)     whom a typed name means
demo         fresh_demo(folder: Path) -> str           the database's path; the desk then opens it
             default_folder() -> Path
keeping      backup(desk, path, replace=False)         restore(database, path) -> where what stood there is kept
             check(desk) -> tuple[str, ...]            sentences; empty: all well
"""
