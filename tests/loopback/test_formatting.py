"""HTML in, text and entities out; offsets checked by an independent reader of the same entities."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from telegram import MessageEntity

from demo_scenario.loopback.entities import parse_html, plain_text, utf16_units, with_commands
from demo_scenario.loopback.refusals import RefusedError
from tests.loopback.stage import ANA, on_stage


@pytest.mark.parametrize(
    ("source", "fault"),
    [
        # DERIVED: byte offsets counted by hand; "é" is two bytes, "💪" four
        ("<b>open", 'Can\'t find end tag corresponding to start tag "b"'),
        ("<b>a<i>b</b></i>", 'Unmatched end tag at byte offset 8, expected "</i>", found "</b>"'),
        ("done</b>", "Unexpected end tag at byte offset 4"),
        ("é💪 <x>", 'Unsupported start tag "x" at byte offset 7'),
        ("line<br/>", 'Unsupported start tag "br/" at byte offset 4'),
        ("3 < 5", 'Unsupported start tag "" at byte offset 2'),
        ("3 <5", "Unclosed start tag at byte offset 2"),
        ("<b", "Unclosed start tag at byte offset 0"),
        ("<a href='x.test'<b>", "Unclosed start tag at byte offset 0"),
        ("<b>x</b", "Unclosed end tag at byte offset 4"),
        ("<span>x</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'),
    ],
)
def test_broken_html_is_refused_with_the_place(source, fault):
    with pytest.raises(RefusedError) as refused:
        parse_html(source)
    assert refused.value.status == 400
    assert refused.value.description == f"Bad Request: can't parse entities: {fault}"


@pytest.mark.parametrize(
    ("source", "text", "entities"),
    [
        # DERIVED: offsets and lengths in UTF-16 units, counted by hand
        ("💪 <b>go</b>", "💪 go", [("bold", 3, 2)]),
        ("<b>a<i>b</i></b>", "ab", [("bold", 0, 2), ("italic", 1, 1)]),
        (" \n<u>x</u> ", "x", [("underline", 0, 1)]),
        ("<b> x </b>y", "x y", [("bold", 0, 2)]),
        ("a &lt; b &amp;&#33;&#x21;&nbsp;", "a < b &!!&nbsp;", []),
        ("<s></s>x", "x", []),
        ("1 > 0", "1 > 0", []),
        ("<blockquote expandable>x</blockquote>", "x", [("expandable_blockquote", 0, 1)]),
        ('<span class="tg-spoiler">x</span>', "x", [("spoiler", 0, 1)]),
        ("<a href='https://x.test/?a=1&amp;b=2'>x</a>", "x", [("text_link", 0, 1)]),
    ],
)
def test_html_becomes_text_and_entities(source, text, entities):
    parsed = parse_html(source)
    assert parsed.text == text
    assert [(each["type"], each["offset"], each["length"]) for each in parsed.entities] == entities


def test_a_links_address_is_decoded():
    (link,) = parse_html("<a href='https://x.test/?a=1&amp;b=2'>x</a>").entities
    assert link["url"] == "https://x.test/?a=1&b=2"


@on_stage
async def test_an_independent_library_cuts_the_same_words_out_by_our_offsets(stage):
    source = "💪 <b>40 s</b> ñ <i>💪💪 then <u>38</u></i>"
    sent = await stage.bot.send_message(ANA, source, parse_mode="HTML")
    # python-telegram-bot's own UTF-16 arithmetic, both ways
    assert sorted(sent.parse_entities().values()) == sorted(["40 s", "💪💪 then 38", "38"])
    assert sent.text_html == source
    assert stage.ana.sees()[0].html == source


@on_stage
async def test_entities_named_beside_the_text_move_with_it(stage):
    bold = MessageEntity(MessageEntity.BOLD, offset=3, length=2)  # DERIVED: two spaces, a letter
    sent = await stage.bot.send_message(ANA, "  xgo ", entities=[bold])
    assert (sent.text, sent.text_html) == ("xgo", "x<b>go</b>")
    status, _ = await stage.call("sendMessage", chat_id=ANA, text="x", entities=["bold"])
    assert status == 400


@given(st.text())
def test_units_are_counted_as_the_encoding_has_them(text):
    # DERIVED: two bytes a unit in UTF-16
    assert utf16_units(text) * 2 == len(text.encode("utf-16-le", "surrogatepass"))


@given(st.text(alphabet=st.characters(codec="utf-8")))
def test_escaped_text_comes_back_as_it_was(text):
    escaped = plain_text(text).html
    assert parse_html(escaped).text == text.strip()


@pytest.mark.parametrize(
    ("text", "commands"),
    [
        # DERIVED: UTF-16 offsets by hand
        ("/week", [(0, 5)]),
        ("💪 /why now", [(3, 4)]),
        ("45/40/38", []),
        ("/start abc /help@a_bot", [(0, 6), (11, 11)]),
        ("wrist 4/10", []),
    ],
)
def test_commands_are_marked_as_the_app_marks_them(text, commands):
    entities = with_commands(text).entities
    assert [(each["offset"], each["length"]) for each in entities] == commands
