using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Parts.Shapes;

/// <summary>Thickness of the skins along the surface normal; each knows what it was made from.</summary>
public sealed class FuselageSkin
{
    private readonly Recorded<double> _side;
    private readonly Recorded<double> _top;
    private readonly Recorded<double> _bottom;

    internal FuselageSkin(SkinDescription skin, InputLog log) =>
        (_side, _top, _bottom) = (log.RecordNumber(() => skin.Side), log.RecordNumber(() => skin.Top), log.RecordNumber(() => skin.Bottom));

    /// <summary>Sides, mm.</summary>
    public double Side => _side.Value;

    /// <summary>Top, mm.</summary>
    public double Top => _top.Value;

    /// <summary>Bottom, mm.</summary>
    public double Bottom => _bottom.Value;
}
