using System.Collections.Immutable;

namespace PlanForge.CommandLine;

/// <summary>A command as the parser, the help and the shell completions know it.</summary>
/// <param name="Name">The word on the command line.</param>
/// <param name="Summary">One line of help.</param>
/// <param name="Operands">What follows it.</param>
/// <param name="Options">The options it takes besides <see cref="Syntax.Help"/>.</param>
internal sealed record CommandSyntax(string Name, string Summary, OperandSyntax Operands, ImmutableArray<OptionSyntax> Options);

/// <summary>The words without dashes that a command takes.</summary>
/// <param name="Text">How the help writes them, empty when there are none.</param>
/// <param name="Least">The fewest.</param>
/// <param name="Most">The most.</param>
/// <param name="Words">The words to choose from; empty when any word will do.</param>
/// <param name="Endings">The endings, without the point, of the files that are meant; empty when they are no files.</param>
internal sealed record OperandSyntax(string Text, int Least, int Most, ImmutableArray<string> Words, ImmutableArray<string> Endings)
{
    public static OperandSyntax None { get; } = new("", 0, 0, [], []);

    public static OperandSyntax Files { get; } = new("FILE...", 1, int.MaxValue, [], ["yaml"]);

    public static OperandSyntax File { get; } = new("FILE", 1, 1, [], ["yaml"]);

    public static OperandSyntax CutFiles { get; } = Files with { Endings = ["dxf", "svg"] };

    public static OperandSyntax DesignAndMeasured { get; } = new("DESIGN MEASURED", 2, 2, [], ["yaml"]);

    /// <summary>Descriptions, or folders that draw wrote.</summary>
    public static OperandSyntax OldAndNew { get; } = new("OLD NEW", 2, 2, [], ["yaml"]);

    public static OperandSyntax DesignAndRange { get; } = new("FILE NAME=FROM..TO", 2, 2, [], ["yaml"]);

    public static OperandSyntax DesignAndFingerprint { get; } = new("DESIGN CODE", 2, 2, [], ["yaml"]);

    public static OperandSyntax OneOf(string text, ImmutableArray<string> words) => new(text, 1, 1, words, []);

    public static OperandSyntax AtMostOneOf(string text, ImmutableArray<string> words) => new(text, 0, 1, words, []);
}
