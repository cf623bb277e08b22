using CsCheck;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class FolderNameTests
{
    // Every letter from U+00C0 to U+017F that has a canonical decomposition, after the lower-case letter it begins with.
    private const string Decompositions =
        """
        Source: Unicode Character Database 14.0.0, read through Python's unicodedata.normalize('NFD', ...)
        a ÀÁÂÃÄÅàáâãäåĀāĂăĄą
        c ÇçĆćĈĉĊċČč
        d Ďď
        e ÈÉÊËèéêëĒēĔĕĖėĘęĚě
        g ĜĝĞğĠġĢģ
        h Ĥĥ
        i ÌÍÎÏìíîïĨĩĪīĬĭĮįİ
        j Ĵĵ
        k Ķķ
        l ĹĺĻļĽľ
        n ÑñŃńŅņŇň
        o ÒÓÔÕÖòóôõöŌōŎŏŐő
        r ŔŕŖŗŘř
        s ŚśŜŝŞşŠš
        t ŢţŤť
        u ÙÚÛÜùúûüŨũŪūŬŭŮůŰűŲų
        w Ŵŵ
        y ÝýÿŶŷŸ
        z ŹźŻżŽž
        """;

    // Reason beside each row; code points from the Unicode charts, from memory.
    [Theory]
    [InlineData("Oxbow 1420", "oxbow-1420")]           // the usual case
    [InlineData("  Two  -- words! ", "two-words")]     // runs of anything else are one hyphen, none at the ends
    [InlineData("Möwe é", "mowe-e")]                   // accents are dropped: U+00F6, U+00E9
    [InlineData("Mo\u0308we", "mowe")]                 // the same letters, the accent a character of its own
    [InlineData("ŽLUŤOUČKÝ kůň", "zlutoucky-kun")]     // Latin Extended-A
    [InlineData("Łoś × ÷", "los")]                     // U+00D7 and U+00F7 are no letters
    [InlineData("鳶 2", "u9cf6-2")]                    // black kite, U+9CF6
    [InlineData("../etc", "etc")]                      // no way out of the folder
    [InlineData("TITAN I", "titan-i")]                 // the dotted capital of Turkish plays no part
    [InlineData("!?", "")]                             // nothing to go by
    public void Name_becomes_a_folder(string name, string expected) => Assert.Equal(expected, FolderName.Of(name));

    [Fact]
    public void Accented_letters_of_Latin_become_what_Unicode_decomposes_them_to()
    {
        foreach (var line in Decompositions.Split('\n').Skip(1))
        {
            var words = line.Trim().Split(' ');
            Assert.All(words[1], letter => Assert.Equal(words[0], FolderName.Of(letter.ToString())));
        }
    }

    [Fact]
    public void Folder_has_only_letters_digits_and_single_inner_hyphens() =>
        Gen.String.Sample(name => Assert.Matches("^([a-z0-9]+(-[a-z0-9]+)*)?$", FolderName.Of(name)), seed: "0000PlanForge", iter: 2000);
}
