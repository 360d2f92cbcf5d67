"""A coach's groups: whom they hold, how one is chosen, what changed."""

from collections.abc import Mapping

from bot.wording.labels import label
from bot.wording.tongue import Tongue

EXAMPLE = "/group Robin Juniors"


def overview(tongue: Tongue, counts: Mapping[str, int], *, without: int) -> str:
    """List the groups with how many are in each, and how to change them."""
    lines = [tongue.say("<b>Groups</b>")]
    lines += [tongue.say("{group}: {n}", group=group, n=n) for group, n in counts.items()]
    if without:
        lines.append(tongue.say("In no group: {n}", n=without))
    lines.append(
        tongue.say(
            "Put somebody in a group like this:\n<code>{example}</code>\n"
            "Out of it with <code>/group Robin none</code>.",
            example=EXAMPLE,
        )
    )
    return "\n".join(lines)


def choose(tongue: Tongue, *, name: str, group: str) -> str:
    """Ask which group an athlete goes into."""
    if group:
        return tongue.say("{name} is in {group}. Which group?", name=name, group=group)
    return tongue.say("{name} is in no group. Which group?", name=name)


def group_label(tongue: Tongue, group: str) -> str:
    """Label the button of a group."""
    return label(tongue, "{group}", group=group)


def new_label(tongue: Tongue) -> str:
    """Label the button for a group that is not there yet."""
    return label(tongue, "New group")


def none_label(tongue: Tongue) -> str:
    """Label the button that takes an athlete out of a group."""
    return label(tongue, "No group")


def open_label(tongue: Tongue) -> str:
    """Label the button on an athlete's screen."""
    return label(tongue, "Group")


def write_name(tongue: Tongue, *, name: str) -> str:
    """Ask for the name of a new group."""
    return tongue.say("Write the name of the group for {name}, such as Juniors.", name=name)


def changed(tongue: Tongue, *, name: str, old: str, new: str) -> str:
    """Confirm the group."""
    if new and old:
        return tongue.say("{name}: {old} → {new}.", name=name, old=old, new=new)
    if new:
        return tongue.say("{name} is in {new} now.", name=name, new=new)
    return tongue.say("{name} is in no group any more.", name=name)


def same(tongue: Tongue, *, name: str, group: str) -> str:
    """Nothing to change."""
    if group:
        return tongue.say("{name} is in {group} already.", name=name, group=group)
    return tongue.say("{name} is in no group already.", name=name)


def bad_name(tongue: Tongue, *, most: int) -> str:
    """The name cannot be a group's."""
    return tongue.say(
        "A group has a name of 1 to {most} characters that is not “all” and no command. "
        "Send it like this:\n<code>{example}</code>",
        most=most,
        example=EXAMPLE,
    )


def put_back_label(tongue: Tongue) -> str:
    """Label the button that takes the change back."""
    return label(tongue, "Put back")


def changed_since(tongue: Tongue, *, name: str) -> str:
    """Somebody changed the group meanwhile."""
    return tongue.say("The group of {name} was changed since, so I left it.", name=name)


def unknown(tongue: Tongue, *, asked: str, groups: tuple[str, ...]) -> str:
    """No such group; name those there are."""
    if not groups:
        return tongue.say(
            "You have no groups yet. Make one like this:\n<code>{example}</code>", example=EXAMPLE
        )
    return tongue.say(
        "There is no group “{asked}”. Your groups: {groups}. For example:\n"
        "<code>/roster {first}</code>",
        asked=asked,
        groups=", ".join(groups),
        first=groups[0],
    )


def heading(tongue: Tongue, *, group: str, count: int) -> str:
    """Head the athletes of a group on the roster."""
    if not group:
        return tongue.say("<i>No group</i> · {count}", count=count)
    return tongue.say("<i>{group}</i> · {count}", group=group, count=count)
