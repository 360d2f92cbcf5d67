"""The questions of the intake, its buttons, and what to send when an answer is unclear."""

from collections.abc import Mapping, Sequence
from datetime import date, time
from typing import Any

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.places import place_name
from bot.wording.tongue import Marked, Template, Tongue

QUESTIONS: Mapping[str, Template] = {
    "adult": "Are you 18 or older?",
    "guardian": (
        "Then a parent or guardian has to agree before we go on. "
        "Please send their name with a phone number or e-mail address."
    ),
    "reference": (
        "Some goals count in body weight, and there are two tables of them. "
        "Which one shall we hold you to, or shall {coach} decide?"
    ),
    "mass_kg": "What do you weigh? Tap the nearest, or write it, like 72.5 kg or 160 lb.",
    "months": (
        "How long have you trained your upper body regularly, without long gaps? "
        "Tap, or write it, like 8 months or 2 years."
    ),
    "untrained_days": (
        "When did you last train your upper body? Tap, or write it, like 10 days or 3 weeks."
    ),
    "weekdays": (
        "On which days can you train? Tap one to five of them, then Done. "
        "Or write them, like mon wed fri."
    ),
    "minutes": "How many minutes do you have on such a day? Tap, or write a number.",
    "equipment": (
        "What can you use there? Tap all that you have, then Done. "
        "A floor and a wall are taken for granted."
    ),
    "dumbbells": (
        "Which dumbbells do you have, each? Tap only weights that you have two of, then Done. "
        "Or write them in kg, like 4 6 8 10, or in pounds, like 10 15 20 lb."
    ),
    "kettlebells": (
        "Which kettlebells do you have, each? Tap them, then Done. Or write them, like 8 12 16."
    ),
    "barbell": (
        "Which weights can you put together on the barbell, bar included? "
        "Tap them, then Done. Or write them, like 10 15 20."
    ),
    "cable": (
        "Which weights can you set on the cable station? "
        "Tap them, then Done. Or write them, like 2.5 5 7.5 10."
    ),
    "bands": "Which bands do you have? Tap them, then Done.",
    "elsewhere": (
        "Do you train anything else every week? Write what and on which days, "
        "like climbing tue thu, swim sat."
    ),
    "event": (
        "Is there a goal or an event with a date? Write it, like 12 June 2027 spring meet. "
        "A goal without a date is fine too."
    ),
    "zone": (
        "Which big city is nearest to you? Tap, write its name, or share your location, "
        "so that messages come at your own hours."
    ),
    "session_at": (
        "At what time shall the session of the day reach you? Tap, or write it, like 6:30."
    ),
    "evening_at": (
        "When does your evening begin? The one reminder of an open session comes then. "
        "Tap, or write it, like 20:30."
    ),
    "language": "Which language shall I write in?",
    "units": "In which units do you write weights? A weight without a unit then counts as that.",
    "decimal_mark": "How do you write parts of a number?",
    "screen": (
        "Now your health. A yes is no verdict: {coach} then looks before you start. "
        "Which of these are true? Tap the numbers, then Done, or tap None of these."
    ),
    "injury": (
        "Which joint and side is that, what happened, and when? A line is enough. {coach} reads it."
    ),
}

TOPICS: Mapping[str, Template] = {
    "known_illness": (
        "I have an illness of the heart, lungs or kidneys, or of the metabolism, such as diabetes."
    ),
    "effort_signs": (
        "Effort has given me pain or pressure in the chest, or more breathlessness than it should."
    ),
    "faint": "In the last year I have fainted, or been dizzy enough to hold on to something.",
    "pregnant": "I am pregnant, or have given birth in the last six months.",
    "pressure_or_eyes": "I have high blood pressure, or something wrong with my eyes.",
    "out_or_operated": (
        "A shoulder, elbow, wrist or my neck was out of its joint or operated on, however long ago."
    ),
    "recent_injury": "I hurt a shoulder, an elbow, a wrist or my neck in the last 12 months.",
    "hurts_now": "One of these hurts now.",
}

