namespace PlanForge.Drafting.Cutting;

/// <summary>What the machine does along a stroke of a cut file. Notes are never done: they are for the eye.</summary>
public enum CutOperation
{
    /// <summary>Lettering burnt into the face as single strokes.</summary>
    Engrave,

    /// <summary>Lines marked on the face: centre and datum lines, trim lines, places of other parts.</summary>
    Score,

    /// <summary>Openings cut through, before the part is loose.</summary>
    CutInside,

    /// <summary>Outlines cut through.</summary>
    CutOutside,

    /// <summary>Lettering and the stock's edge beside the parts: on a layer that is not to be cut, or left out.</summary>
    Notes,
}
