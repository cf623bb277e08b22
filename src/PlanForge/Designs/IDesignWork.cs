namespace PlanForge.Designs;

/// <summary>Work on one design that begins while it is still being planned.</summary>
/// <typeparam name="T">What comes of it.</typeparam>
internal interface IDesignWork<out T>
{
    /// <summary>
    /// Told what goes to the cutter, on any thread, as soon as that is known and nothing is wrong with it; the design itself may yet fail.
    /// </summary>
    void CutsKnown(DesignCuts cuts);

    /// <summary>Works out the rest from the whole design; called once, after <see cref="CutsKnown"/>.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    T Finish(Design design);
}
