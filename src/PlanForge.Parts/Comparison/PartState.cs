namespace PlanForge.Parts.Comparison;

/// <summary>What became of a part between two designs.</summary>
public enum PartState
{
    /// <summary>It is as it was, in shape, place and figures.</summary>
    Same,

    /// <summary>Its shape is as it was; where it stands, or what is marked on it of other parts, is not.</summary>
    Moved,

    /// <summary>Its shape, what it is made from, or what is written on it differs.</summary>
    Changed,

    /// <summary>There was none.</summary>
    New,

    /// <summary>There is none any more.</summary>
    Gone,
}

/// <summary>What a builder who has the old part does about the new one.</summary>
public enum PartAdvice
{
    /// <summary>Nothing.</summary>
    Keep,

    /// <summary>Put the same part elsewhere.</summary>
    PutElsewhere,

    /// <summary>The wood holds; draw what is marked on it anew.</summary>
    MarkAnew,

    /// <summary>Take wood off until it fits.</summary>
    TakeOff,

    /// <summary>Make it, or make it anew: wood is missing, or it is of other wood.</summary>
    Make,

    /// <summary>Print the template, or what is to be read, again.</summary>
    PrintAgain,

    /// <summary>It is not needed any more.</summary>
    Discard,
}
