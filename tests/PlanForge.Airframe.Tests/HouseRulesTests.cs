using System.Reflection;
using System.Runtime.CompilerServices;

namespace PlanForge.Airframe.Tests;

/// <summary>Rules of the house that the compiler does not check.</summary>
public class HouseRulesTests
{
    private static readonly Type[] Types = [.. typeof(AirframeDescription).Assembly.GetTypes()
        .Where(t => !t.IsDefined(typeof(CompilerGeneratedAttribute)) && t.Namespace?.StartsWith("PlanForge", StringComparison.Ordinal) == true)];

    [Fact]
    public void Values_are_readonly() => Assert.Empty(
        Types.Where(t => t is { IsValueType: true, IsEnum: false } && !t.IsDefined(typeof(IsReadOnlyAttribute))).Select(t => t.Name));

    [Fact]
    public void Nothing_static_can_be_set() => Assert.Empty(Types
        .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
        .Where(f => f is { IsInitOnly: false, IsLiteral: false } && !f.IsDefined(typeof(CompilerGeneratedAttribute)))
        .Select(f => $"{f.DeclaringType!.Name}.{f.Name}"));

    [Fact]
    public void What_others_see_cannot_be_changed() => Assert.Empty(Types
        .Where(t => t.IsVisible)
        .SelectMany(t => t.GetProperties())
        .Where(p => p.SetMethod is { IsPublic: true } setter
            && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
        .Select(p => $"{p.DeclaringType!.Name}.{p.Name}"));

    [Fact]
    public void Formats_and_expressions_are_nobody_elses_business() => Assert.Empty(Types
        .Where(t => t.IsVisible && t.Namespace is "PlanForge.Airframe.Format" or "PlanForge.Airframe.Expressions" or "PlanForge.Airframe.Quantities"
            or "PlanForge.Airframe.Reading.Yaml")
        .Where(t => t.IsVisible)
        .Select(t => t.Name));

    [Fact]
    public void The_reader_knows_nothing_of_parts_and_paper() => Assert.DoesNotContain(
        typeof(AirframeDescription).Assembly.GetReferencedAssemblies(),
        a => a.Name is "PlanForge.Parts" or "PlanForge.Drafting" or "PlanForge.Output");
}
