namespace PlanForge.Airframe.Inputs;

/// <summary>Something made from a description, with the inputs that went into it.</summary>
/// <typeparam name="T">What was made.</typeparam>
public sealed class Recorded<T>
{
    private readonly T _value;

    internal Recorded(T value, RecordedInputs inputs) => (_value, Inputs) = (value, inputs);

    /// <summary>What went into it.</summary>
    public RecordedInputs Inputs { get; }

    /// <summary>What was made. Whoever takes it inherits its inputs.</summary>
    public T Value
    {
        get
        {
            Inputs.Use();
            return _value;
        }
    }

    /// <summary>What was made, for one who answers for the inputs otherwise.</summary>
    public T Unnoted => _value;
}

/// <summary>The inputs of a recording.</summary>
public sealed class RecordedInputs
{
    private readonly InputLog _log;
    private readonly int _number;

    internal RecordedInputs(InputLog log, int number) => (_log, _number) = (log, number);

    /// <summary>Notes all of them for the recording that runs now.</summary>
    public void Use() => _log.Note(_number);

    /// <summary>What they are.</summary>
    public InputSet ToSet() => new(() => _log.PathsOf(_number));
}
