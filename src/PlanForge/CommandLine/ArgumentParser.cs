using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.CommandLine;

/// <summary>
/// Reads a command line: a command, then options and operands in any order. An option's value follows it as the next word or
/// after <c>=</c>; after <c>--</c> every word is an operand. An unknown word is never taken for something else.
/// </summary>
internal sealed class ArgumentParser
{
    private readonly CommandSyntax _command;
    private readonly ImmutableArray<string>.Builder _operands = ImmutableArray.CreateBuilder<string>();
    private readonly ImmutableArray<GivenOption>.Builder _options = ImmutableArray.CreateBuilder<GivenOption>();

    private ArgumentParser(CommandSyntax command) => _command = command;

    /// <summary>The command line, or null with what is wrong with it: one sentence without a full stop.</summary>
    public static Arguments? Parse(ReadOnlySpan<string> words, out string fault)
    {
        fault = "";
        if (words.IsEmpty)
        {
            fault = "no command given";
            return null;
        }

        var first = words[0];
        if (Syntax.Help.Is(first))
        {
            return new(Syntax.HelpCommand, [], []);
        }

        if (Syntax.Version.Is(first))
        {
            return new(Syntax.VersionCommand, [], []);
        }

        if (Syntax.Find(first) is not { } command)
        {
            fault = UnknownFirstWord(first);
            return null;
        }

        var parser = new ArgumentParser(command);
        return (parser.ReadWords(words[1..]) ?? parser.CheckOperands()) is { } wrong ? Fail(wrong, out fault) : parser.Finish();
    }

    private static Arguments? Fail(string wrong, out string fault)
    {
        fault = wrong;
        return null;
    }

    private Arguments Finish()
    {
        foreach (var given in _options)
        {
            if (given.Syntax == Syntax.Help)
            {
                return new(Syntax.HelpCommand, [_command.Name], []);
            }
        }

        return new(_command, _operands.ToImmutable(), _options.ToImmutable());
    }

    private string? ReadWords(ReadOnlySpan<string> words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            var word = words[i];
            if (word == "--")
            {
                _operands.AddRange(words[(i + 1)..]);
                return null;
            }

            if (!IsOption(word))
            {
                _operands.Add(word);
                continue;
            }

            var equals = word.StartsWith("--", StringComparison.Ordinal) ? word.IndexOf('=') : -1;
            var name = equals < 0 ? word : word[..equals];
            if (FindOption(name) is not { } option)
            {
                return $"unknown option `{name}` of {_command.Name}{Suggestion(name, OptionNames())}";
            }

            if (option.Value is null)
            {
                if (equals >= 0)
                {
                    return $"{option.Name} takes no value";
                }

                _options.Add(new(option, ""));
                continue;
            }

            // A word that begins with a dash is more likely a forgotten value than a name; --to=-x can still say it.
            var isNext = equals < 0 && i + 1 < words.Length && !IsOption(words[i + 1]);
            var value = equals >= 0 ? word[(equals + 1)..] : isNext ? words[++i] : "";
            if (value.Length == 0)
            {
                return $"{option.Name} needs a value: {option.Name} {option.Value}";
            }

            _options.Add(new(option, value));
        }

        return null;
    }

    private string? CheckOperands()
    {
        // Help wins over whatever else is wrong with the line.
        if (_options.Any(given => given.Syntax == Syntax.Help))
        {
            return null;
        }

        var syntax = _command.Operands;
        if (_operands.Count < syntax.Least)
        {
            return $"{_command.Name} needs {syntax.Text}";
        }

        if (_operands.Count > syntax.Most)
        {
            return $"{_command.Name} does not take `{_operands[syntax.Most]}`";
        }

        foreach (var operand in _operands)
        {
            if (operand.Length == 0)
            {
                return $"{_command.Name} was given an empty word for {syntax.Text}";
            }

            if (!syntax.Words.IsEmpty && !syntax.Words.Contains(operand))
            {
                return $"`{operand}` is none of {string.Join(", ", syntax.Words)}{Suggestion(operand, syntax.Words)}";
            }
        }

        return null;
    }

    private OptionSyntax? FindOption(string name)
    {
        foreach (var option in _command.Options)
        {
            if (option.Is(name))
            {
                return option;
            }
        }

        return Syntax.Help.Is(name) ? Syntax.Help : null;
    }

    private IEnumerable<string> OptionNames() => _command.Options.Append(Syntax.Help).Select(option => option.Name);

    private static string UnknownFirstWord(string word) => IsOption(word)
        ? $"unknown option `{word}`{Suggestion(word, [Syntax.Help.Name, Syntax.Version.Name])}"
        : $"unknown command `{word}`{Suggestion(word, Syntax.Commands.Select(command => command.Name))}";

    private static string Suggestion(string word, IEnumerable<string> known) =>
        Spelling.Near(word, known) is { } near ? $"; did you mean `{near}`?" : "";

    private static bool IsOption(string word) => word.Length > 1 && word[0] == '-';
}