LABELS: Mapping[str, Mapping[Any, Template]] = {
    "adult": {True: "18 or older", False: "Under 18"},
    "reference": {"men": "Men's table", "women": "Women's table", "own": "My coach decides"},
    "months": {
        0.0: "Not yet",
        3.0: "Under 6 months",
        6.0: "6 to 12 months",
        12.0: "1 to 3 years",
        36.0: "More than 3 years",
    },
    "untrained_days": {
        6: "Within the last week",
        14: "1 to 2 weeks ago",
        28: "2 to 4 weeks ago",
        90: "1 to 3 months ago",
        365: "Longer ago",
    },
    "equipment": {
        "box": "Box or sturdy chair",
        "high_bar": "Bar to hang from",
        "low_bar": "Low bar, hip height",
        "parallel_bars": "Parallel bars",
        "rings": "Rings or straps",
        "dumbbells": "Dumbbells",
        "kettlebells": "Kettlebells",
        "barbell": "Barbell",
        "bench": "Bench",
        "band": "Bands",
        "cable": "Cable station",
    },
    "language": {"en": "English", "es": "Español"},
    "units": {"kg": "Kilograms (kg)", "lb": "Pounds (lb)"},
    "decimal_mark": {".": "With a point: 12.5", ",": "With a comma: 12,5"},
    "bands": {"light": "Light", "medium": "Medium", "heavy": "Heavy"},
}
WEIGHED = frozenset({"dumbbells", "kettlebells", "barbell", "cable"})
NAMES: Mapping[str, Template] = {
    "adult": "Age",
    "guardian": "Guardian",
    "reference": "Table of goals",
    "mass_kg": "Body weight",
    "months": "Trained for",
    "untrained_days": "Last trained",
    "weekdays": "Days",
    "minutes": "Minutes",
    "equipment": "Equipment",
    "dumbbells": "Dumbbells",
    "kettlebells": "Kettlebells",
    "barbell": "Barbell",
    "cable": "Cable",
    "bands": "Bands",
    "elsewhere": "Trained elsewhere",
    "event": "Goal",
    "zone": "Time zone",
    "session_at": "Hour",
    "evening_at": "Evening reminder",
    "language": "Language",
    "units": "Units",
    "decimal_mark": "Parts of numbers",
    "screen": "Health",
    "injury": "Earlier injury",
}
UNCLEAR: Mapping[str, Template] = {
    "choice": "I did not get that. Please tap one of the buttons.",
    "mass": "That is no body weight I can use. Send it like 72.5 kg or 160 lb.",
    "mass_unit": "Is that kg or pounds? Send it with the unit, like 72.5 kg or 160 lb.",
    "span": "I need a length of time. Send it like 3 weeks, 8 months or 2 years.",
    "span_unit": "Is that days, weeks, months or years? Send it like 3 weeks or 2 years.",
    "span_long": "That is longer than I can use. Send it like 3 weeks, 8 months or 2 years.",
    "weekdays": "I need the names of days. Send them like mon wed fri.",
    "weekdays_dash": "Those two days, or all between? Send them like tue thu, or tue to thu.",
    "weekdays_many": "Five days a week are the most, so that there is rest. Choose one to five.",
    "minutes": "I can plan 15 to 180 minutes. Send a number of minutes, like 40.",
    "equipment": "I do not know all of that. Tap the buttons, or send names like band, dumbbells.",
    "weights": "I need weights between 0.5 and 300 kg. Send them with spaces, like 4 6 8 10.",
    "weights_range": (
        "Which weights are that, one by one? Send them like 4 6 8 10 12, or 4 to 12 in steps of 2."
    ),
    "weights_comma": (
        "Is that one weight or two? Send a point for parts and a space between weights: 2.5 5 7.5."
    ),
    "elsewhere": "I need a name and its days for each. Send it like climbing tue thu, swim sat.",
    "weights_unit": "Please send all in kg, or all in pounds, like 4 6 8 kg or 10 15 20 lb.",
    "bands": "Send light, medium, heavy, or more than one of them.",
    "event_date": (
        "I could not read the date. Send the month as a word, like 12 June 2027 spring meet, "
        "or tap No date."
    ),
    "event_past": "That day is over. Send a day to come, like 12 June 2027, or tap No date.",
    "event_city": (
        "That reads like a city; I ask for that next. What is your goal? Write it, or tap No date."
    ),
    "event_far": "I plan at most two years ahead. Send a nearer day, or the goal without a date.",
    "place": (
        "I do not know that city. Send the nearest big one, like Madrid, or share your location."
    ),
    "hour": "I need a time of day. Send it like 6:30, 18:00 or 6 pm.",
    "evening": "I need a time from 15:00 to 23:30. Send it like 20:30.",
    "topics": "Send the numbers that are true, like 2 5, or none.",
    "contact": "I need a name with a phone number or e-mail, like: Kim Example, 555 01 234.",
    "words": "A few words are needed, like: left shoulder, a fall, two years ago.",
    "none_chosen": "Nothing is chosen yet. Tap at least one, or go back.",
    "review": "Tap a button, or send the number of the line to change, or: looks right.",
    "agree": "Please tap one of the two buttons, or write agree or no.",
    "edit": (
        "Changing a message does not change an answer here. "
        "Go back, or change it in the list at the end."
    ),
    "which_place": "More than one place, or one close to it. Which is yours?",
    "which_hour": "In the morning, or in the second half of the day?",
}


def question(tongue: Tongue, key: str, *, coach: str, place: int, of: int, above: str = "") -> str:
    """Ask one question, below what was noted or why the last answer was unclear."""
    head = tongue.say("<i>Question {place} of about {of}</i>", place=place, of=of)
    return "\n".join([*([above, ""] if above else []), head, asked(tongue, key, coach=coach)])


def unclear(tongue: Tongue, why: str) -> str:
    """Say what to send instead."""
    return tongue.say(UNCLEAR[why])


