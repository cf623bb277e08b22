using System.Text.Json;
using PlanForge.Comparing;
using PlanForge.Folders;

namespace PlanForge.Currency;

/// <summary>Says whether paper or wood is current, as JSON, for programs.</summary>
internal static class CurrencyReport
{
    /// <summary>The report.</summary>
    /// <param name="check">What was found.</param>
    /// <param name="now">What is drawn now.</param>
    /// <param name="since">What changed since; null for what is current or unknown.</param>
    public static byte[] Of(CurrencyCheck check, DrawnState now, ChangesSince? since) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        json.WriteString("design", now.Design);
        json.WriteString("fingerprint", check.Code);
        json.WriteBoolean("known", !check.Things.IsEmpty);
        json.WriteBoolean("current", check.IsCurrent);
        json.WriteObjects("things", check.Things, thing => WriteThing(json, thing, now, since));
        if (since is not null)
        {
            json.WriteString("drawn_at_revision", since.Past.Revision);
            json.WriteString("drawn_from", since.Past.Fingerprint);
            json.WriteString("drawn_by", since.Past.Version);
            if (since.Values is { } values)
            {
                json.WriteObjects("changed", values, value => ValueChangeJson.Write(json, value));
            }
            else
            {
                json.WriteNull("changed");
            }
        }

        if (check.Near is { } near)
        {
            json.WriteString("near", near.Fingerprint);
        }

        json.WriteEndObject();
    });

    private static void WriteThing(Utf8JsonWriter json, MarkedThing thing, DrawnState now, ChangesSince? since)
    {
        json.WriteString("kind", thing.Kind switch { MarkedKind.Part => "part", MarkedKind.Sheet => "sheet", _ => "description" });
        json.WriteString("id", thing.Id);
        json.WriteString("title", thing.Title);
        json.WriteObjects("parts", thing.Parts, part =>
        {
            json.WriteString("id", part.Id);
            json.WriteString("was", part.Fingerprint);
            json.WriteString("is", now.PresentOf(part)?.Fingerprint);
        });
        if (since?.Values is not null)
        {
            json.WriteObjects("because_of", since.CausesOf(thing), value => ValueChangeJson.Write(json, value));
        }
    }
}
