namespace PlanForge.Geometry.Deviations;

/// <summary>A run along an outline whose places are farther from the other outline than a threshold.</summary>
/// <param name="Side">On which side the material is.</param>
/// <param name="Largest">The greatest distance along it.</param>
/// <param name="Middle">
/// Where to point at: the middle of the run where that is as far off as the farthest place within a hundredth, else the farthest place.
/// </param>
/// <param name="Run">The run; closed when a contour differs all around.</param>
/// <param name="IsOnOld">True when it runs along the old outline, where the new one has nothing near; else it runs along the new one.</param>
/// <param name="IsAlone">True when a whole contour has no counterpart: an opening or a piece that is new or gone.</param>
public sealed record DeviationZone(DeviationSide Side, Deviation Largest, Point2 Middle, Path2 Run, bool IsOnOld, bool IsAlone)
{
    /// <summary>True when the farthest place is beyond an end of an open edge of the other shape: the edge goes on, and on which side of it material is says nothing.</summary>
    public bool IsBeyondEnd { get; init; }
}

/// <summary>Which shape has material that the other has not.</summary>
public enum DeviationSide
{
    /// <summary>The old shape: it is to come off.</summary>
    Surplus,

    /// <summary>The new shape: the old one is short of it.</summary>
    Lack,
}
