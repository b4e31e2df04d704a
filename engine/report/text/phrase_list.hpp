#pragma once
// What the working and the results can say: a name a sentence, with the parts that it is given.

namespace gusset {

enum class Phrase {
    // Lists: the last joint of "A, B and C".
    ListTwo,  // {a} {b}
    ListMore, // {a} {b}: before the last two
    OneMember,
    ManyMembers, // {n}
    OneReaction,
    ManyReactions, // {n}

    // The verdict.
    NothingDrawn,
    NoMember,
    NoSupport,
    LooseJoint,     // {joint}
    LooseJoints,    // {joints}
    UnstableTooFew, // {m} {r} {sum} {j} {need} {missing}
    UnstableEnough, // {m} {r} {j}
    BalancedAnyway,
    AtRest,
    UnstableAndRedundant,  // {redundants}
    Indeterminate,         // {degree} {members} {reactions} {joints}
    IndeterminateExternal, // {external}
    IndeterminateInternal, // {internal}
    IndeterminateBoth,     // {external} {internal}
    NeedsStiffness,
    WithoutThese,        // {list}
    WithoutTheseAndMore, // {list} {n}
    ReactionAlong,       // {joint}
    ReactionX,           // {joint}
    ReactionY,           // {joint}
    TheMember,           // {member}
    Determinate,         // {members} {reactions} {joints}
    LargestTension,      // {value} {member}
    LargestCompression,
    AllForcesZero,
    NotAccurate,
    StiffnessesDiffer,        // {member} {times}
    StandsOut,                // {member} {times}
    CloseToMechanism,         // {joint} {times} {member}
    CloseToMechanismReaction, // {joint} {times}
    BarelyHeld,               // {joint} {times}
    FiguresLeft,              // {n}
    OrdinateFiguresLeft,      // {n}
    NoOrdinateFigures,
    MovementFiguresLeft, // {n}
    ForceBelowBound,     // {member} {bound}
    ForcesBelowBound,    // {n} {member} {bound}
    ReactionBelowBound,  // {joint} {bound}
    ReactionsBelowBound, // {n} {joint} {bound}
    OneNegligible,
    SomeNegligible,   // {n}
    FiguresInWorking, // {bound}
    Residual,         // {residual} {error}
    ResidualNone,     // {error}
    ResidualOfNothing,

    // Tables.
    MemberForcesCaption, // {unit}
    MemberForcesCaptionPlain,
    ReactionsCaption, // {unit}
    ReactionsCaptionPlain,
    ColumnMember,
    ColumnForce,
    ColumnSense,
    ColumnJoint,
    WordTension,
    WordCompression,
    WordZero,
    NotesHeading,
    MovementCaption, // {unit}
    MovementCaptionPlain,
    StretchCaption,
    ColumnTotal,
    ColumnStretch,
    ColumnStress,
    LargestDisplacement, // {value} {joint}
    StrainEnergy,        // {value}
    NoDisplacements,
    DisplacementsLost,
    DrawnEnlarged, // {times}
    PickForce,
    PickJoint,
    NothingMoves,

    // Directions.
    Up,
    Down,
    Left,
    Right,
    UpLeft,
    UpRight,
    DownLeft,
    DownRight,

    // Titles of steps.
    TitleCounting,
    TitleWholeBody,
    TitleMoments, // {joint}
    TitleSum,     // {sum}
    TitleReactionsTogether,
    TitleSlopes,
    TitleIdle, // {joint}
    TitleIdleNone,
    TitleSymmetry,
    TitleJoint,         // {joint}
    TitleJointSum,      // {joint} {sum}
    TitleJointTogether, // {joint}
    TitleApart,         // {joint}
    TitleSection,
    TitleCut,            // {members}
    TitleCutSum,         // {sum}
    TitleCutMoments,     // {joint}
    TitleJointsTogether, // {joints}
    TitleCheck,
    TitleSummary,

    // Counting.
    CountThings, // {members} {reactions} {joints}
    CountDeterminate,
    CountIndeterminate, // {degree}
    CountMechanism,
    CountBalanced,

