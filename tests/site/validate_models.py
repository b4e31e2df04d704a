#!/usr/bin/env python3
"""Reads lines of JSON and prints for each whether the JSON Schema that is named, by default that of models, accepts
it: "valid", or "invalid" and why. Fails if the schema itself is not valid."""
import json
import pathlib
import sys

import jsonschema

SCHEMAS = pathlib.Path(__file__).resolve().parents[2] / "site/schema"


def main() -> None:
    name = sys.argv[1] if len(sys.argv) > 1 else "model"
    schema = json.loads((SCHEMAS / f"{name}.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for line in sys.stdin:
        error = jsonschema.exceptions.best_match(validator.iter_errors(json.loads(line)))
        print("valid" if error is None else f"invalid {error.message[:200]!r}")


main()
