using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace PlanForge.Tests.Architecture;

/// <summary>What the assemblies may use: the direction of flow, and nothing that makes two runs differ.</summary>
public sealed class ReferenceRules
{
    [Fact]
    public void Geometry_knows_no_other_assembly_of_ours() => Assert.Empty(OursIn(Assemblies.Geometry));

    [Fact]
    public void Airframe_knows_geometry_only() => Assert.Subset(Names("Geometry"), OursIn(Assemblies.Airframe));

    [Fact]
    public void Parts_know_nothing_of_sheets_and_files() => Assert.Subset(Names("Geometry", "Airframe"), OursIn(Assemblies.Parts));

    [Fact]
    public void Drafting_knows_nothing_of_files() => Assert.Subset(Names("Geometry", "Airframe", "Parts"), OursIn(Assemblies.Drafting));

    [Fact]
    public void Writers_know_nothing_of_aeroplanes() => Assert.Subset(Names("Geometry", "Drafting"), OursIn(Assemblies.Output));

    [Fact]
    public void No_assembly_asks_the_clock_chance_or_the_culture()
    {
        string[] forbidden =
        [
            "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now",
            "System.DateTimeOffset.get_UtcNow", "System.Random..ctor", "System.Random.get_Shared", "System.Guid.NewGuid",
            "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture",
            "System.String.ToLower", "System.String.ToUpper", "System.Environment.get_TickCount64", "System.Environment.get_NewLine",
            "System.Environment.get_MachineName", "System.Environment.get_UserName",
        ];
        Assert.All(Assemblies.All, assembly => Assert.Empty(MembersUsedBy(assembly).Intersect(forbidden)));
    }

    [Fact]
    public void No_assembly_emits_code_at_run_time() => Assert.All(
        Assemblies.All, assembly => Assert.DoesNotContain(MembersUsedBy(assembly), member => member.StartsWith("System.Reflection.Emit", StringComparison.Ordinal)));

    private static HashSet<string> Names(params string[] names) => [.. names.Select(name => $"PlanForge.{name}")];

    private static HashSet<string> OursIn(Assembly assembly) => [.. assembly.GetReferencedAssemblies()
        .Select(reference => reference.Name!).Where(name => name.StartsWith("PlanForge", StringComparison.OrdinalIgnoreCase))];

    private static HashSet<string> MembersUsedBy(Assembly assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly.Location));
        var metadata = file.GetMetadataReader();
        var members = new HashSet<string>(StringComparer.Ordinal);
        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind == HandleKind.TypeReference)
            {
                var type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
                members.Add($"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}.{metadata.GetString(member.Name)}");
            }
        }

        Assert.NotEmpty(members);
        return members;
    }
}
