namespace PlanForge.Airframe.Sections;

/// <summary>Another section made thicker or thinner, or more or less cambered.</summary>
public sealed class ScaledSection : Section
{
    private ScaledSection(string name) => Name = name;

    /// <inheritdoc/>
    public override string Name { get; }

    /// <summary>A section with another greatest thickness, another camber, or both; null leaves that one as it is.</summary>
    /// <returns>The section, or null when camber is asked of a section that has none to scale.</returns>
    public static ScaledSection? Create(Section section, double? thickness, double? camber) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => throw new NotImplementedException();

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => throw new NotImplementedException();
}
