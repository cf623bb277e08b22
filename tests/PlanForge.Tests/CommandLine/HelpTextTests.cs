using PlanForge.CommandLine;

namespace PlanForge.Tests.CommandLine;

public sealed class HelpTextTests
{
    [Fact]
    public void Help_begins_with_examples() => Assert.StartsWith("Examples:\n  planforge ", HelpText.OfProgram(), StringComparison.Ordinal);

    [Fact]
    public void Examples_are_command_lines_in_order()
    {
        var examples = Lines(HelpText.OfProgram()).Skip(1).TakeWhile(line => line.Length > 0).ToArray();

        Assert.NotEmpty(examples);
        foreach (var example in examples)
        {
            var words = example.Trim().Split("  ")[0].Split(" > ")[0].Split(' ')[1..];
            Assert.True(ArgumentParser.Parse(words, out var fault) is not null, fault);
        }
    }

    [Fact]
    public void Help_names_every_command_option_and_exit_code()
    {
        var help = HelpText.OfProgram();
        foreach (var command in Syntax.Commands)
        {
            Assert.Contains($"\n  {command.Name}", help, StringComparison.Ordinal);
            Assert.Contains(command.Summary, help, StringComparison.Ordinal);
            foreach (var option in command.Options)
            {
                Assert.Contains(option.Name, HelpText.Of(command), StringComparison.Ordinal);
                Assert.Contains(option.Summary, help, StringComparison.Ordinal);
            }
        }

        foreach (var code in Enum.GetValues<ExitCode>())
        {
            Assert.Matches($"\n  {(int)code} ", help);
        }
    }

    [Fact]
    public void Help_fits_a_terminal_of_a_hundred_columns() =>
        Assert.All(Lines(HelpText.OfProgram()), line => Assert.InRange(line.Length, 0, 100));

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("help")]
    public void Help_is_a_result(string word)
    {
        var run = TestTerminal.Run(word);

        Assert.Equal((ExitCode.Done, HelpText.OfProgram(), ""), (run.Code, run.Results, run.Messages));
    }

    [Fact]
    public void Help_of_a_command_can_be_asked_for_in_two_ways() =>
        Assert.Equal(TestTerminal.Run("help", "draw").Results, TestTerminal.Run("draw", "x.yaml", "--help").Results);

    private static string[] Lines(string text) => text.Split('\n');
}
