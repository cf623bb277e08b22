namespace PlanForge.Output.Dxf;

/// <summary>The version of the format.</summary>
public enum DxfVersion
{
    /// <summary>AC1009, for old machines: it cannot say its unit, so the file's name must say mm.</summary>
    R12,

    /// <summary>AC1015, what shops ask for.</summary>
    R2000,
}
