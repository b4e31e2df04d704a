#pragma once
// What is wrong with a drawing or a table of joints and members, and what is passed over in it.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceLineOfFile = "line {line}"_phrase;
inline constexpr auto kPlaceTableRow = "row {row}"_phrase;
inline constexpr auto kMoreLikeThese = "more like these, not listed: {n}"_phrase;

// Files that can't be read.
inline constexpr auto kDrawingEmpty =
    "is empty: give a DXF, an SVG, or a table of joints and members"_phrase;
inline constexpr auto kDrawingTooLarge =
    "is larger than {size} MB: save the lines of the truss alone, as a drawing of their own"_phrase;
inline constexpr auto kDrawingUtf16 =
    "is no plain text, or UTF-16: save it as text in UTF-8"_phrase;
inline constexpr auto kDxfBinary = "is a binary DXF: save it as an ASCII DXF"_phrase;
inline constexpr auto kIsDwg =
    "is a DWG: save it as an ASCII DXF, of release 12 if there is a choice"_phrase;
inline constexpr auto kNotADrawing =
    "is neither a DXF nor an SVG nor a table: save the drawing as one of these"_phrase;
inline constexpr auto kTooManyLines =
    "straight lines: {n}, and at most {most} are read: choose the layers of the truss, or save "
    "its lines alone"_phrase;
inline constexpr auto kNoLines =
    "holds no straight lines that could be members: draw each member as a line between its "
    "joints"_phrase;

// DXF.
inline constexpr auto kNoGroupCode =
    "\"{text}\" stands where a group code belongs: the file is damaged here, so save it again"_phrase;
inline constexpr auto kNoEntities =
    "has no ENTITIES section: it is cut off, or it holds no drawing; save it again"_phrase;
inline constexpr auto kCutOff =
    "ends without its last line, EOF, so it is cut off: what came before is read"_phrase;
inline constexpr auto kEntityUnread = "this {kind} is left out: \"{text}\" is no coordinate"_phrase;
inline constexpr auto kEntityIncomplete = "this {kind} is left out: it lacks coordinates"_phrase;
inline constexpr auto kPolylineOpenEnded =
    "this POLYLINE has no SEQEND: its vertices up to here are read"_phrase;
inline constexpr auto kUnitElsewhere =
    "its header gives a unit that trusses are not drawn in ($INSUNITS {code}): type the unit"_phrase;

// Passed over, counted by what the file calls them.
inline constexpr auto kCurvesPassed =
    "{n} passed over, as only straight lines become members: draw the chord of each panel"_phrase;
inline constexpr auto kTextPassed =
    "{n} passed over, as texts and dimensions don't become members"_phrase;
inline constexpr auto kSpacePassed =
    "{n} passed over for leaving the plane (z is not 0): turn the truss into the xy plane"_phrase;
inline constexpr auto kPaperPassed =
    "{n} passed over for being on the paper around the drawing"_phrase;
inline constexpr auto kBlocksPassed =
    "{n} passed over within blocks: take blocks that hold members apart before saving"_phrase;
inline constexpr auto kOthersPassed =
    "{n} passed over, as only lines and marks of joints are read"_phrase;
inline constexpr auto kHiddenPassed = "{n} passed over for not being shown"_phrase;
inline constexpr auto kCopiesPassed =
    "{n} passed over, as copies are not followed: make lines of them before saving"_phrase;

// Layers.
inline constexpr auto kPlaceLayer = "layer \"{layer}\""_phrase;
inline constexpr auto kNoSuchLayer = "has no layer \"{layer}\": it has {layers}"_phrase;
inline constexpr auto kLayerHidden =
    "is switched off, so that lines are left out: {n}; name the layer to read them"_phrase;
inline constexpr auto kLayerNotChosen = "was not chosen, so that lines are left out: {n}"_phrase;
inline constexpr auto kLayerRead = "lines read: {n}"_phrase;

// SVG.
inline constexpr auto kNotSvg = "is no SVG: it begins with <{name}>"_phrase;
inline constexpr auto kXmlEnds =
    "the file ends within <{name}>, so it is cut off: what came before is read"_phrase;
inline constexpr auto kXmlEndsInTag =
    "the file ends within a tag, so it is cut off: what came before is read"_phrase;
inline constexpr auto kXmlWrongEnd =
    "</{name}> closes nothing that is open: what came before is read"_phrase;
inline constexpr auto kXmlBadTag = "this tag can't be read: what came before is read"_phrase;
inline constexpr auto kXmlTooDeep = "nested more than {n} deep: what came before is read"_phrase;
inline constexpr auto kShapeUnread = "this <{name}> is left out: \"{text}\" can't be read"_phrase;
inline constexpr auto kPathUnread =
    "this path is read up to \"{text}\", which can't be read"_phrase;
inline constexpr auto kTransformUnread =
    "\"{text}\" is no transformation that can be read: what it turns or moves is left out"_phrase;

// Tables of joints and members.
inline constexpr auto kTooManyRows =
    "rows of joints or of members: {n}, and at most {most} are read"_phrase;
inline constexpr auto kTableWithoutJoints =
    "holds no joints: each needs a row with its label, x and y"_phrase;
inline constexpr auto kTableWithoutMembers =
    "holds no members: each needs a row with the labels of its two joints, under the headings a "
    "and b"_phrase;
inline constexpr auto kRowNotUnderstood =
    "is neither a joint (label, x, y) nor a member (a, b): it is left out"_phrase;
inline constexpr auto kRowsOfNothing =
    "rows that belong neither to joints nor to members are left out: {n}, the first is row "
    "{row}"_phrase;
inline constexpr auto kNotForTables = "a table of joints and members has no lines to be joined, "
                                      "scaled or chosen: leave out tolerance, "
                                      "width and layers"_phrase;
inline constexpr auto kJointCoordinate =
    "joint \"{joint}\" is left out: \"{text}\" is no coordinate"_phrase;
inline constexpr auto kJointLabel = "joint \"{joint}\" is left out: its label {fault}"_phrase;
inline constexpr auto kJointTwice =
    "joint \"{joint}\" is in row {row} already: the one here is left out"_phrase;
inline constexpr auto kMemberLacksJoint =
    "member \"{a}\" to \"{b}\" is left out: there is no joint \"{joint}\""_phrase;
inline constexpr auto kMemberUnnamed =
    "\"{member}\" is left out: it does not name two of the joints"_phrase;
inline constexpr auto kMemberTwice =
    "member \"{a}\" to \"{b}\" is in row {row} already: it counts once"_phrase;
inline constexpr auto kMemberAtOneJoint =
    "member \"{a}\" to \"{b}\" is left out: it needs two different joints"_phrase;
inline constexpr auto kMemberWithoutLength =
    "member \"{a}\" to \"{b}\" is left out: its two joints lie on one spot"_phrase;
inline constexpr auto kHeadUnits = "x is headed in {x} and y in {y}: {x} is taken for both"_phrase;
inline constexpr auto kHeadUnitUnknown =
    "the unit \"{unit}\" of a heading is not known here: use one of {units}"_phrase;

} // namespace gusset::phrase
