using PlanForge.CommandLine;

namespace PlanForge.Tests.CommandLine;

public sealed class ArgumentParserTests
{
    [Fact]
    public void Options_and_files_may_stand_in_any_order()
    {
        var arguments = Parse("draw", "-q", "a.yaml", "--to", "plans", "b.yaml");

        Assert.Same(Syntax.Draw, arguments.Command);
        Assert.Equal(["a.yaml", "b.yaml"], arguments.Operands);
        Assert.Equal("plans", arguments.ValueOf(Syntax.To));
        Assert.True(arguments.Has(Syntax.Quiet));
    }

    [Fact]
    public void Value_may_follow_an_equals_sign_and_hold_one() =>
        Assert.Equal("-odd=name", Parse("draw", "--to=-odd=name", "a.yaml").ValueOf(Syntax.To));

    [Fact]
    public void Last_of_equal_options_counts() =>
        Assert.Equal("two", Parse("draw", "--to", "one", "a.yaml", "--to", "two").ValueOf(Syntax.To));

    [Fact]
    public void Words_after_two_dashes_are_files() =>
        Assert.Equal(["--to", "-q"], Parse("draw", "--", "--to", "-q").Operands);

    [Fact]
    public void Single_dash_is_a_file() => Assert.Equal(["-"], Parse("check", "-").Operands);

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    public void Help_of_a_command_wins_over_what_is_missing(string help)
    {
        var arguments = Parse("draw", help);

        Assert.Same(Syntax.HelpCommand, arguments.Command);
        Assert.Equal(["draw"], arguments.Operands);
    }

    // The right column is what the program says; the words suggested are those a reader would name.
    [Theory]
    [InlineData("", "no command given")]
    [InlineData("drw", "unknown command `drw`; did you mean `draw`?")]
    [InlineData("chekc a.yaml", "unknown command `chekc`; did you mean `check`?")]
    [InlineData("Draw a.yaml", "unknown command `Draw`; did you mean `draw`?")]
    [InlineData("aeroplane", "unknown command `aeroplane`")]
    [InlineData("--verson", "unknown option `--verson`; did you mean `--version`?")]
    [InlineData("draw --qiet a.yaml", "unknown option `--qiet` of draw; did you mean `--quiet`?")]
    [InlineData("draw --json a.yaml", "unknown option `--json` of draw")]
    [InlineData("check --jsn=1 a.yaml", "unknown option `--jsn` of check; did you mean `--json`?")]
    [InlineData("draw", "draw needs FILE...")]
    [InlineData("draw --quiet", "draw needs FILE...")]
    [InlineData("draw a.yaml --to", "--to needs a value: --to FOLDER")]
    [InlineData("draw a.yaml --to --quiet", "--to needs a value: --to FOLDER")]
    [InlineData("draw a.yaml --to=", "--to needs a value: --to FOLDER")]
    [InlineData("draw a.yaml --quiet=yes", "--quiet takes no value")]
    [InlineData("schema a.yaml", "`a.yaml` is none of descriptions, measurements")]
    [InlineData("completion", "completion needs SHELL")]
    [InlineData("completion bsh", "`bsh` is none of bash, zsh, fish; did you mean `bash`?")]
    [InlineData("help drwa", "`drwa` is none of draw, follow, check, vary, bench, compare, current, calibrate, coupon, inspect, schema, completion; did you mean `draw`?")]
    public void Command_line_at_fault_is_refused_with_a_reason(string line, string expected)
    {
        Assert.Null(ArgumentParser.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries), out var fault));
        Assert.Equal(expected, fault);
    }

    [Fact]
    public void Empty_file_name_is_refused()
    {
        Assert.Null(ArgumentParser.Parse(["check", ""], out var fault));
        Assert.Contains("empty", fault, StringComparison.Ordinal);
    }

    private static Arguments Parse(params string[] words)
    {
        var arguments = ArgumentParser.Parse(words, out var fault);
        Assert.Equal("", fault);
        return arguments!;
    }
}
