using PlanForge.Airframe;

namespace PlanForge.Currency;

/// <summary>A fingerprint as a person reads it off paper or wood.</summary>
internal static class FingerprintCode
{
    private const int SignCount = 6;
    private const int SignsBeforeHyphen = 4;

    /// <summary>
    /// The code as it is printed: letters may be small, the hyphen may lack, and the letters that are not used stand for the figures
    /// they look like (O for 0, I and L for 1). Null when it can be no code.
    /// </summary>
    public static string? Read(string text)
    {
        var signs = new List<char>(SignCount);
        foreach (var sign in text)
        {
            if (sign is '-' or ' ')
            {
                continue;
            }

            var read = char.ToUpperInvariant(sign) switch { 'O' => '0', 'I' or 'L' => '1', var other => other };
            if (!Fingerprint.Signs.Contains(read, StringComparison.Ordinal))
            {
                return null;
            }

            signs.Add(read);
        }

        return signs.Count == SignCount ? string.Concat([.. signs[..SignsBeforeHyphen], '-', .. signs[SignsBeforeHyphen..]]) : null;
    }
}
