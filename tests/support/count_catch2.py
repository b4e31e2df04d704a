"""Prints how many test cases passed and failed, from the XML report of a Catch2 program.

A missing or incomplete report counts as nothing passed: the program crashed.
"""

import sys
import xml.etree.ElementTree as tree

try:
    cases = tree.parse(sys.argv[1]).getroot().find("OverallResultsCases").attrib
    print(int(cases["successes"]) + int(cases["expectedFailures"]), int(cases["failures"]))
except (OSError, tree.ParseError, AttributeError):
    print("0 0")
