using PlanForge.Geometry;

namespace PlanForge.Output.Svg;

/// <summary>Writes path data, step by step, in the picture's coordinates: x to the right, y down.</summary>
internal interface ISvgPen
{
    void MoveTo(Point2 point);

    void LineTo(Point2 point);

    /// <summary>Along no more than a little over a quarter of a circle.</summary>
    void ArcTo(double radius, bool isClockwise, Point2 point);

    /// <summary>Back to where the last move led.</summary>
    void Close();
}
