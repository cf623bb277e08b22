namespace PlanForge.Airframe.Sections;

/// <summary>A section given by points of its outline: a smooth curve through all of them.</summary>
public sealed class PointSection : Section
{
    private PointSection(string name) => Name = name;

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => throw new NotImplementedException();
}