def asked(tongue: Tongue, key: str, *, coach: str) -> str:
    """Write the question itself, with its list where it has one."""
    text = tongue.say("<b>{text}</b>", text=Marked(tongue.say(QUESTIONS[key], coach=coach)))
    if key != "screen":
        return text
    return "\n".join([text, "", *topic_lines(tongue)])


def topic_lines(tongue: Tongue) -> list[str]:
    """Number the health topics."""
    return [
        tongue.say("{n}. {topic}", n=n, topic=tongue.say(topic))
        for n, topic in enumerate(TOPICS.values(), start=1)
    ]


def answered(tongue: Tongue, key: str, value: Any) -> str:
    """Play an answer back in one line."""
    return tongue.say(
        "{name}: <b>{value}</b>", name=tongue.say(NAMES[key]), value=shown(tongue, key, value)
    )


def shown(tongue: Tongue, key: str, value: Any) -> str:
    """Write the value of an answer, not marked up."""
    if isinstance(value, list | tuple):
        return _many(tongue, key, value)
    if key == "event":
        return _event(tongue, value)
    if key in LABELS and value in LABELS[key]:
        return tongue.say(LABELS[key][value])
    if key == "untrained_days":
        return tongue.count(value, "{n} day ago", "{n} days ago")
    if key == "zone":
        return place_name(tongue, str(value))
    if key == "injury":
        return value or tongue.say("told to the coach in person")
    if key == "mass_kg":
        return tongue.load(value)
    if key == "months":
        return tongue.say("{n} months", n=tongue.number(value))
    return tongue.say("{n} min", n=value) if key == "minutes" else str(value)


def _many(tongue: Tongue, key: str, values: list[Any] | tuple[Any, ...]) -> str:
    if not values:
        return tongue.say("none of these") if key == "screen" else tongue.say("none")
    if key == "weekdays":
        return ", ".join(dates.short_weekday(tongue, one) for one in values)
    if key == "elsewhere":
        return ", ".join(
            f"{one['name']} {dates.short_weekday(tongue, one['weekday'] - 1)}" for one in values
        )
    if key == "screen":
        numbers = list(TOPICS)
        return tongue.say(
            "yes to {list}", list=", ".join(str(numbers.index(v) + 1) for v in values)
        )
    if key in LABELS:
        return ", ".join(tongue.say(LABELS[key][one]) for one in values)
    return f"{', '.join(tongue.load_figure(one) for one in values)} {tongue.units}"


def _event(tongue: Tongue, value: Mapping[str, Any]) -> str:
    goal = str(value["goal"])
    if value["on"] is None:
        return goal or tongue.say("no date")
    on = date.fromisoformat(value["on"])
    return f"{goal} ({dates.day_and_year(tongue, on)})"


def choice_label(tongue: Tongue, key: str, value: Any, *, is_chosen: bool = False) -> str:
    """Label the button of one answer."""
    mark = "✓ " if is_chosen else ""
    if key == "screen":
        return f"{mark}{list(TOPICS).index(value) + 1}"
    if key == "event":
        return label(tongue, "No date")
    if key == "elsewhere":
        return label(tongue, "Nothing else")
    if key == "injury":
        return label(tongue, "I tell my coach myself")
    is_one_of_many = key in {"weekdays", "equipment", "bands", *WEIGHED}
    one = [value] if is_one_of_many else value
    return label(tongue, "{mark}{value}", mark=mark, value=shown(tongue, key, one))


def done_label(tongue: Tongue) -> str:
    """Label the button that ends a choice of several."""
    return label(tongue, "Done")


def none_label(tongue: Tongue) -> str:
    """Label the button that says none of these."""
    return label(tongue, "None of these")


def back_label(tongue: Tongue) -> str:
    """Label the button to the question before."""
    return label(tongue, "‹ Back")


def hour_label(tongue: Tongue, at: str) -> str:
    """Label the button of an hour that may be meant, by its half of the day."""
    if time.fromisoformat(at) < time(12):
        return label(tongue, "{at} in the morning", at=at)
    return label(tongue, "{at} in the afternoon or evening", at=at)


def partly(tongue: Tongue, key: str, value: Sequence[Any], unsure: Sequence[str]) -> str:
    """Say what was understood of a list, and what is left to be looked at."""
    told = ", ".join(unsure)
    is_bar = key == "equipment" and bool({"bar", "barra"} & set(" ".join(unsure).split()))
    rest = (
        tongue.say("“{told}”: is that one to hang from, or a barbell?", told=told)
        if is_bar
        else tongue.say("I am not sure about “{told}”.", told=told)
    )
    if not value:
        return tongue.say("{rest} Tap what is right, then Done.", rest=Marked(rest))
    return tongue.say(
        "So far: {known}. {rest} Tap what is right, then Done.",
        known=shown(tongue, key, list(value)),
        rest=Marked(rest),
    )


def already_answered(tongue: Tongue, *, is_over: bool) -> str:
    """A button of a question that is behind us."""
    if is_over:
        return tongue.say("These questions are over, so nothing was changed. Write to your coach.")
    return tongue.say("That question is answered. You can change it in the list at the end.")
