using System.Collections.Immutable;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes what the title block says from its values.</summary>
internal static class IssueReader
{
    /// <summary>The fields, the revision table and the fingerprint of a description.</summary>
    /// <param name="root">The whole description.</param>
    /// <param name="files">The section files it names.</param>
    public static IssueDescription Read(MappingValues root, SectionFiles files) => new(
        root.Text(AirframeFormat.Revision),
        root.Text(AirframeFormat.Owner),
        root.Text(AirframeFormat.Creator),
        root.Text(AirframeFormat.Approver),
        root.Text(AirframeFormat.IssueDate),
        Revisions(root.List(AirframeFormat.Revisions)),
        ValueHash.Of(root, files),
        [
            root.AtValue(AirframeFormat.Name),
            root.AtValue(AirframeFormat.Revision),
            root.AtValue(AirframeFormat.Owner),
            root.AtValue(AirframeFormat.Creator),
            root.AtValue(AirframeFormat.Approver),
            root.AtValue(AirframeFormat.IssueDate),
        ])
    { Origin = root.Origin };

    private static ImmutableArray<RevisionDescription> Revisions(List<ReadValue> items)
    {
        var revisions = ImmutableArray.CreateBuilder<RevisionDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is MappingValues values)
            {
                revisions.Add(new(
                    values.Text(AirframeFormat.RevisionIndex),
                    values.Text(AirframeFormat.RevisionChange),
                    values.Text(AirframeFormat.RevisionDate),
                    values.Text(AirframeFormat.RevisionBy),
                    values.At));
            }
        }

        return revisions.ToImmutable();
    }
}
