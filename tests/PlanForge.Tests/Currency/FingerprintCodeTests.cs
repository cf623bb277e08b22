using CsCheck;
using PlanForge.Airframe;
using PlanForge.Currency;

namespace PlanForge.Tests.Currency;

public sealed class FingerprintCodeTests
{
    [Theory]
    [InlineData("K7F3-2Q", "K7F3-2Q")]
    [InlineData("k7f3-2q", "K7F3-2Q")]
    [InlineData("k7f32q", "K7F3-2Q")]
    [InlineData(" K7F3 2Q ", "K7F3-2Q")]
    [InlineData("OIL0-1O", "0110-10")]     // Crockford's base 32 reads O as 0, I and L as 1 (from memory)
    public void A_code_is_read_as_it_is_printed(string text, string code) => Assert.Equal(code, FingerprintCode.Read(text));

    [Theory]
    [InlineData("")]
    [InlineData("K7F3-2")]
    [InlineData("K7F3-2QQ")]
    [InlineData("K7F3-2U")]                // there is no U in the alphabet
    [InlineData("former F3")]
    public void Other_texts_are_no_code(string text) => Assert.Null(FingerprintCode.Read(text));

    [Fact]
    public void Every_fingerprint_is_read_back() => Gen.Byte.Array[4].Sample(hash =>
    {
        var code = new Fingerprint(hash).Code;
        return FingerprintCode.Read(code) == code && FingerprintCode.Read(code.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant()) == code;
    });
}
