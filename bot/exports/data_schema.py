"""The JSON Schema of an athlete's data: it lies beside this file, and goes along with the data."""

import json
from importlib.resources import files
from typing import Any

from bot.exports.values import AthleteData

FILE_NAME = "athlete_data.schema.json"
DIALECT = "https://json-schema.org/draft/2020-12/schema"


def made_schema() -> dict[str, Any]:
    """Return the schema as the values describe it; the file must say the same."""
    made = AthleteData.model_json_schema(mode="serialization")
    return {"$schema": DIALECT, **made}


def schema_text() -> str:
    """Return the schema file."""
    return files("bot.exports").joinpath(FILE_NAME).read_text(encoding="utf-8")


def written(schema: dict[str, Any]) -> str:
    """Write a schema as it stands in the file."""
    return json.dumps(schema, indent=2, ensure_ascii=False) + "\n"


def data_bytes(data: AthleteData) -> bytes:
    """Write an athlete's data."""
    return data.model_dump_json(indent=1).encode()