    // What acts on the whole.
    TakeOffSupports,
    PinGives,          // {joint} {x} {y}
    RollerGives,       // {joint} {r} {direction}
    LoadOneWay,        // {joint} {size} {direction}
    LoadTwoWays,       // {joint} {size} {direction} {size2} {direction2}
    AngleToHorizontal, // {r}
    MomentsClockwise,
    MomentsAnticlockwise,
    MoreThanThree, // {reactions}
    NothingActs,

    // Reactions.
    MomentCentre, // {joint} {through} {left}
    MomentCentreThroughOne,
    MomentCentreOne,   // {joint} {left}
    CentreOffTruss,    // {centre} {through} {place} {left}
    PlaceOfCentre,     // {dx} {right} {dy} {up} {joint}
    SumLeavesOne,      // {left}
    SumAcrossOne,      // {others} {left}
    SumAcrossSeveral,  // {others} {left}
    ReactionsTogether, // {reactions}
    TakenApart,        // {joint} {joints}
    PartAndWhole,      // {unknowns}
    WholeMoments,      // {joint}
    PartMoments,       // {joints} {joint}
    ActsOtherWay,      // {symbol} {direction}

    // Geometry.
    AngleIsOf, // {angle} {members}: the members have this slope
    SlopeIsOf, // {members}
    NoInclined,
    RiseOverLength,
    RunOverLength,

    // Zero-force members.
    IdleTwo,        // {joint} {a} {b}
    IdleThird,      // {joint} {a} {b} {idle}
    IdleBesideLoad, // {joint} {a} {idle}
    IdleLone,       // {joint} {idle}
    IdleNone,

    // Symmetry.
    Symmetric,
    BySymmetry, // {symbols}

    // Joints.
    JointOneUnknown,  // {unknown}
    JointTwoUnknowns, // {unknowns}
    AssumedAway,
    AssumedGuessed,
    NegativeForce, // {symbol} {member}
    BothInclined,  // {unknowns}
    NoEasyJoint,
    NoEasySection,
    CutLeft, // {members} {joints}
    CutRight,
    CutUpper,
    CutLower,
    CutPart,
    NoWorking,
    NoSectionFor,    // {member}
    NotTwoParts,     // {members}
    TooManyCut,      // {members} {n}
    TryCut,          // {members} {symbol}
    SimultaneousOne, // {n} {joint} {unknowns}
    Simultaneous,    // {n} {joints} {unknowns}
    AtJoint,         // {joint}

    // Check and summary.
    CheckLeftOver,
    CheckCloses,
    CheckDoesNot, // {number}
    SummaryReactions,
    SummaryForces,
    NotComplete,

    // Displacement by unit load.
    UnitLoadTitle,   // {joint}
    UnitLoadOpening, // {joint} {direction}
    UnitLoadTheorem,
    UnitLoadCaption,
    SettlementCaption,
    ColumnReaction,
    Total,
    MovesBy,     // {joint} {size} {direction}
    DoesNotMove, // {joint}
    UnitLoadNoWorking,
    UnitLoadNoStiffness, // {members}

    // Force polygon.
    PolygonTitle,
    PolygonOpening,
    PolygonCaption,
    ColumnLine,
    ColumnStandsFor,
    LoadAt,     // {joint}
    ReactionAt, // {joint}
    PolygonNoWorking,
    PolygonCrossing,     // {a} {b}
    PolygonNotConnected, // {joint}
    PolygonForceInside,  // {joint}

    // Influence lines and envelopes.
    EffectForce,   // {member}
    EffectMoveX,   // {joint}
    EffectMoveY,   // {joint}
    InfluenceBoth, // {effect} {high} {highJoint} {low} {lowJoint}
    InfluenceOne,  // {effect} {value} {joint}
    InfluenceNone, // {effect}
    ColumnFromStart,
    ColumnOrdinate,
    ColumnExactly,
    InfluenceAreas, // {positive} {negative}
    MovingHeading,
    TrainAt,       // {load} {value} {axle} {joint} {way}
    UniformFromTo, // {load} {value} {from} {to}
    UniformWorst,  // {load} {value}
    NothingFrom,   // {load}
    FacingLeft,
    FacingRight,
    ReadOnJoint, // {joint} {value} {distance} {start}
    ReadBetween, // {value} {distance} {start}
    ReadAtStart, // {start} {value}
    EnvelopeCaption,
    EnvelopeUnder,            // {load}
    EnvelopeOver,             // {choices}
    EnvelopeOfCombinations,   // {choices}
    EnvelopeOfOneCombination, // {combination}
    EnvelopeOfOne,
    AxleOn,       // {axle} {joint} {way}
    PlacedFromTo, // {from} {to}
    PlacedWorst,
    ColumnTension,
    ColumnCompression,
    ColumnGivenBy,

