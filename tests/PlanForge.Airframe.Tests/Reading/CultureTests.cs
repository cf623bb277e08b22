using System.Globalization;

namespace PlanForge.Airframe.Tests.Reading;

public class CultureTests
{
    // de-DE writes 1.5 as 1,5; tr-TR makes an upper-case I of a dotless ı; ar-SA has digits and a minus sign of its own.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Results_and_messages_are_the_same_in_every_culture(string name)
    {
        var texts = new[] { Description.Complete }
            .Concat(BrokenValuesTests.Texts.Select(row => row.Data.Text))
            .Concat(BrokenRelationsTests.Errors.Select(row => row.Data.Text))
            .ToList();
        var expected = texts.ConvertAll(text => Description.Canonical(Description.Read(text)));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(name);
            Assert.Equal(expected, texts.ConvertAll(text => Description.Canonical(Description.Read(text))));

            // The cultures are the real ones and not invariant stand-ins.
            Assert.NotEqual("1.5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(name == "tr-TR" ? "İ" : "I", "i".ToUpper(CultureInfo.CurrentCulture));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
