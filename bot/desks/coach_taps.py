"""What a coach may tap, and which act it leads to."""

from collections.abc import Mapping
from typing import Any

from bot.acts import (
    answer_alert,
    answer_clip,
    approve_batch,
    ask_tests,
    balance_picture,
    change_season,
    change_stage,
    clear_pain,
    close_messages,
    coach_note,
    decide_proposal,
    decide_standard,
    emergency_number,
    erase_athlete,
    export,
    give_back,
    handover,
    history_picture,
    howto_media,
    intake,
    invite,
    invite_team,
    mark_movement,
    pause_athlete,
    plan_change,
    plan_edits,
    practice,
    replace_file,
    rest_place,
    review,
    season_picture,
    set_dose,
    set_group,
    set_hours,
    set_upkeep,
    settings_care,
    show_athlete,
    show_audit,
    show_coming,
    show_roster,
    swap_movement,
    team_pictures,
    tell_athlete,
    tell_many,
)
from bot.desks import athlete as athlete_desk
from bot.desks.coach_once import ONCE
from bot.desks.entry import TapAct, TapEntry
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from storage.records.people import Person, Role


def _practice_end(
    turn: Turn, person: Person, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    return practice.end(turn, person, menu_of=front.menu_of, acts=athlete_desk.TAPS)


ACTS: dict[str, TapAct] = {
    **settings_care.COACH_TAPS,
    **intake.COACH_TAPS,
    "coach.roster": show_roster.tapped,
    "coach.who": show_athlete.tapped,
    "coach.audit": show_audit.tapped,
    "coach.write": tell_athlete.ask_text,
    "coach.tell": tell_athlete.picked,
    "coach.never_mind": tell_athlete.never_mind,
    "coach.note": coach_note.picked,
    "coach.stage": change_stage.picked,
    "coach.stage_anyway": change_stage.anyway,
    "coach.stage_leave": change_stage.leave,
    "coach.stage_back": change_stage.take_back,
    **give_back.TAPS,
    **ask_tests.TAPS,
    **decide_standard.TAPS,
    **set_upkeep.TAPS,
    **show_coming.TAPS,
    **mark_movement.TAPS,
    **plan_edits.TAPS,
    **rest_place.TAPS,
    **pause_athlete.TAPS,
    **swap_movement.TAPS,
    **set_dose.TAPS,
    **plan_change.TAPS,
    "coach.season": change_season.picked,
    "coach.clear": clear_pain.picked,
    "coach.clear_ask": clear_pain.picked,
    "coach.clear_place": clear_pain.place_chosen,
    "coach.clear_assessed": clear_pain.assessed,
    "coach.clear_day": clear_pain.day_chosen,
    "coach.clear_stop": clear_pain.stop,
    "coach.relink": invite.relink,
    "coach.invite_other": invite.invite_other,
    **emergency_number.TAPS,
    **handover.TAPS,
    **set_group.TAPS,
    **tell_many.TAPS,
    **set_hours.TAPS,
    **invite_team.TAPS,
    **review.TAPS,
    **close_messages.TAPS,
    **approve_batch.TAPS,
    practice.END: _practice_end,
    **export.COACH_TAPS,
    **erase_athlete.COACH_TAPS,
    **answer_clip.TAPS,
    **howto_media.TAPS,
    **replace_file.TAPS,
    **history_picture.TAPS,
    **season_picture.TAPS,
    **balance_picture.TAPS,
    **team_pictures.TAPS,
    "alert.seen": answer_alert.seen,
    "proposal.accept": decide_proposal.accept,
    "proposal.decline": decide_proposal.decline,
}
TAPS: dict[str, TapEntry] = {
    name: TapEntry(Role.COACH, act, is_once=name in ONCE) for name, act in ACTS.items()
}
