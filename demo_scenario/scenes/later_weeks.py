"""From the fifth week to the end of the season."""

from datetime import time

from demo_scenario.scenes.first_weeks import LATER_FILES
from demo_scenario.scenes.steps import (
    Film,
    Late,
    Outage,
    SendBack,
    Silence,
    Speak,
    Tap,
    Wait,
    scene,
)

PRIVATE_WORDS = "some days i want to kill myself"

LATER_WEEKS = (
    # Week 5: a team by file, a second coach who trains, the house stands still for half an hour.
    scene("Ruta", 28, "12:00", LATER_FILES, Tap("Invite 2")),
    scene("Ruta", 29, "12:00", "/invite Milan"),
    scene("Ruta", 30, "12:00", "/standin Ruta Milan"),
    scene("Edda", 33, "10:00", "/settings weekdays mon wed sat"),
    scene(
        "Sol",
        34,
        "10:00",
        "/settings equipment",
        Tap("Rings or straps"),
        Tap("Done"),
        Tap("Done", if_there=True),
        Tap("Done", if_there=True),
    ),
    # Week 6: reasons that hurt, an early session, a break of one's own.
    scene(
        "Edda",
        (35, 37),
        "06:50",
        Tap("Swap one"),
        Tap("", on="Which one shall I swap?"),
        Tap("It hurts"),
        Tap("Forearm"),
        Tap("Left"),
        Tap("1", on="0 to 10?"),
    ),
    scene(
        "Pim",
        (37, 39),
        "06:20",
        Tap("Can't today"),
        Tap("Something hurts"),
        Tap("Upper back"),
        Tap("Both"),
        Tap("1", on="0 to 10?"),
    ),
    scene("Bram", (36, 38, 40), "17:00", "/today", Tap("Session now")),
    scene("Noor", 42, "12:00", "/pause 2 weeks"),
    scene("Noor", 52, "12:00", "/pause off"),
    scene("Ruta", 38, "12:00", "/pause Pim 1 week a holiday that he asked for"),
    scene("Ruta", 42, "20:00", "/pause Pim off back early"),
    # Week 7 and 8: the coach's plan.
    scene(
        "Ruta",
        43,
        "12:00",
        "/swap Sol",
        Tap("", on="Which movement of Sol"),
        Tap("", on="What instead of"),
        Tap("Yes, all the same", if_there=True),
        Tap("", on="Why? Tap", if_there=True),
        Tap("Yes, all the same", if_there=True),
    ),
    scene(
        "Ruta",
        44,
        "12:00",
        "/dose Oda push-up hold 3x40 she is ready for it",
        Tap("Yes, all the same", if_there=True),
    ),
    scene("Ruta", 45, "12:00", "/rest Bram left wrist he shakes it out after every set"),
    scene("Ruta", 56, "12:00", "/clear Bram three easy sessions, nothing there"),
    scene("Ruta", 46, "12:00", "/plan Noor ban bar hang her door frame is not safe"),
    scene(
        "Ruta",
        46,
        "18:00",
        "/plan Edda ban bar hang meant for Noor",
        Tap("Yes, all the same", if_there=True),
        Tap("Take back", on="Edda"),
    ),
    scene("Ruta", 47, "12:00", "/upkeep Sol on he climbs at weekends"),
    scene("Ruta", 48, "12:00", "/shown Noor she showed it on a clip", Tap("", on="Noor")),
    scene("Ruta", 49, "12:00", "/tests Juno", Tap("With the next session", if_there=True)),
    scene("Ruta", 50, "12:00", "/season Noor travel 3 January to 10 January"),
    scene("Ruta", 50, "12:10", "/season Edda other 14 March club day"),
    scene("Ruta", 50, "12:20", "/season Sol competing 1 May to 30 May"),
    scene("Ruta", 51, "10:00", "/plan Oda", Tap("Changed by you"), Tap("1", if_there=True)),
    # Week 9: files of numbers, there and back.
    scene(
        "Ruta",
        57,
        "12:00",
        "/standards",
        Wait(30),
        SendBack(
            "rulebook.yaml",
            "value: 48, unit: h",
            "value: 72, unit: h",
            "/standards we try it a week",
        ),
        Tap("Put in force"),
    ),
    scene(
        "Ruta",
        64,
        "12:00",
        "/standards",
        Tap("Versions of rulebook"),
        Tap("Back to the bot's own"),
        Tap("Put in force", if_there=True),
    ),
    scene("Ruta", 58, "12:00", "/movements"),
    # Practice: the coach sees what an athlete sees.
    scene(
        "Ruta",
        60,
        "14:00",
        "/practice",
        Wait(120),
        Tap("All as planned", if_there=True),
        Tap("15", if_there=True),
        "/practice end",
    ),
    # A new phone.
    scene("Ruta", 61, "12:00", "/invite Bram", Tap("Same person, new link")),
    # Owner: another coach, and back.
    scene("Ruta", 65, "12:00", "/move Juno to Milan", Tap("Move")),
    scene("Milan", 66, "12:00", "/roster"),
    scene(
        "Milan", 66, "12:10", "/who Juno", Tap("Write"), "Hello Juno, I look after you for a while."
    ),
    scene("Juno", 67, "19:00", "Hello Milan, are the carries ok at the gym?"),
    scene("Milan", 68, "12:00", Tap("Answer", on="Juno writes"), "Yes, with two equal weights."),
    scene("Ruta", 86, "12:00", "/move Juno to Ruta", Tap("Move")),
    # An athlete's words and notes.
    scene("Sol", 67, "19:00", Speak()),
    scene("Oda", 68, "19:00", Film(("carry, last set",))),
    scene("Edda", 68, "20:00", "/history push-up hold"),
    scene(
        "Edda",
        69,
        "11:00",
        "/export",
        Tap("Everything (data)"),
        Tap("Pain (table)"),
        Tap("Own words (table)", if_there=True),
        Tap("All in one archive", if_there=True),
    ),
    scene("Ruta", 70, "12:00", "/export Edda", Tap("Results (table)")),
    scene("Ruta", 71, "12:00", "/who Edda", Tap("Handover", if_there=True)),
    scene(
        "Ruta",
        72,
        "12:00",
        "/tell Evening class The hall is closed on Friday, train at home.",
        Tap("Send to"),
    ),
    scene("Pim", 93, "20:00", PRIVATE_WORDS),
    scene("Ruta", 107, "12:00", "/clear Pim he has help now, and his doctor agrees that he trains"),
    scene("Bram", 94, "12:00", "/settings units lb"),
    # Somebody changes an answer about health, and the coach looks.
    scene(
        "Noor",
        98,
        "12:00",
        "/settings health",
        Tap("7", on="Now your health"),
        Tap("Done"),
        "right wrist, a fall on the ice, last week",
    ),
    scene(
        "Ruta",
        112,
        "12:00",
        "/giveback Noor two weeks without pain, she asked",
        Tap("", on="What may", if_there=True),
    ),
    # Erasing: one asks in writing, one leaves.
    scene(
        "Ruta",
        150,
        "12:00",
        "/erase Tilda asked by letter on 10 March",
        Tap("Erase Tilda"),
        Tap("Erase for good"),
    ),
    scene("Ilse", 262, "12:00", "/leave", Tap("Yes, erase everything")),
    # Every fourth Sunday the decisions that need no thought, together.
    *(
        scene(
            "Ruta",
            day,
            "18:00",
            "/roster",
            Tap("Approve", if_there=True),
            Tap("Move up", if_there=True),
        )
        for day in range(55, 280, 28)
    ),
)

SILENCES = (Silence("Edda", 100, 112), Silence("Juno", 26, 26))
LATE = (Late("Oda", 16), Late("Sol", 44))
OUTAGES = (Outage(31, time(6, 45), 30),)
