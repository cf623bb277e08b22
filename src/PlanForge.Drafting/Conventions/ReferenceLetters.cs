namespace PlanForge.Drafting.Conventions;

/// <summary>The letters that name places on drawings.</summary>
internal static class ReferenceLetters
{
    /// <summary>The alphabet without I and O, which look like figures (ISO 5457, zones of the grid reference system).</summary>
    public const string All = "ABCDEFGHJKLMNPQRSTUVWXYZ";
}
