using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Tests.Diagnostics;

public class DiagnosticListTests
{
    [Fact]
    public void Findings_stand_in_the_order_of_the_file_and_other_files_follow()
    {
        var list = new DiagnosticList("a.yaml");
        list.Error(new("z.dat", 1, 1), "first file spoken of");
        list.Error(new("a.yaml", 2, 1), "later line");
        list.Error(new("a.yaml", 1, 5), "later column");
        list.Error(new("b.dat", 1, 1), "second file spoken of");
        list.Warning(new("a.yaml", 1, 2), "one of two in a place");
        list.Error(new("a.yaml", 1, 2), "other of two in a place");
        list.Error(SourcePosition.WholeFile("a.yaml"), "whole file");
        Assert.Equal(
            ["whole file", "one of two in a place", "other of two in a place", "later column", "later line", "first file spoken of", "second file spoken of"],
            list.ToSorted().Select(d => d.Message));
    }

    [Fact]
    public void The_same_finding_is_listed_once()
    {
        var list = new DiagnosticList("a.yaml");
        list.Error(new("a.yaml", 1, 1), "wrong");
        list.Error(new("a.yaml", 1, 1), "wrong");
        list.Warning(new("a.yaml", 1, 1), "wrong");
        Assert.Equal([Severity.Error, Severity.Warning], list.ToSorted().Select(d => d.Severity));
    }

    [Fact]
    public void Warnings_are_no_errors()
    {
        var list = new DiagnosticList("a.yaml");
        list.Warning(new("a.yaml", 1, 1), "odd");
        Assert.False(list.HasErrors);
        list.Error(new("a.yaml", 1, 1), "wrong");
        Assert.True(list.HasErrors);
    }
}
