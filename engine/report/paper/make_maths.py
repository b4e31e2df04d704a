#!/usr/bin/env python3
"""Makes maths.woff2, the typeface of the formulas in a printed working, anew from STIX Math. Wanted only when
the choice of letters changes.

On Debian 12:  apt-get install fonts-stix python3-fonttools python3-brotli
Then:          engine/report/paper/make_maths.py     (or with the path of STIXMath-Regular.otf)

It is cut to the letters listed here, with the taller roots and brackets that they grow into; it is given the
line height of an ordinary typeface, as browsers make every number in a formula as high as its line; and it is
renamed, as its licence asks of a changed typeface.
"""
import pathlib
import sys

from fontTools import subset
from fontTools.ttLib import TTFont

HERE = pathlib.Path(__file__).resolve().parent
NAME = "Gusset Maths"

ASCII = range(0x20, 0x7F)
LATIN_1 = range(0xA0, 0x100)
GREEK = [*range(0x391, 0x3A2), *range(0x3A3, 0x3AA), *range(0x3B1, 0x3CA), 0x3D1, 0x3D5]
# Browsers set a lone letter in a formula as the mathematical italic one.
ITALIC_LATIN = [*range(0x1D434, 0x1D455), *range(0x1D456, 0x1D468), 0x210E]
ITALIC_GREEK = range(0x1D6E2, 0x1D71C)
PUNCTUATION = [0x2013, 0x2018, 0x2019, 0x201C, 0x201D, 0x2026, 0x2032, 0x2033]
SIGNS = [ord(c) for c in "−×÷±√≤≥≈≠°·∙⋅∞∑∆Δ→←↑↓↔↕↖↗↘↙⇒∴⟲⟳"]
LETTERS = {*ASCII, *LATIN_1, *GREEK, *ITALIC_LATIN, *ITALIC_GREEK, *PUNCTUATION, *SIGNS}


def set_line_height(font, ascent=880, descent=240):
    font["hhea"].ascent, font["hhea"].descent, font["hhea"].lineGap = ascent, -descent, 0
    os2 = font["OS/2"]
    os2.sTypoAscender, os2.sTypoDescender, os2.sTypoLineGap = ascent, -descent, 0
    os2.usWinAscent, os2.usWinDescent = ascent, descent


def rename(font):
    for record in font["name"].names:
        if record.nameID in (1, 3, 4, 6, 16):
            record.string = NAME.replace(" ", "") if record.nameID == 6 else NAME
    if "CFF " in font:
        font["CFF "].cff.fontNames = [NAME.replace(" ", "")]
        top = font["CFF "].cff.topDictIndex[0]
        top.FullName = top.FamilyName = NAME


def main(source="/usr/share/fonts/opentype/stix-word/STIXMath-Regular.otf"):
    font = TTFont(source, recalcTimestamp=False)
    lacking = LETTERS - set(font.getBestCmap())
    if lacking:
        sys.exit("not in the typeface: " + " ".join(f"U+{code:04X}" for code in sorted(lacking)))
    options = subset.Options()
    options.layout_features = ["ssty"] # forms for subscripts
    options.hinting = False
    options.desubroutinize = False
    options.notdef_outline = True
    options.name_IDs = [0, 1, 2, 3, 4, 6, 13]
    options.drop_tables += ["DSIG", "GDEF", "GPOS", "FFTM"]
    options.flavor = "woff2"
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=LETTERS)
    cutter.subset(font)
    set_line_height(font)
    rename(font)
    target = HERE / "maths.woff2"
    subset.save_font(font, str(target), options)
    print(f"{target.name}: {len(LETTERS)} letters, {target.stat().st_size} bytes")


if __name__ == "__main__":
    main(*sys.argv[1:])
