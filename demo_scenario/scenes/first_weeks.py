"""The first four weeks: what fits naturally into them."""

from demo_scenario.scenes.steps import Film, Picture, SendFile, Speak, Tap, Wait, scene

FIRST_WEEKS = (
    # The coach shows how, and the athletes look.
    scene("Ruta", 0, "09:10", Picture("/howto push-up hold")),
    scene("Oda", 2, "12:30", "/how push-up hold"),
    scene("Bram", (2, 4), "07:10", Tap("How to"), Tap("", on="How to do which one?")),
    # Questions that an athlete asks of the bot.
    scene("Oda", 1, "12:10", "/week"),
    scene("Oda", 1, "12:20", "/today"),
    scene("Oda", 3, "12:10", "/why"),
    scene("Oda", 5, "11:00", "/history", Tap("", on="Your bests")),
    scene("Oda", 6, "11:00", "/season"),
    scene("Bram", 5, "10:00", "/help"),
    # Swaps, each with its reason.
    scene(
        "Bram",
        (4, 7),
        "07:15",
        Tap("Swap one"),
        Tap("", on="Which one shall I swap?"),
        Tap("I prefer another"),
        Tap("", on="Instead of", if_there=True),
    ),
    scene(
        "Sol",
        (7, 9),
        "07:40",
        Tap("Swap one"),
        Tap("", on="Which one shall I swap?"),
        Tap("No equipment for it"),
        Tap("", on="Instead of", if_there=True),
    ),
    scene(
        "Oda",
        (11, 14),
        "06:40",
        Tap("Swap one"),
        Tap("", on="Which one shall I swap?"),
        Tap("Does not feel right"),
        Tap("", on="Instead of", if_there=True),
    ),
    # Not today, each with its reason.
    scene("Bram", (11, 14), "07:10", Tap("Can't today"), Tap("No time")),
    scene("Noor", (8, 10), "18:20", Tap("Can't today"), Tap("Travelling")),
    scene("Juno", (22, 24), "07:15", Tap("Can't today"), Tap("No equipment")),
    scene("Nuria", (17, 21), "07:30", Tap("Hoy no puedo"), Tap("Enfermo")),
    # Clips and pictures, and how the coach answers.
    scene("Bram", 9, "19:00", Film(), Tap("", on="Which item is it?", if_there=True)),
    scene("Edda", 16, "18:30", Film(("both hands", "from the side"))),
    scene("Juno", 17, "19:50", Film(("is my back straight?",))),
    scene("Ruta", 17, "20:05", "/clips"),
    scene("Nuria", 10, "20:00", Film(("¿así está bien?",))),
    # What an athlete changes.
    scene("Bram", 6, "10:00", "/settings minutes 45"),
    scene("Juno", 20, "18:00", "/settings", Tap("Hour"), Tap("06:30", if_there=True)),
    scene("Nuria", 6, "18:00", "/settings"),
    # A pain by command, and other training.
    scene(
        "Juno",
        19,
        "19:00",
        "/pain",
        Tap("Elbow, outside"),
        Tap("Left"),
        Tap("2", on="0 to 10?"),
    ),
    scene("Nuria", 12, "19:00", "nadé 30 min, esfuerzo 4"),
    # The coach's own week.
    scene("Ruta", 2, "13:00", "/help"),
    scene("Ruta", 3, "20:30", "/note Bram asks every week; praise what he keeps back"),
    scene("Ruta", 4, "12:40", "/plan Edda", Tap("Next week"), Tap("This week")),
    scene("Ruta", 5, "10:30", "/group Juno Juniors"),
    scene("Ruta", 5, "10:40", "/group Oda Evening class"),
    scene("Ruta", 5, "10:50", "/group"),
    scene(
        "Ruta",
        6,
        "19:00",
        "/tell all A good first week. Write your numbers the same day, please.",
        Tap("Send to"),
    ),
    scene("Ruta", 10, "12:00", "/who Sol", Tap("Page to hand over", on="Sol")),
    scene("Ruta", 12, "10:00", "/hours 6:30-21:30"),
    scene("Ruta", 13, "10:00", "/season Oda main 12 June spring meet"),
    scene("Ruta", 13, "10:20", "/emergency 112"),
    scene("Ruta", 15, "12:20", "/plan Oda pin push-up hold it is what her meet asks"),
    scene(
        "Ruta",
        18,
        "12:20",
        "/who Oda",
        Tap("History"),
        Tap("Season"),
        Tap("Week's balance"),
    ),
    scene("Ruta", 19, "11:00", "/house"),
    scene("Ruta", 20, "11:00", "/audit Noor"),
    scene("Ruta", 22, "20:00", "/clips ask on Oda"),
    scene("Ruta", 23, "20:00", "/invite Tove"),
    # Everything of one's own as files.
    scene("Oda", 26, "18:00", "/export", Tap("Results (table)"), Tap("Season (calendar)")),
    scene("Ruta", 27, "18:00", "/export"),
)

LATER_FILES = SendFile(
    "team.csv",
    "name;stage;group;Push-up hold;Farmer carry\n"
    "Ilse;1;Evening class;60;80 @ 12\n"
    "Tilda;1;;60;80 @ 12\n",
)

__all__ = ["FIRST_WEEKS", "LATER_FILES", "Speak", "Wait"]
