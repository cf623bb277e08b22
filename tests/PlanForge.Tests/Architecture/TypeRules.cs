using System.Reflection;
using System.Runtime.CompilerServices;

namespace PlanForge.Tests.Architecture;

/// <summary>What the types must be like.</summary>
public sealed class TypeRules
{
    private const BindingFlags Declared = BindingFlags.DeclaredOnly | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static;

    [Fact]
    public void Value_types_that_others_see_are_readonly() => Assert.DoesNotContain(
        Types(), type => type is { IsValueType: true, IsEnum: false, IsVisible: true } && !type.IsDefined(typeof(IsReadOnlyAttribute)));

    [Fact]
    public void No_type_has_a_field_that_others_can_change() => Assert.Empty(
        Fields().Where(field => field is { IsPrivate: false, IsLiteral: false, IsInitOnly: false }).Select(Name));

    [Fact]
    public void Nothing_static_can_change() => Assert.Empty(
        Fields().Where(field => field is { IsStatic: true, IsLiteral: false, IsInitOnly: false }).Select(Name));

    [Fact]
    public void Properties_that_others_see_are_set_at_birth_only() => Assert.Empty(
        Types().Where(type => type.IsVisible).SelectMany(type => type.GetProperties(Declared))
            .Where(property => property.SetMethod is { IsPrivate: false, IsAssembly: false } set
                && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(property => $"{property.DeclaringType}.{property.Name}"));

    [Fact]
    public void No_type_or_folder_has_a_name_that_says_nothing()
    {
        string[] empty = ["Util", "Utils", "Utilities", "Helper", "Helpers", "Common", "Manager", "Misc", "Shared"];
        Assert.DoesNotContain(Types(), type =>
            empty.Any(word => type.Name.EndsWith(word, StringComparison.Ordinal)) || type.Namespace!.Split('.').Intersect(empty).Any());
    }

    // Source generators and the compiler make types and fields of their own.
    private static IEnumerable<Type> Types() => Assemblies.All.SelectMany(assembly => assembly.GetTypes())
        .Where(type => type.Namespace?.StartsWith("PlanForge", StringComparison.Ordinal) == true
            && !type.IsDefined(typeof(CompilerGeneratedAttribute)) && !type.Name.Contains('<', StringComparison.Ordinal));

    private static IEnumerable<FieldInfo> Fields() => Types().Where(type => !type.IsEnum)
        .SelectMany(type => type.GetFields(Declared)).Where(field => !field.IsDefined(typeof(CompilerGeneratedAttribute)));

    private static string Name(FieldInfo field) => $"{field.DeclaringType}.{field.Name}";
}
