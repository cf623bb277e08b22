namespace PlanForge.Airframe.Sections;

/// <summary>A section part of the way from one to another.</summary>
public sealed class BlendedSection : Section
{
    private BlendedSection(string name) => Name = name;

    /// <inheritdoc/>
    public override string Name { get; }

    /// <summary>The section at <paramref name="fraction"/> of the way: 0 is the first, 1 the second.</summary>
    public static BlendedSection Create(Section first, Section second, double fraction) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => throw new NotImplementedException();
}
