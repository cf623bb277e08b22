using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Inputs;

/// <summary>A mapping, list or value in the description's tree, named by the keys and names that lead to it.</summary>
internal sealed class Place
{
    /// <summary>What follows the path of a list for the fact which entries it has, in which order.</summary>
    public const string Members = "[]";

    /// <summary>What follows the path of a mapping that may be left out, for the fact that it is there.</summary>
    public const string Presence = "{}";

    private readonly Place? _parent;
    private readonly string _segment;
    private string? _path;

    private Place(Place? parent, string segment) => (_parent, _segment) = (parent, segment);

    /// <summary>The whole description.</summary>
    public static Place Root() => new(null, "");

    /// <summary>A file that the description names, by its path.</summary>
    public static Place File(string path) => new(null, path);

    /// <summary>Its path, such as <c>formers[F3].allowance</c>; empty for the whole description.</summary>
    public string Path => _path ??= _parent is null ? _segment
        : _parent.Path.Length == 0 || _segment[0] == '[' ? _parent.Path + _segment
        : $"{_parent.Path}.{_segment}";

    /// <summary>What stands behind a key.</summary>
    public Place Of(Key key) => new(this, key.Name);

    /// <summary>An entry of a list by its name, or by its number counted from 1 where it has none.</summary>
    public Place Entry(string name) => new(this, $"[{name}]");
}
