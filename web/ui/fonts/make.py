#!/usr/bin/env python3
"""Makes the embedded typefaces anew from the full ones. Wanted only when the choice of letters changes.

On Debian 12:  apt-get install fonts-inter fonts-dejavu-core python3-fonttools
Then:          web/ui/fonts/make.py            (or with the folders of Inter's and DejaVu's files)

Three things are done to Inter, which its licence allows: it is cut to the letters listed here, its
digits are those of one width (columns of figures must line up, and the drawing library knows no
OpenType features), and hinting is dropped, which the rasteriser would not read.
"""
import pathlib
import sys

from fontTools import subset
from fontTools.ttLib import TTFont

HERE = pathlib.Path(__file__).resolve().parent

ASCII = range(0x20, 0x7F)
LATIN_1 = range(0xA0, 0x100)
LATIN_EXTENDED_A = range(0x100, 0x180)
GREEK = [*range(0x391, 0x3A2), *range(0x3A3, 0x3AA), *range(0x3B1, 0x3CA), 0x3D1, 0x3D5]
CYRILLIC = [0x401, *range(0x410, 0x450), 0x451]
PUNCTUATION = [0x2009, 0x202F, 0x2010, 0x2011, 0x2012, 0x2013, 0x2014, 0x2018, 0x2019, 0x201A,
               0x201C, 0x201D, 0x201E, 0x2022, 0x2026, 0x2032, 0x2033, 0x2039, 0x203A]
SUPERSCRIPTS = [0x2070, *range(0x2074, 0x207F), *range(0x2080, 0x208F)]
SIGNS = [ord(c) for c in "−×÷±√≤≥≈≠°·∙∞∑∆Δ→←↑↓↔↕⇒∴⟲⟳✓△▲▼◯"]

TEXT = {*ASCII, *LATIN_1, *LATIN_EXTENDED_A, *GREEK, *CYRILLIC, *PUNCTUATION, *SUPERSCRIPTS, *SIGNS}
HEADINGS = {*ASCII, *LATIN_1, *GREEK, *PUNCTUATION, *(ord(c) for c in "−√≈≤≥≠∞∑")}
# Whatever else a heading needs is merged in from the text face.
VARIABLES = {*ASCII, *GREEK, 0xB7}


def covered(font):
    return set(font.getBestCmap())


def cut(source, letters, target, names=(0, 1, 2, 13, 14)):
    """Writes the letters of `source` that it has, with these entries of its name table (13: the licence's own words);
    returns those it lacks."""
    font = TTFont(source, recalcTimestamp=False)
    wanted = letters & covered(font)
    digits = tabular_digits(font)
    options = subset.Options()
    options.layout_features = []
    options.hinting = False
    options.desubroutinize = True
    options.notdef_outline = True
    options.name_IDs = list(names)
    options.drop_tables += ["STAT", "meta", "DSIG", "GDEF", "GPOS", "GSUB", "MATH", "gasp", "FFTM"]
    for table in font["cmap"].tables:
        for code, glyph in digits.items():
            if code in table.cmap:
                table.cmap[code] = glyph
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=wanted)
    cutter.subset(font)
    subset.save_font(font, str(target), options)
    print(f"{target.name}: {len(wanted)} letters, {target.stat().st_size} bytes")
    return letters - wanted


def tabular_digits(font):
    """Digit → its glyph of the common width, where the font has such."""
    if "GSUB" not in font:
        return {}
    table = font["GSUB"].table
    swaps = {}
    for record in table.FeatureList.FeatureRecord:
        if record.FeatureTag == "tnum":
            for index in record.Feature.LookupListIndex:
                for part in table.LookupList.Lookup[index].SubTable:
                    swaps.update(getattr(part, "ExtSubTable", part).mapping)
    names = font.getBestCmap()
    return {code: swaps[names[code]] for code in range(0x30, 0x3A) if names[code] in swaps}


def main(inter="/usr/share/fonts/opentype/inter", dejavu="/usr/share/fonts/truetype/dejavu"):
    inter, dejavu = pathlib.Path(inter), pathlib.Path(dejavu)
    lacking = cut(inter / "Inter-Regular.otf", TEXT, HERE / "inter-regular.otf")
    cut(inter / "Inter-SemiBold.otf", HEADINGS, HERE / "inter-semibold.otf")
    cut(inter / "Inter-Italic.otf", VARIABLES, HERE / "inter-italic.otf")
    # Its licence is longer than its letters: the page has it beside it, as a file.
    nowhere = cut(dejavu / "DejaVuSans.ttf", lacking, HERE / "dejavu-signs.ttf", names=(0, 1, 2, 14))
    if nowhere:
        sys.exit("in neither typeface: " + " ".join(f"U+{code:04X}" for code in sorted(nowhere)))


if __name__ == "__main__":
    main(*sys.argv[1:])
