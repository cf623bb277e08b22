using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class SourceCopiesTests
{
    [Theory]
    [InlineData("tip.dat", "description/a.yaml", "description/tip.dat")]
    [InlineData("sections/tip.dat", "description/a.yaml", "description/sections/tip.dat")]
    [InlineData("./tip.dat", "description/a.yaml", "description/tip.dat")]
    [InlineData("../tip.dat", "description/above/a.yaml", "description/tip.dat")]
    [InlineData("../../sections/tip.dat", "description/above/above/a.yaml", "description/sections/tip.dat")]
    [InlineData("sections/../../tip.dat", "description/above/a.yaml", "description/tip.dat")]
    [InlineData("sections/../tip.dat", "description/a.yaml", "description/tip.dat")]
    public void A_copy_lies_where_the_copied_description_finds_it(string name, string description, string copy)
    {
        var copies = SourceCopies.Of([new("a.yaml", default), new(name, default)]);

        Assert.Equal([description, copy], copies.Select(file => file.Path));
        var folder = Path.GetDirectoryName(description)!;
        Assert.Equal(Path.GetFullPath(copy, "/"), Path.GetFullPath(Path.Combine(folder, name), "/"));
    }
}
