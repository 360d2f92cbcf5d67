"""The catalogue against the code: every text of the bot, in every language that it speaks."""

import ast
import json
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog
from typer.testing import CliRunner

from bot.cli import app
from bot.wording.catalogue import upkeep
from bot.wording.catalogue.extraction import Source, occurrences, sources, unmarked
from bot.wording.catalogue.spoken import (
    MESSAGES,
    SOURCE_LANGUAGE,
    SPOKEN,
    SUBJECTS,
    read_catalogue,
    translations_of,
)
from bot.wording.catalogue.upkeep import CODE, Entry, entries_of, faults, updated
from bot.wording.tongue import Tongue

TRANSLATED = [one for one in SPOKEN if one != SOURCE_LANGUAGE]
EACH = pytest.mark.parametrize(
    ("language", "subject"), [(one, subject) for one in TRANSLATED for subject in SUBJECTS]
)


def found_in(code: str) -> set[str | tuple[str, str]]:
    return {one.text for one in occurrences([Source("made_up.py", ast.parse(code))])}


def spanish(**texts: str) -> Catalog:
    catalogue = Catalog(locale="es")
    for english, said in texts.items():
        catalogue.add(english, said)
    return catalogue


@EACH
def test_the_catalogue_holds_what_the_code_says_and_nothing_else(language, subject):
    assert faults(read_catalogue(language, subject), entries_of(subject)) == []


def test_every_template_comes_from_a_literal_or_from_what_is_annotated_as_one():
    assert unmarked(sources(CODE)) == []


def test_templates_are_found_at_calls_in_tables_in_fields_and_in_results():
    code = """
class Tongue:
    def say(self, template: Template, **fillings): ...
    def count(self, number, one: Template, many: Template): ...
@dataclass
class Command:
    name: str
    about: Template
def label(tongue, template: Template): ...
def headed(tongue, *, title: Template): ...
Rows = Mapping[str, tuple[Template, ...]]
ROWS: Rows = {"not this": ("a row", "another row")}
PAIRS: tuple[tuple[str, Template], ...] = (("nor this", "a pair"),)
def chosen(kind) -> Template:
    return "a result" if kind else "another result"
tongue.say("one choice" if x else "other choice", name="a filling")
tongue.count(n, "{n} day", "{n} days")
label(tongue, "on a button"); headed(tongue, title="a title")
Command("today", "what is next")
words.get(key, "a default of no template")
tongue.say(ROWS.get(key, "a fallback"))
tongue.say("<b>{name}</b> · {n}")
turn.say(person, "said already")
self.turn.say(person, "said already too")
clips.count(tongue, facts.clips, "of another function")
"""
    assert found_in(code) == {
        *("a row", "another row", "a pair", "a result", "another result", "one choice"),
        *("other choice", ("{n} day", "{n} days"), "on a button", "a title", "what is next"),
        "a fallback",
    }


def test_a_table_without_its_annotation_is_noticed():
    code = """
class Tongue:
    def say(self, template: Template, **fillings): ...
WORDS = {"a": "a word that nobody finds"}
tongue.say(WORDS[key])
"""
    assert unmarked([Source("made_up.py", ast.parse(code))]) == ["made_up.py:5: WORDS[key]"]


@pytest.mark.parametrize(
    ("texts", "wanted", "fault"),
    [
        ({}, "Noted.", "missing: 'Noted.'"),
        ({"Noted.": ""}, "Noted.", "empty: 'Noted.'"),
        ({"Hello {name}.": "Hola {nombre}."}, "Hello {name}.", "other names in braces"),
    ],
    ids=["missing", "empty", "other names"],
)
def test_what_is_missing_empty_or_filled_otherwise_is_a_fault(texts, wanted, fault):
    found = faults(spanish(**texts), [Entry(wanted)])
    assert len(found) == 1
    assert found[0].startswith(fault)


def test_what_is_doubtful_or_no_longer_said_is_a_fault():
    catalogue = spanish(**{"Noted.": "Anotado.", "Gone.": "Fuera."})
    catalogue["Noted."].flags.add("fuzzy")
    assert faults(catalogue, [Entry("Noted.")]) == ["not used: 'Gone.'", "doubtful: 'Noted.'"]


def test_a_plural_may_leave_its_number_out_but_no_other_name():
    catalogue = Catalog(locale="es")
    catalogue.add(("1 rep of {name}", "{n} reps of {name}"), ("una de {name}", "{n} de {name}"))
    assert faults(catalogue, [Entry(("1 rep of {name}", "{n} reps of {name}"))]) == []
    catalogue["1 rep of {name}"].string = ("una", "{n} de {name}")
    assert len(faults(catalogue, [Entry(("1 rep of {name}", "{n} reps of {name}"))])) == 1


def test_a_catalogue_brought_in_line_keeps_translations_and_drops_what_is_gone():
    catalogue = spanish(**{"Noted.": "Anotado.", "Gone.": "Fuera."})
    catalogue["Noted."].user_comments = [upkeep.SAFETY]
    fresh = updated(catalogue, [Entry("Noted."), Entry("New.")])
    assert {one.id: one.string for one in fresh if one.id} == {"Noted.": "Anotado.", "New.": ""}
    assert fresh["Noted."].user_comments == [upkeep.SAFETY]


def test_the_command_takes_translations_in_and_lists_what_is_not_said(tmp_path):
    given = tmp_path / "more.json"
    given.write_text(json.dumps({"Noted.": "Anotado.", "Not said.": "Nada."}), "utf-8")
    done = CliRunner().invoke(app, ["catalogue", str(given), "--into", str(tmp_path)])
    written = (tmp_path / "messages_es.po").read_text("utf-8")
    assert 'msgid "Noted."\nmsgstr "Anotado."' in written
    assert "no text of the bot, left out: 'Not said.'" in done.output


@pytest.mark.parametrize("written", ["[1, 2]", "{", '{"Noted.": 3}'])
def test_a_file_that_is_no_object_of_texts_is_refused(tmp_path, written):
    given = tmp_path / "more.json"
    given.write_text(written, "utf-8")
    before = (Path(upkeep.HERE) / "messages_es.po").read_bytes()
    assert CliRunner().invoke(app, ["catalogue", str(given)]).exit_code == 2
    assert (Path(upkeep.HERE) / "messages_es.po").read_bytes() == before


@pytest.mark.parametrize("language", TRANSLATED)
def test_plurals_follow_the_rule_of_the_language(language):
    # PUBLISHED gettext manual, plural forms: Spanish has two, n != 1.
    assert read_catalogue(language, MESSAGES).num_plurals == 2
    forms = {1: "one", 0: "many", 2: "many", 21: "many"}
    tongue = Tongue(language, translations=translations_of(language))
    assert {n: tongue.count(n, "one", "many") for n in forms} == forms
