namespace PlanForge.Airframe.Sections;

/// <summary>A NACA section of the four-digit or five-digit series, evaluated by formula.</summary>
public sealed class NacaSection : Section
{
    private NacaSection(string name) => Name = name;

    /// <inheritdoc/>
    public override string Name { get; }

    /// <summary>The section of a designation, or null with the reason in <paramref name="fault"/>.</summary>
    /// <param name="digits">Four or five digits, such as <c>2412</c> or <c>23012</c>.</param>
    /// <param name="trailingEdge">How the section ends.</param>
    /// <param name="fault">What is wrong with the designation: one sentence without a full stop.</param>
    public static NacaSection? TryCreate(string digits, TrailingEdge trailingEdge, out string? fault) =>
        throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => throw new NotImplementedException();
}
