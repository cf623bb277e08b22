namespace PlanForge.Geometry.Tests;

public class Vector2Tests
{
    [Fact]
    public void A_vector_prints_its_components() => Assert.Equal("Vector2 { X = 1.5, Y = -2 }", new Vector2(1.5, -2).ToString());
}
