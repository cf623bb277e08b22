using PlanForge.Output.Pdf;

namespace PlanForge.Output.Tests;

public sealed class ArchitectureTests
{
    [Fact]
    public void Writers_know_drawings_and_geometry_and_nothing_of_aeroplanes() => Assert.Equal(
        ["PlanForge.Drafting", "PlanForge.Geometry"],
        typeof(PdfWriter).Assembly.GetReferencedAssemblies().Select(assembly => assembly.Name!)
            .Where(name => !name.StartsWith("System.", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
}
