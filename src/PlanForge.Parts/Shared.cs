using PlanForge.Airframe.Inputs;

namespace PlanForge.Parts;

/// <summary>Something that several parts need, made when the first one asks; each of them inherits its inputs.</summary>
internal sealed class Shared<T>(InputLog inputs, Func<T> make)
{
    private Recorded<T>? _made;

    public T Value => (_made ??= inputs.Record(make)).Value;
}
