namespace PlanForge.Drafting.Model;

/// <summary>The layers of every drawing, in drawing order; viewers can switch them, cut files keep only what is cut or marked.</summary>
public enum Layer
{
    /// <summary>Border, title strip and check bars.</summary>
    Frame,

    /// <summary>Hidden edges, neighbouring parts and stations.</summary>
    Reference,

    /// <summary>Centre lines and the datum line.</summary>
    CentreAndDatum,

    /// <summary>Lines scored or drawn into a part's face, and the finished edge inside an allowance.</summary>
    Score,

    /// <summary>Edges the cutter or knife follows.</summary>
    Cut,

    /// <summary>Dimensions and leaders.</summary>
    Dimensions,

    /// <summary>Lettering: names, notes, tables.</summary>
    Notes,
}
