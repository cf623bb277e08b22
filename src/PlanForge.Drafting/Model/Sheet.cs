using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>One sheet of paper at true size.</summary>
/// <param name="Number">Its number in the set, from 1.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Width">Paper width, mm.</param>
/// <param name="Height">Paper height, mm.</param>
/// <param name="Drawing">What is drawn; the origin is the paper's lower left corner.</param>
/// <param name="Parts">Ids of the parts it shows, in placing order.</param>
public sealed record Sheet(
    int Number, string Title, double Width, double Height, Drawing Drawing, ImmutableArray<string> Parts)
{
    /// <summary>Where each part or view is, in reading order.</summary>
    public ImmutableArray<Bookmark> Bookmarks { get; init; } = [];

    /// <summary>The fingerprint of what is drawn on it, by which a builder tells whether a printed sheet is current; null where it carries none.</summary>
    public Fingerprint? Fingerprint { get; init; }

    /// <summary>The values of the description that the drawings on it are made from; its fingerprint follows them.</summary>
    public InputSet Inputs { get; init; } = InputSet.None;

    /// <summary>Those among them that it reads itself, whatever the parts on it are made from: paper, units, stock, the whole airframe in views.</summary>
    public InputSet OwnInputs { get; init; } = InputSet.None;

    /// <summary>Those of its title block, notes and revisions, which make no print stale.</summary>
    public InputSet FrameInputs { get; init; } = InputSet.None;

    /// <summary>Those that decide which drawings lie together on it; the same for all sheets of a set.</summary>
    public InputSet PlacingInputs { get; init; } = InputSet.None;

    /// <summary>The views that are not at true size; all else is.</summary>
    public ImmutableArray<ScaledView> ScaledViews { get; init; } = [];
}

/// <summary>A place on a sheet worth finding.</summary>
/// <param name="Title">What is there.</param>
/// <param name="Place">The smallest upright rectangle around it.</param>
public sealed record Bookmark(string Title, Bounds2 Place);

/// <summary>A view that is drawn to a scale.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Place">The upright rectangle that holds it.</param>
/// <param name="Scale">Drawn length over true length: 0.2 for 1:5.</param>
public sealed record ScaledView(string Name, Bounds2 Place, double Scale);

/// <summary>All sheets of a design, in order.</summary>
/// <param name="Title">The design's name and revision.</param>
/// <param name="Language">Language tag of the lettering, such as <c>en</c>.</param>
/// <param name="Sheets">The sheets.</param>
public sealed record SheetSet(string Title, string Language, ImmutableArray<Sheet> Sheets);

/// <summary>The drawing of one part for a cutting machine: only what the machine shall do, in the part's own coordinates.</summary>
/// <param name="Name">File name without ending, ASCII.</param>
/// <param name="Drawing">
/// Strokes on <see cref="Layer.Cut"/> and <see cref="Layer.Score"/>, texts on <see cref="Layer.Score"/>. Cut lines are closed, outlines
/// anticlockwise and openings clockwise; open ones are the stretches of an outline between its holding tabs.
/// </param>
public sealed record CutDrawing(string Name, Drawing Drawing)
{
    /// <summary>Full width of the cut the lines are moved for, mm, or null when they are at the part's true size.</summary>
    public double? Kerf { get; init; }

    /// <summary>What the shop must know, one line each; no part of the work.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
