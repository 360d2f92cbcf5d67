"""The coach's own movements and numbers: shown, replaced, refused, taken back."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from enum import Enum

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.movement_names import name_of
from bot.wording.pages import shortened
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.comparing import Changed, LibraryDifference
from scheduler.catalogue.values import Movement
from scheduler.training.rulebook_difference import ChangedNumber

LINES_MOST = 25  # [lines] ch: what is more is counted; the file itself has it all
PROBLEMS_MOST = 12  # [lines] ch: mended in one go, and the rest shows when it is sent again
VALUE_UNITS = 60  # [UTF-16 units] ch: a value, not a text
CONCERNED_MOST = 10  # [lines] ch: the rest is a count
TEXTS = frozenset({"how_to", "common_fault", "aliases"})
"""Fields whose change is named and not quoted."""

HOW: Mapping[str, Template] = {
    "movements": (
        "These are your movements. To change a file, send it back with the caption "
        "<code>/movements why you changed it</code>. It is checked first, you see what changes, "
        "and nothing is in force before your tap."
    ),
    "standards": (
        "These are your numbers. To change them, send the file back with the caption "
        "<code>/standards why you changed it</code>. It is checked first, you see what changes, "
        "and nothing is in force before your tap."
    ),
}


def how_to_replace(tongue: Tongue, *, kind: str) -> str:
    """Say how a file is replaced."""
    return tongue.say(HOW[kind])


def as_packaged(tongue: Tongue) -> str:
    """A file that nobody replaced."""
    return tongue.say("As it comes with the bot.")


def version(tongue: Tongue, *, at: datetime, who: str, why: str) -> str:
    """Write when a version was put in force, by whom and why; ``at`` is in the reader's zone."""
    return tongue.say(
        "{when} · {who}: “{why}”",
        when=dates.moment(tongue, at),
        who=who,
        why=shortened(why, 200),
    )


def versions(tongue: Tongue, *, name: str, lines: Sequence[str]) -> str:
    """List the versions of a file, the newest first."""
    head = tongue.say("<b>{name}</b>, the newest first:", name=name)
    return "\n".join([head, *lines, as_packaged(tongue)])


def versions_label(tongue: Tongue, name: str) -> str:
    """Label the button that shows the versions of a file."""
    return label(tongue, "Versions of {name}", name=name)


def back_to_label(tongue: Tongue, *, at: datetime) -> str:
    """Label the button that leads back to an earlier version."""
    return label(tongue, "Back to {when}", when=dates.moment(tongue, at))


def back_to_packaged_label(tongue: Tongue) -> str:
    """Label the button that leads back to the file of the package."""
    return label(tongue, "Back to the bot's own")


def taken_back(tongue: Tongue, *, at: datetime | None) -> str:
    """The reason on record when an earlier version is taken back."""
    if at is None:
        return tongue.say("back to the bot's own")
    return tongue.say("back to {when}", when=dates.moment(tongue, at))


def not_yaml(tongue: Tongue, *, name: str) -> str:
    """A file of another kind."""
    return tongue.say(
        "<b>{name}</b> is not a YAML file. Change one of the files that I sent and send it back.",
        name=name,
    )


def refused(tongue: Tongue, *, name: str, problems: Sequence[str]) -> str:
    """Say what is wrong, a line each; nothing was changed."""
    head = tongue.say("<b>{name}</b> is not taken, and nothing was changed:", name=name)
    lines = [tongue.say("· {problem}", problem=one) for one in problems[:PROBLEMS_MOST]]
    return "\n".join([head, *lines, *_more(tongue, len(problems) - PROBLEMS_MOST)])


def kept_no_more(tongue: Tongue) -> str:
    """The button's file was too long ago, or is of before a change of the bot."""
    return tongue.say("I no longer have that file. Send it again.")


def no_difference(tongue: Tongue, *, name: str) -> str:
    """The file means what is in force."""
    return tongue.say("<b>{name}</b> changes nothing: it is in force as it is.", name=name)


def difference(
    tongue: Tongue,
    *,
    name: str,
    lines: Sequence[str],
    concerned: Sequence[tuple[str, str]],
    has_reason: bool,
    is_numbers: bool = False,
) -> str:
    """Show what a file changes and whom it meets, and ask for the tap or the reason."""
    parts = [tongue.say("<b>{name}</b> would change:", name=name), *lines[:LINES_MOST]]
    parts += _more(tongue, len(lines) - LINES_MOST)
    if concerned:
        parts.append(tongue.say("<b>Planned, or trained in the last week</b>"))
        parts += [
            tongue.say("{name}: {what}", name=who, what=shortened(what, 120))
            for who, what in concerned[:CONCERNED_MOST]
        ]
        parts += _more(tongue, len(concerned) - CONCERNED_MOST)
    parts.append(
        tongue.say(
            "A number counts from the next session that is sent, and for weeks that are drawn "
            "from now on."
        )
        if is_numbers
        else tongue.say(
            "What is planned already stays. Weeks that are drawn from now on follow the new file."
        )
    )
    if not has_reason:
        parts.append(tongue.say("Write in one line why, and it is in force."))
    return "\n".join(parts)


