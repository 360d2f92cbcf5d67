"""The bibliography: every number in the rules names one of these keys."""

from enum import StrEnum

from pydantic import BaseModel, ConfigDict


class Standing(StrEnum):
    """What kind of authority a number has."""

    PUBLISHED = "published"
    COMMON_PRACTICE = "common practice, no source"
    CHOSEN = "chosen here"


class Source(BaseModel):
    """Where a number comes from, in enough words to find it."""

    model_config = ConfigDict(frozen=True)

    standing: Standing
    reference: str


CP = "cp"
"""Common practice of the trade, with no source."""
CH = "ch"
"""Chosen here, by the developers, as a default that a coach may change."""


def _published(reference: str) -> Source:
    return Source(standing=Standing.PUBLISHED, reference=reference)


SOURCES: dict[str, Source] = {
    CP: Source(standing=Standing.COMMON_PRACTICE, reference="common practice of strength coaches"),
    CH: Source(standing=Standing.CHOSEN, reference="chosen for Holdwell, a default"),
    "acsm2009": _published(
        "Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687-708, progression models"
    ),
    "acsm2026": _published(
        "American College of Sports Medicine 2026, overview of reviews, Med Sci Sports Exerc"
    ),
    "essentials2016": _published(
        "Haff & Triplett (eds.) 2016, Essentials of Strength Training and Conditioning, 4th ed., "
        "ch. 17"
    ),
    "epley1985": _published("Epley 1985, poundage chart, w(1 + r/30)"),
    "brzycki1993": _published("Brzycki 1993, J Phys Educ Recreat Dance 64(1), 36w/(37 - r)"),
    "lombardi1989": _published("Lombardi 1989, Beginning Weight Training, w r^0.10"),
    "mayhew1992": _published(
        "Mayhew et al. 1992, J Appl Sport Sci Res 6(4), 100w/(52.2 + 41.9 exp(-0.055 r))"
    ),
    "freylaw2010": _published("Frey Law & Avin 2010, Ergonomics 53(1):109-129, endurance time"),
    "glaister2008": _published(
        "Glaister et al. 2008, J Strength Cond Res 22(5):1597-1601, percentage decrement"
    ),
    "foster1998": _published("Foster 1998, Med Sci Sports Exerc 30(7):1164-1168, monotony"),
    "foster2001": _published("Foster et al. 2001, J Strength Cond Res 15(1):109-115, load"),
    "zourdos2016": _published(
        "Zourdos et al. 2016, J Strength Cond Res 30(1):267-275, repetitions in reserve"
    ),
    "zourdos2021": _published(
        "Zourdos et al. 2021, J Strength Cond Res 35(S1):S158-S165, repetitions at 70 %"
    ),
    "hackett2017": _published(
        "Hackett et al. 2017, J Strength Cond Res, accuracy of repetitions in reserve"
    ),
    "thomee1997": _published("Thomee 1997, Phys Ther 77(12):1690-1703, pain monitoring"),
    "silbernagel2007": _published(
        "Silbernagel et al. 2007, Am J Sports Med 35:897-906, pain-monitoring model"
    ),
    "farrar2001": _published("Farrar et al. 2001, Pain 94:149-158, change on an 11-point scale"),
    "salaffi2004": _published("Salaffi et al. 2004, Eur J Pain 8:283-291, meaningful change"),
    "serlin1995": _published("Serlin et al. 1995, Pain 61:277-284, bands 1-4, 5-6, 7-10"),
    "riebe2015": _published(
        "Riebe et al. 2015, Med Sci Sports Exerc 47(11):2473-2479, screening before training"
    ),
    "nhis2019": _published("CDC/NHIS 2019, MMWR, five symptoms of a heart attack"),
    "ahaacc2015": _published("AHA/ACC 2015, eligibility and collapse in exercise"),
    "scalco2016": _published("Scalco et al. 2016, dark urine and weakness after hard exercise"),
    "rawson2017": _published("Rawson et al. 2017, muscle breakdown after hard exercise"),
    "boast2016": _published("BOAST 2016, swollen hard limb after injury or effort"),
    "compartment2012": _published("Open Orthop J 2012, acute compartment signs"),
    "alla2010": _published("Alla et al. 2010, swollen discoloured arm after effort"),
    "murphy2023": _published(
        "Murphy & Bintcliffe 2023, BMJ, dislocation, hot joint, sudden loss of strength"
    ),
    "mccartney2018": _published("McCartney et al. 2018, signs in both arms or the legs"),
    "rees2021": _published("Rees et al. 2021, acute loss of lifting the arm"),
    "caterisano2019": _published(
        "Caterisano et al. 2019, Strength Cond J 41(3):1-23, return after inactivity"
    ),
    "bosquet2007": _published(
        "Bosquet et al. 2007, Med Sci Sports Exerc 39(8):1358-1365, two weeks of taper"
    ),
    "hopkins2000": _published("Hopkins 2000, Sports Med 30(1):1-15, typical error"),
    "isoholds2021": _published("Sports Med Open 2021, eight isometric field tests, CV 3.6-11.8 %"),
    "durbinkoopman2012": _published(
        "Durbin & Koopman 2012, Time Series Analysis by State Space Methods, local level"
    ),
    "ebben2011": _published("Ebben et al. 2011, J Strength Cond Res 25(10), push-up share"),
    "suprak2011": _published("Suprak et al. 2011, J Strength Cond Res 25(2), push-up share"),
    "petersen1989": _published("Petersen 1989, Am J Occup Ther 43(7), grip of both hands"),
    "rfc5545": _published("RFC 5545, iCalendar, section 3.3.5, local times in gaps and repeats"),
    "rfc4180": _published("RFC 4180 (2005), comma-separated values, section 2"),
    "owaspcsv": _published("OWASP, CSV Injection: which first characters a spreadsheet may run"),
    "owaspasvs": _published("OWASP ASVS 5.0 (2025), 1.2.10, formulas in exported tables"),
    "cldr": _published("Unicode CLDR, number symbols by language"),
    "wgs84": _published(
        "NIMA 2000, World Geodetic System 1984, TR8350.2, mean radius (place from memory)"
    ),
    "iso6709": _published(
        "ISO 6709:2022, positions as degrees and minutes without separators (place from memory)"
    ),
    "botapi": _published("the messaging platform's published Bot API documentation"),
}