    // Force polygon, drawn.
    PolygonScale, // {force}
    PolygonSays,  // {n} {scale}
    SpacesSays,   // {spaces}

    // Free bodies, for who can't see them.
    BodyWhole,   // {forces}
    BodyOfJoint, // {joint} {forces}
    BodyOfPart,  // {joints} {forces}
    BodyForce,   // {force} {direction}
    BodyLoad,    // {force} {direction}
    BodyNothing,

    // Force method.
    TitleReleased,
    TitleReleasedForces,
    TitleDisplacements,
    TitleFits,
    TitleSuperposition,
    OneTooMany,
    TwoTooMany,
    ReleaseRoller,   // {joint} {reaction} {x}
    ReleasePin,      // {joint} {reaction} {x}
    ReleaseCrossing, // {member} {other} {x}
    ReleaseMember,   // {member} {x}
    ReleasedByJoints,
    ReleasedBySections,
    ReleasedTogether,
    GivenForces,  // {n0}
    GivenNothing, // {n0}
    UnitCut,      // {n} {member} {x}
    UnitReaction, // {n} {joint} {direction} {x}
    FoundAsUsual,
    ReleasedForcesCaption,
    EqualStiffness,
    AssumedStiffness,
    IndicesOne,    // {d} {x}
    IndicesTwo,    // {d} {x} {y}
    PlaceCut,      // {i} {member}
    PlaceReaction, // {i} {joint} {direction}
    SumsCaption,
    StrainsCaption,
    EndsMeet,   // {member}
    HoldsStill, // {joint} {direction}
    GivesWay,   // {joint} {size} {direction}
    SolveBoth,
    EffectsAdd,
    SuperposedForces,
    SuperposedReactions,
    StiffnessAgrees,
    StiffnessDiffers, // {number}
    NoRedundant,
    TooManyRedundants, // {degree}
    HeldTwice,         // {joint}
    NoRelease,

    // Influence lines by hand.
    TitleInfluence,   // {effect}
    LoadMoves,        // {effect} {joints}
    ReactionPositive, // {direction}
    JointForAll,      // {joint} {effect}
    CutForAll,        // {members}
    TitleLoadAt,      // {joint}
    LookLeft,         // {joints}
    LookRight,
    LookUpper,
    LookLower,
    LookPart,
    TitleOrdinates,
    OrdinatesCaption, // {effect}
    TitleShape,
    ShapeZero,
    ShapeStraight,
    ShapeCorners,   // {joints}
    ReasonReaction, // {effect}
    ReasonJoint,    // {joint}
    ReasonSection,
    VirtualCut,     // {member}
    VirtualSupport, // {joint} {direction} {effect}
    InfluenceNeedsEquilibrium,
    InfluenceOfDisplacement, // {joint}
    InfluenceNoSupport,      // {joint}
    InfluenceManySupports,   // {joint}
    InfluenceNotFound,

    // Mechanisms and their cures.
    MechanismAlone,   // {what}
    MechanismMember,  // {what} {a} {b}
    MechanismSupport, // {what} {support}
    MechanismEither,  // {what} {a} {b} {support}
    WholeMoves,       // {motion}
    UnsupportedMoves, // {motion}
    MotionSlide,      // {way}
    MotionTurnJoint,  // {joint}
    MotionTurnLines,
    MotionTurn,
    WayHorizontal,
    WayVertical,
    WaySloping,
    LooseJointMoves, // {joint} {way}
    HangingJoint,    // {joint}
    JointInLine,     // {joint}
    PartTurns,       // {joints} {joint}
    PartSlides,      // {joints} {way}
    PartMoves,       // {joints}
    ListAndMore,     // {list} {n}
    CurePin,         // {joint}
    CureVertical,    // {joint}
    CureHorizontal,  // {joint}

