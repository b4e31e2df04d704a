"""Names the tests that failed, one per line with the first words of why, from a folder of reports:

NAME.xml by a Catch2 program, NAME.tap by node's test runner. Of a Catch2 program that crashed, the
report ends in the middle; then the test it was in is named.
"""

import pathlib
import re
import sys
import xml.etree.ElementTree as tree

MOST_WORDS = 300  # letters of each reason


def said(element):
    if element.tag == "Expression":
        where = f'{element.get("filename")}:{element.get("line")}'
        return f'{where}: {" ".join((element.findtext("Original") or "").split())} is not so: ' \
               f'{" ".join((element.findtext("Expanded") or "").split())}'
    return " ".join((element.text or "").split())


def catch2(path):
    case, reasons = None, []
    try:
        for event, element in tree.iterparse(path, events=("start", "end")):
            if element.tag == "TestCase" and event == "start":
                case, reasons = element.get("name"), []
            elif event == "end" and element.tag in ("Expression", "Failure", "Exception", "FatalErrorCondition"):
                if element.get("success") != "true":
                    reasons.append(said(element))
            elif event == "end" and element.tag == "TestCase":
                result = element.find("OverallResult")
                if result is not None and result.get("success") != "true":
                    yield case, reasons[0] if reasons else ""
                case = None
    except tree.ParseError:
        yield case or "between two tests", "the program ended here"


def tap(path):
    name = told = None
    for line in path.read_text(errors="replace").splitlines():
        text = line.strip()
        if begun := re.match(r"not ok \d+ - (.*)", text):
            name, told = begun.group(1), ""
        elif name and told == "error: |-":
            told = text
        elif name and told == "" and text.startswith("error: "):
            told = text
        elif name and text == "...":
            yield name, told.removeprefix("error: ")
            name = None


def main():
    for path in sorted(pathlib.Path(sys.argv[1]).iterdir()):
        found = catch2(path) if path.suffix == ".xml" else tap(path) if path.suffix == ".tap" else ()
        for name, reason in found:
            print(f"  {path.stem}: {name}: {reason[:MOST_WORDS]}")


main()