def _more(tongue: Tongue, number: int) -> list[str]:
    return [tongue.say("and {n} more", n=number)] if number > 0 else []


def put_in_force_label(tongue: Tongue) -> str:
    """Label the button that puts a file in force."""
    return label(tongue, "Put in force")


def not_now_label(tongue: Tongue) -> str:
    """Label the button that leaves everything as it is."""
    return label(tongue, "Not now")


def left_as_it_is(tongue: Tongue) -> str:
    """The file was not taken."""
    return tongue.say("All right, nothing was changed.")


def in_force(tongue: Tongue, *, name: str) -> str:
    """The file is in force."""
    return tongue.say(
        "<b>{name}</b> is in force for weeks that are drawn from now on. "
        "Earlier versions can be taken back.",
        name=name,
    )


# what differs


def movements_differ(
    tongue: Tongue, found: LibraryDifference, successors: Mapping[str, Movement]
) -> tuple[str, ...]:
    """Write what a library adds, changes and removes."""
    return (
        *(tongue.say("+ {name}", name=name_of(tongue, one)) for one in found.added),
        *(_changed(tongue, one) for one in found.changed),
        *(_removed(tongue, one, successors.get(one.key)) for one in found.removed),
    )


def _changed(tongue: Tongue, one: Changed) -> str:
    fields = "; ".join(_field(tongue, one, name) for name in one.fields)
    line = tongue.say("~ {name}: {fields}", name=name_of(tongue, one.before), fields=Marked(fields))
    if one.before.demands - one.after.demands:
        care = tongue.say("<b>Fewer demands: pain there would no longer take it out.</b>")
        return f"{line}\n{care}"
    return line


def _field(tongue: Tongue, one: Changed, name: str) -> str:
    if name in TEXTS:
        return tongue.say("{field}", field=name)
    return tongue.say(
        "{field} {before} → {after}",
        field=name,
        before=shortened(_value(getattr(one.before, name)), VALUE_UNITS),
        after=shortened(_value(getattr(one.after, name)), VALUE_UNITS),
    )


def _value(value: object) -> str:
    if isinstance(value, Enum):
        return str(value.value)
    if isinstance(value, frozenset | tuple):
        return ", ".join(sorted(_value(one) for one in value)) or "–"
    return "–" if value is None else str(value)


def _removed(tongue: Tongue, one: Movement, successor: Movement | None) -> str:
    if successor is None:
        return tongue.say(
            "− {name}: another of its kind comes in its place", name=name_of(tongue, one)
        )
    return tongue.say(
        "− {name}: {successor} comes in its place",
        name=name_of(tongue, one),
        successor=name_of(tongue, successor),
    )


def numbers_differ(tongue: Tongue, changes: Sequence[ChangedNumber]) -> tuple[str, ...]:
    """Write which numbers differ."""
    return tuple(
        tongue.say(
            "{place}: {before} → {after}",
            place=one.place,
            before=shortened(one.before or "–", VALUE_UNITS),
            after=shortened(one.after or "–", VALUE_UNITS),
        )
        for one in changes
    )


# why a file is not taken


def lasting(tongue: Tongue, *, key: str, field: str, found: str, expected: str) -> str:
    """A key became another movement."""
    return tongue.say(
        "{key}, {field}: expected {expected} as before, found {found}. What was trained under "
        "this key would mean something else: give the new movement a key of its own.",
        key=key,
        field=field,
        expected=expected,
        found=found,
    )


def standard_without_movement(tongue: Tongue, *, place: str, keys: Sequence[str]) -> str:
    """A standard asks for movements that would all be gone."""
    return tongue.say(
        "{place} asks for one of {keys}: keep one of them, or change the standards first.",
        place=place,
        keys=", ".join(keys),
    )


def unknown_movement(tongue: Tongue, *, place: str, key: str) -> str:
    """A standard names a movement that nobody knows."""
    return tongue.say(
        "{place}, movements: expected a key of your movements, found {key}.", place=place, key=key
    )


def had_today(tongue: Tongue, *, name: str, movement: str) -> str:
    """Somebody has a removed movement in a session that is out."""
    return tongue.say(
        "{name} has {movement} in the session that is out. Send the file again once it is closed.",
        name=name,
        movement=movement,
    )


def given_back(tongue: Tongue, *, name: str, movement: str) -> str:
    """A change would bring back what is left out for pain."""
    return tongue.say(
        "{movement} is left out or eased for {name} because something hurts, and this change "
        "would bring it back. Send the file again once that is cleared.",
        name=name,
        movement=movement,
    )
