namespace PlanForge.Output.Dxf;

/// <summary>Gives every object of a file its number, in the order of writing, from 1.</summary>
internal sealed class DxfHandles
{
    /// <summary>The first number not given yet: what the header announces as the seed.</summary>
    public uint Next { get; private set; } = 1;

    /// <summary>A number of its own.</summary>
    public uint Take() => Next++;
}
