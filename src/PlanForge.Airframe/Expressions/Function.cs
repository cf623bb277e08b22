namespace PlanForge.Airframe.Expressions;

/// <summary>The functions an expression may call.</summary>
internal enum Function
{
    Min,
    Max,
    Sqrt,
    Sin,
    Cos,
    Tan,
}

/// <summary>What the functions are called and take.</summary>
internal static class FunctionTable
{
    /// <summary>The names, in the order of the enumeration.</summary>
    public static readonly string[] Names = ["min", "max", "sqrt", "sin", "cos", "tan"];

    public static Function? FromName(string name)
    {
        var index = Array.IndexOf(Names, name);
        return index < 0 ? null : (Function)index;
    }

    public static string Name(this Function function) => Names[(int)function];

    /// <summary>True for functions of two or more values; the others take exactly one.</summary>
    public static bool TakesSeveral(this Function function) => function is Function.Min or Function.Max;
}
