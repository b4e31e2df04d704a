#!/usr/bin/env python3
"""Reads lines of JSON, each a model, and prints for each whether the JSON Schema of the format accepts it:
"valid", or "invalid" and why. Fails if the schema itself is not valid."""
import json
import pathlib
import sys

import jsonschema

SCHEMA = pathlib.Path(__file__).resolve().parents[2] / "site/schema/model.schema.json"


def main() -> None:
    schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for line in sys.stdin:
        error = jsonschema.exceptions.best_match(validator.iter_errors(json.loads(line)))
        print("valid" if error is None else f"invalid {error.message[:200]!r}")


main()
