using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Parts.Comparison;

/// <summary>A part of two designs, held against itself in its own coordinates.</summary>
/// <param name="Old">The part as it was; null for a new one.</param>
/// <param name="New">The part as it is; null for one that is gone.</param>
/// <param name="State">What became of it.</param>
public sealed record PartComparison(Part? Old, Part? New, PartState State)
{
    /// <summary>Deviations up to this make no zone: less than a stroke of the sanding block takes off, mm (common practice, no source).</summary>
    public const double Threshold = 0.05;

    /// <summary>The part as it is, or as it was when it is gone.</summary>
    public Part Part => New ?? Old!;

    /// <summary>How far the same shape moved in the part's own coordinates, mm; zero unless <see cref="PartState.Moved"/>.</summary>
    public Vector2 Move { get; init; }

    /// <summary>How the wood differs; null where it does not, or where nothing is cut to closed lines.</summary>
    public OutlineDeviation? Wood { get; init; }

    /// <summary>The greatest deviation of all lines but place marks; null when no line differs, or lines came or went.</summary>
    public Deviation? Largest { get; init; }

    /// <summary>The meanings of lines that differ; place marks among them.</summary>
    public ImmutableArray<LineUse> Lines { get; init; } = [];

    /// <summary>True when sheet thickness, material, number or manner of making differ.</summary>
    public bool IsOtherwiseMade { get; init; }

    /// <summary>True when something written on or beside the part differs.</summary>
    public bool HasOtherTexts { get; init; }

    /// <summary>The pieces of a set, each held against the one that is the same thing; empty for what is no set.</summary>
    public ImmutableArray<PieceComparison> Pieces { get; init; } = [];

    /// <summary>The part's figures that differ.</summary>
    public ImmutableArray<FigureChange> Figures { get; init; } = [];

    /// <summary>The wood to take off most, beyond the threshold; null for none.</summary>
    public DeviationZone? Surplus => Wood?.WorstOf(DeviationSide.Surplus);

    /// <summary>The wood that is missing most, beyond the threshold; null for none.</summary>
    public DeviationZone? Lack => Wood?.WorstOf(DeviationSide.Lack);

    /// <summary>True when no wood differs beyond the threshold and a line drawn on it does.</summary>
    private bool AreMarksOff => Lines.Any(use => use != LineUse.Cut) && Largest is not { Distance: <= Threshold };

    /// <summary>What a builder who has the old part does.</summary>
    public PartAdvice Advice => State switch
    {
        PartState.Same => PartAdvice.Keep,
        PartState.Gone => PartAdvice.Discard,
        _ when Part.Making != Making.Cut => PartAdvice.PrintAgain,
        PartState.New => PartAdvice.Make,
        PartState.Moved => PartAdvice.PutElsewhere,
        _ when IsOtherwiseMade || Lack is not null => PartAdvice.Make,
        _ when Surplus is not null => PartAdvice.TakeOff,
        _ when AreMarksOff => PartAdvice.MarkAnew,
        _ => PartAdvice.Keep,
    };
}
