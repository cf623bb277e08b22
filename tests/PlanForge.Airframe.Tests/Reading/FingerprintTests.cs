using System.Security.Cryptography;
using System.Text;
using CsCheck;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

public class FingerprintTests
{
    private static readonly string Sound = BrokenDescription.Sound;

    [Theory]
    [InlineData("remarks", "units: mm", "# a remark\nunits: mm # another")]
    [InlineData("spelling of a unit", "chord: 200", "chord: 20 cm")]
    [InlineData("a unit of the other system", "chord: 200", "chord: 7.874015748031496 in")]
    [InlineData("an expression", "chord: 200", "chord: 2 * 100 mm")]
    [InlineData("a default that is spelt out", "units: mm", "units: mm\nsheets: {paper: A3}")]
    public void What_means_the_same_has_the_same_fingerprint(string what, string from, string to) =>
        Assert.True(Of(Sound) == Of(Changed(from, to)), what);

    [Theory]
    [InlineData("chord: 200", "chord: 200.001")]
    [InlineData("units: mm", "units: mm\nrevision: C")]
    [InlineData("units: mm", "units: mm\nsheets: {paper: A2}")]
    [InlineData("units: mm", "units: mm\nsheets: {paper: 300 x 420 mm}")]
    [InlineData("units: mm", "units: mm\nnotes: [mind the grain]")]
    [InlineData("units: mm", "units: mm\nas_built: {fuselage: [{station: 0, breadth: 80.5}]}")]
    public void Any_other_value_has_another_fingerprint(string from, string to) => Assert.True(Of(Sound) != Of(Changed(from, to)));

    [Fact]
    public void A_parameter_counts_by_what_is_made_of_it() => Assert.Equal(
        Of(Sound), Of(Changed("units: mm", "units: mm\nparameters: {root: 200 mm}").Replace("chord: 200", "chord: root", StringComparison.Ordinal)));

    [Fact]
    public void A_section_file_counts_by_its_coordinates()
    {
        var text = Description.ReadSectionFile("otter.dat")!;
        var plain = OfSection(text);
        Assert.Equal(plain, OfSection(text.Replace("\n", "\r\n", StringComparison.Ordinal) + "\n"));
        Assert.Equal(plain, OfSection(text.Replace("invented:", "made up:", StringComparison.Ordinal)));
        Assert.NotEqual(plain, OfSection(text.Replace("0.00159", "0.00160", StringComparison.Ordinal)));

        static Fingerprint OfSection(string section) =>
            AirframeReader.Read("complete.yaml", Description.Complete, _ => section).Airframe!.Issue.Fingerprint;
    }

    // Source: Crockford's base 32 as published, alphabet 0-9 A-Z without I, L, O, U, five bits a sign from the left (from memory).
    [Theory]
    [InlineData(0x00000000u, "0000-00")]
    [InlineData(0xFFFFFFFFu, "ZZZZ-ZZ")]
    [InlineData(0x08864298u, "1234-56")]
    public void The_code_is_the_first_thirty_bits_in_base_32(uint bits, string code)
    {
        var bytes = new byte[4];
        System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(bytes, bits);
        Assert.Equal(code, new Fingerprint(bytes).Code);
    }

    [Fact]
    public void Fingerprints_are_equal_by_content() => Gen.String.Sample(text =>
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(text));
        Assert.Equal(new Fingerprint(hash), new Fingerprint(hash));
        Assert.Equal(new Fingerprint(hash).GetHashCode(), new Fingerprint(hash).GetHashCode());
        Assert.Equal(Convert.ToHexString(hash), new Fingerprint(hash).Hex, ignoreCase: true);
        hash[31] ^= 1;
        Assert.NotEqual(new Fingerprint(SHA256.HashData(Encoding.UTF8.GetBytes(text))), new Fingerprint(hash));
    });

    [Fact]
    public void Fewer_than_four_bytes_are_refused() => Assert.Throws<ArgumentException>(() => new Fingerprint([1, 2, 3]));

    private static string Changed(string from, string to)
    {
        Assert.Contains(from, Sound, StringComparison.Ordinal);
        return Sound.Replace(from, to, StringComparison.Ordinal);
    }

    private static Fingerprint Of(string text) => Description.ReadSound(text).Issue.Fingerprint;
}
