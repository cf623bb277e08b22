using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>A drawing as plain data: what writers replay into PDF, DXF and SVG. Millimetres, y up, origin lower left.</summary>
/// <param name="Items">What is drawn, in order; later items lie over earlier ones.</param>
public sealed record Drawing(ImmutableArray<DrawingItem> Items);

/// <summary>One thing on a drawing.</summary>
public abstract record DrawingItem
{
    private protected DrawingItem(Layer layer) => Layer = layer;

    /// <summary>The layer it belongs to.</summary>
    public Layer Layer { get; }

    /// <summary>A line drawn with a pen.</summary>
    public sealed record Stroke : DrawingItem
    {
        /// <summary>Draws a path with a line style.</summary>
        public Stroke(Layer layer, Path2 path, LineStyle style)
            : base(layer) => (Path, Style) = (path, style);

        /// <summary>Where the pen goes.</summary>
        public Path2 Path { get; }

        /// <summary>Type and width of the line.</summary>
        public LineStyle Style { get; }
    }

    /// <summary>A filled area: arrow heads, check bars, hatched ground. Never on a cut file.</summary>
    public sealed record Fill : DrawingItem
    {
        /// <summary>Fills closed paths by the non-zero rule with a grey.</summary>
        /// <param name="layer">The layer it belongs to.</param>
        /// <param name="paths">Closed paths.</param>
        /// <param name="grey">0 black to 1 white.</param>
        public Fill(Layer layer, ImmutableArray<Path2> paths, double grey)
            : base(layer) => (Paths, Grey) = (paths, grey);

        /// <summary>Closed paths.</summary>
        public ImmutableArray<Path2> Paths { get; }

        /// <summary>0 black to 1 white.</summary>
        public double Grey { get; }
    }

    /// <summary>One line of single-stroke lettering.</summary>
    public sealed record Text : DrawingItem
    {
        /// <summary>Letters a text from the start of its baseline.</summary>
        /// <param name="layer">The layer it belongs to.</param>
        /// <param name="content">The text; characters outside the alphabet are drawn as a hollow box.</param>
        /// <param name="at">Start of the baseline.</param>
        /// <param name="height">Height of capitals, mm, over 0; the stroke is a tenth of it (ISO 3098 type B).</param>
        /// <param name="angle">Direction of reading from the x axis, radians.</param>
        public Text(Layer layer, string content, Point2 at, double height, double angle)
            : base(layer) => (Content, At, Height, Angle) = (content, at, height, angle);

        /// <summary>The text.</summary>
        public string Content { get; }

        /// <summary>Start of the baseline.</summary>
        public Point2 At { get; }

        /// <summary>Height of capitals, mm.</summary>
        public double Height { get; }

        /// <summary>Direction of reading from the x axis, radians.</summary>
        public double Angle { get; }
    }
}
