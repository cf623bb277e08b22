using CsCheck;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class FolderNameTests
{
    // Reason beside each row; code points from the Unicode charts, from memory.
    [Theory]
    [InlineData("Oxbow 1420", "oxbow-1420")]           // the usual case
    [InlineData("  Two  -- words! ", "two-words")]     // runs of anything else are one hyphen, none at the ends
    [InlineData("Möwe é", "mowe-e")]                   // accents are dropped: U+00F6 and U+00E9 decompose
    [InlineData("Mo\u0308we", "mowe")]                 // the same letters, decomposed already
    [InlineData("Straße", "strau00dfe")]               // sharp s, U+00DF, does not decompose
    [InlineData("鳶 2", "u9cf6-2")]                    // black kite, U+9CF6
    [InlineData("../etc", "etc")]                      // no way out of the folder
    [InlineData("TITAN I", "titan-i")]                 // the dotted capital of Turkish plays no part
    [InlineData("!?", "")]                             // nothing to go by
    public void Name_becomes_a_folder(string name, string expected) => Assert.Equal(expected, FolderName.Of(name));

    [Fact]
    public void Folder_has_only_letters_digits_and_single_inner_hyphens() =>
        Gen.String.Sample(name => Assert.Matches("^([a-z0-9]+(-[a-z0-9]+)*)?$", FolderName.Of(name)), seed: "0000PlanForge", iter: 2000);
}