    // What results rest on, and why none are exact.
    AssumedEqual,
    InexactCoordinates, // {joint}
    InexactSlope,       // {joint}
    InexactComponents,  // {n}: which load
    InexactTooLarge,    // {n}: members at most
    InexactRedundant,
    InexactMoves,

    // Signs that stand for words, and what is put together of words.
    LetterTension,
    LetterCompression,
    LetterZero,
    ForceWithLetter, // {value} {letter}: on the board
    InBrackets,      // {word}
    ColumnWithUnit,  // {name} {unit}
    PointAndMore,    // {a} {b}: letters of one point, without "and"

    // Around the results in the notebook.
    LettersExplained,
    AxleExplained,
    // What long calculations are doing.
    JobCounted, // {what} {done} {all}
    JobAtWork,  // {what}
    JobWaits,
    JobWorking,
    JobShortest,
    JobSteps,
    JobPolygon,
    JobReleases,
    JobLoads,
    JobMembers,
    JobPlaces,
    JobTable,
    JobExact,
    LongFraction,
    HeadReactions,
    HeadForces,
    HeadDisplacements,
    HeadMembers,
    HeadOrdinates,
    CellJoint,
    CellMember,
    CellForce,
    CellLetter,
    CellExact,
    CellTotal,
    CellStretch,
    CellStress,
    CellTension,
    CellCompression,
    CellBy,
    FactTension,     // {value}
    FactCompression, // {value}
    FactNoForce,
    NoPath,
    NoSupportForLine,

    // Beside the results, for who can't see the board.
    EnvelopeHeading,
    InfluenceHeading,
    UntitledTruss,
    BoardSummary, // {joints} {members} {supports} {loads}
    OneJoint,
    ManyJoints, // {n}
    OneSupport,
    ManySupports, // {n}
    OneLoad,
    ManyLoads, // {n}

    // Checks of members: the sheet.
    CheckCaption,
    ColumnCheck,
    ColumnAllowed,
    ColumnUse,
    ColumnSlenderness,
    ColumnRemark,
    WordStrength,
    WordBuckling,
    CheckUnderAll,
    CheckUnder,       // {loads}
    CheckOverChoices, // {choices}
    CheckByEuler,     // {strength} {euler} {k}
    CheckByEn1993,    // {curve} {m0} {m1} {k}
    CheckByPhi,       // {phi} {k}
    CheckByOmega,     // {omega} {k}
    CheckNotSteel,    // {strength} {euler} {members}
    CheckWorst,       // {member} {use} {check}
    CheckOver,        // {members}
    CheckSlender,     // {members}
    CheckHolds,
    CheckLacks, // {what} {members}
    CheckBends, // {members}
    CheckNothing,
    CheckPickOne,
    LackArea,
    LackStrength,
    LackModulus,
    LackRadius,
    LackForce,
    RemarkOver,
    RemarkSlender, // {limit}
    RemarkLacks,   // {what}
    RemarksBoth,   // {a} {b}
    CautionPreliminary,
    CautionLeftOut,
    CautionDecide,

    BoardUseOver,    // {use}: on the board
    BoardUseSlender, // {use} {limit}: likewise
    BoardUnknown,    // likewise

    // Checks of members: one of them as on paper.
    CheckTitle,   // {member}
    CheckPulled,  // {force}
    CheckPressed, // {force}
    CheckIdle,
    CheckGiven,
    CheckStrengthLine,
    CheckSlendernessLine,
    CheckSlenderEnough, // {limit}
    CheckTooSlender,    // {limit}
    CheckNoLimit,
    CheckEulerLine,
    CheckElasticLine,
    CheckReductionLine, // {curve} {alpha}
    CheckPlateau,
    CheckInelastic,
    CheckElastic,
    CheckBucklingLine,
    CheckGoverns, // {check}
    CheckUseHolds,
    CheckUseOver,

    Count_
};

} // namespace gusset
