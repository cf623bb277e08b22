using System.Text;
using CsCheck;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Tests.Reading;

public class KeyOrderTests
{
    [Fact]
    public void The_order_of_keys_does_not_matter()
    {
        var root = YamlLoader.Load(new("complete.yaml", Description.Complete), new DiagnosticList("complete.yaml"))!;
        var expected = Description.Canonical(Description.ReadSound(Description.Complete));
        Gen.Int.Sample(
            seed =>
            {
                var text = new StringBuilder();
                Write(root, new Random(seed), text);
                Assert.Equal(expected, Description.Canonical(Description.ReadSound(text.ToString())));
            },
            iter: 100);
    }

    [Fact]
    public void The_order_of_lists_does_matter()
    {
        var swapped = BrokenDescription.Sound.Replace("[{length: 500}]", "[{length: 500}, {length: 400}]", StringComparison.Ordinal);
        var other = BrokenDescription.Sound.Replace("[{length: 500}]", "[{length: 400}, {length: 500}]", StringComparison.Ordinal);
        Assert.NotEqual(Description.Canonical(Description.ReadSound(swapped)), Description.Canonical(Description.ReadSound(other)));
    }

    /// <summary>Writes a tree as one line of YAML, the keys of every mapping in an order of chance.</summary>
    private static void Write(YamlNode node, Random random, StringBuilder text)
    {
        switch (node)
        {
            case YamlMapping mapping:
                text.Append('{');
                foreach (var entry in mapping.Entries.OrderBy(_ => random.Next()).ToList())
                {
                    Write(entry.Key, random, text);
                    text.Append(": ");
                    Write(entry.Value, random, text);
                    text.Append(", ");
                }

                text.Append('}');
                break;
            case YamlList list:
                text.Append('[');
                foreach (var item in list.Items)
                {
                    Write(item, random, text);
                    text.Append(", ");
                }

                text.Append(']');
                break;
            default:
                text.Append('\'').Append(((YamlScalar)node).Text.Replace("'", "''", StringComparison.Ordinal)).Append('\'');
                break;
        }
    }
}
